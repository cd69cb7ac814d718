import type { Locator, Page } from 'playwright-core';

/** What stands behind the show's name in the head of the page. */
const behindName = (page: Page): Locator => page.getByRole('navigation', { name: 'Sales, settings, shows, help' });

/** The name of the show in the head, which opens the list. */
export const showName = (page: Page): Locator => behindName(page).getByRole('button');

/** Goes to a place behind the show's name, as a person does: opens the list, and chooses. */
export async function goBehindName(
	page: Page,
	place: 'Sales' | 'Settings' | 'Shows' | 'Help',
	act: (what: Locator) => Promise<unknown> = (what) => what.click(),
): Promise<void> {
	await act(showName(page));
	await act(behindName(page).getByRole('link', { name: place, exact: true }));
}
