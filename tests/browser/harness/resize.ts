import type { Page } from 'playwright-core';

/** Resolves when the page has been painted as it is now: what moves with the next frame has moved. */
export const painted = (page: Page): Promise<void> =>
	page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => resolve()))));

/**
 * Gives the page another size, and resolves when it has been painted so: before that, what only a page of the former size
 * has is still there to be found, and is gone when it is pressed.
 */
export async function resize(page: Page, size: { width: number; height: number }): Promise<void> {
	await page.setViewportSize(size);
	await page.evaluate(async ({ width, height }) => {
		do await new Promise(requestAnimationFrame);
		while (innerWidth !== width || innerHeight !== height);
		await new Promise(requestAnimationFrame);
	}, size);
}
