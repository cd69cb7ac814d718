import { isFocusLost } from '../ui/isFocusLost.ts';

/** Gives the focus to the first of these that is in the page. */
export function focusFirst(...selectors: readonly string[]): void {
	const found = selectors.map((selector) => document.querySelector<HTMLElement>(selector));
	found.find((element) => element !== null)?.focus();
}

/** Moves a lost focus to the heading of the new place: the link that led there has gone from the page. */
export function arrive(): void {
	const heading = document.querySelector<HTMLElement>('main h1');
	if (heading === null || !isFocusLost()) return;
	heading.tabIndex = -1;
	heading.focus({ preventScroll: true });
}

/** Moves a lost focus to where work goes on: the active cell, the way in of an empty show, else the first control of the place. */
export function goOn(): void {
	if (isFocusLost()) focusFirst('[role=grid] [tabindex="0"]', '#begin', 'main button:not(:disabled)');
}
