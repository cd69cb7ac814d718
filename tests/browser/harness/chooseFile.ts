import type { Page } from 'playwright-core';

/** Chooses a file with this text where a button of the app asks for one. */
export async function chooseFile(page: Page, button: string, name: string, text: string): Promise<void> {
	const asked = page.waitForEvent('filechooser');
	await page.getByRole('button', { name: button }).first().click();
	await (await asked).setFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
}
