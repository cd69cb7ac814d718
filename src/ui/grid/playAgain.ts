/** The keys that the grid answers, or may; all others stay the browser's. */
const named = /^(Arrow\w+|Home|End|Page\w+|Enter|Tab|Escape|Delete|Backspace|ContextMenu|F[26789]|F10)$/;
const withControl = /^[adfryz ]$/i;

/** Whether a key is one that the grid may answer. What copies, cuts and pastes comes as another event. */
export function isOfGrid({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean {
	if (named.test(key)) return true;
	if (ctrlKey || metaKey || altKey) return withControl.test(key);
	return key.length === 1;
}

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

/** What a paste holds, which can be read only while it comes, to be pasted later. */
export function heldPaste({ clipboardData }: ClipboardEvent): Pick<ClipboardEvent, 'clipboardData'> {
	const held = new DataTransfer();
	for (const type of clipboardData?.types ?? []) if (type !== 'Files') held.setData(type, clipboardData!.getData(type));
	return { clipboardData: held };
}
