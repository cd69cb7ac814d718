import type { Page } from 'playwright-core';
import { goBehindName } from '../harness/behindName.ts';

/** Opens a section of the settings, as a person does: by the head of the page, then by the list of sections. */
export async function openSettings(page: Page, section: string): Promise<void> {
	await goBehindName(page, 'Settings');
	await page
		.getByRole('navigation', { name: 'Sections of the settings' })
		.getByRole('link', { name: new RegExp(`^${section}`) })
		.click();
	await page.getByRole('heading', { level: 2, name: section }).waitFor();
}
