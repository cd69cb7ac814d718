import type { Page } from 'playwright-core';

/**
 * Goes to a place of the app by its address (`prints`, `settings/mount`), and resolves when the page shows it: until then
 * what stands on both places is found on the one that is left, and is gone when it is pressed.
 */
export async function goByAddress(page: Page, place: string): Promise<void> {
	// No function of it has a name: `npm run look` compiles them with a helper that the page does not have.
	await page.evaluate(async (hash) => {
		if (location.hash === hash) return;
		const heard = new AbortController();
		// Heard after the app, which has listened for longer: the place before is gone by then.
		const isFollowed = new Promise<void>((resolve) => {
			addEventListener('hashchange', ({ newURL }) => newURL.endsWith(hash) && resolve(), { signal: heard.signal });
		});
		location.hash = hash;
		await isFollowed;
		heard.abort();
	}, `#${place}`);
	await page.locator('main h1').first().waitFor({ state: 'attached' }); // its part may still be loaded
}
