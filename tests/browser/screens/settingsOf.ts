import type { Page } from 'playwright-core';

/** Opens a section of the settings, as a person does: by the head of the page, then by the list of sections. */
export async function openSettings(page: Page, section: string): Promise<void> {
	await page.getByRole('link', { name: 'Settings', exact: true }).click();
	await page
		.getByRole('navigation', { name: 'Sections of the settings' })
		.getByRole('link', { name: new RegExp(`^${section}`) })
		.click();
	await page.getByRole('heading', { level: 2, name: section }).waitFor();
}
