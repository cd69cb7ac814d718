import type { Page } from 'playwright-core';

/** Chooses a file with this text where a button of the app asks for one. */
export async function chooseFile(page: Page, button: string, name: string, text: string): Promise<void> {
	// Waited for together: where the page goes away, neither is left to fail by itself.
	const [asked] = await Promise.all([
		page.waitForEvent('filechooser'),
		page.getByRole('button', { name: button }).first().click(),
	]);
	await asked.setFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
}
