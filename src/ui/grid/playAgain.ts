/** Plays an event where it came, or where the focus is, if its element has gone from the page. */
export function playAgain(event: Event): void {
	const { target, type } = event;
	if (!(target instanceof Node) || !target.isConnected) return;
	const Same = event.constructor as new (type: string, init: EventInit) => Event;
	target.dispatchEvent(new Same(type, event));
}

/** Presses a key again, where the focus is now: what no one answers is typed into the field that has it. */
export function pressAgain(event: KeyboardEvent): void {
	const isLeft = document.activeElement?.dispatchEvent(new KeyboardEvent('keydown', event)) ?? false;
	const field = document.activeElement; // the key may have opened it
	if (!isLeft || !(field instanceof HTMLInputElement)) return;
	const [start, end] = [field.selectionStart ?? 0, field.selectionEnd ?? 0];
	if (event.key === 'Backspace') field.setRangeText('', start === end ? Math.max(0, start - 1) : start, end, 'end');
	else if (event.key.length === 1 && !event.ctrlKey && !event.metaKey) field.setRangeText(event.key, start, end, 'end');
	else return;
	field.dispatchEvent(new InputEvent('input', { bubbles: true }));
}
