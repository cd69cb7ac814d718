import type { Page } from 'playwright-core';

/** Holds a file of the build back in a page, by how its address begins. @returns what lets it come */
export async function holdBack(page: Page, file: string): Promise<() => void> {
	let letCome: () => void = () => undefined;
	const isLet = new Promise<void>((resolve) => (letCome = resolve));
	await page.route(`**/${file}*`, async (route) => {
		await isLet;
		await route.continue();
	});
	return letCome;
}
