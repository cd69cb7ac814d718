/** Whether nothing has the focus, as when what had it has gone from the page. */
export const isFocusLost = (): boolean => document.activeElement === null || document.activeElement === document.body;

/** Gives the focus to the first of these that is in the page. */
export function focusFirst(...selectors: readonly string[]): void {
	const found = selectors.map((selector) => document.querySelector<HTMLElement>(selector));
	found.find((element) => element !== null)?.focus();
}

/** Gives a lost focus to the heading of the place that one has come to: what led there has gone from the page. */
export function arrive(): void {
	const heading = document.querySelector<HTMLElement>('main h1');
	if (heading === null || !isFocusLost()) return;
	heading.tabIndex = -1;
	heading.focus({ preventScroll: true });
}

/** Gives a lost focus to what one goes on with: the cell in hand, else the first thing in the place to press. */
export function goOn(): void {
	if (isFocusLost()) focusFirst('[role=grid] [tabindex="0"]', 'main button:not(:disabled)');
}
