import type { Locator, Page } from 'playwright-core';

/** Whether some words at the bench can be read without scrolling: all of them over its foot. */
export async function isInView(page: Page, words: Locator): Promise<boolean> {
	const [said, foot] = [await words.boundingBox(), await page.getByRole('navigation', { name: 'Steps' }).boundingBox()];
	return said !== null && foot !== null && said.y >= 0 && said.y + said.height <= foot.y;
}
