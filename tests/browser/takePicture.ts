// Makes the README's pictures of the app again: `npm run picture`, after `npm run build`.
import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { goTo } from './harness/screens.ts';
import { closeSharedBrowser, landscapeTablet, onStage } from './harness/stage.ts';
import { cell } from './screens/prints.ts';

const folder = fileURLToPath(new URL('../../shared/pictures/', import.meta.url));

/** Six screens, each a step of the work, in its order. */
const steps: readonly ((page: Page) => Promise<unknown>)[] = [
	(page) => cell(page, 4, 'title').click(),
	async (page) => {
		await goTo(page, 'Whole show');
		await page.getByRole('heading', { name: 'All prints to one scale' }).waitFor();
	},
	async (page) => {
		await goTo(page, 'Boards');
		await page
			.getByText(/^No (cheaper plan exists|plan uses fewer sheets)/)
			.nth(1)
			.waitFor();
	},
	async (page) => {
		await goTo(page, 'To get');
		await page.getByRole('heading', { name: /^Total/ }).waitFor();
	},
	async (page) => {
		await goTo(page, 'Wall');
		await page.getByRole('button', { name: /^3 Net store/ }).waitFor();
	},
	async (page) => {
		await goTo(page, 'Bench');
		await page.getByRole('link', { name: 'Start cutting windows' }).click();
		await page.getByRole('button', { name: 'Next', exact: true }).click();
		await page.locator('.digits').waitFor();
	},
];

/** Pictures side by side on one, each half as large as its screen. */
async function onOneSheet(page: Page, pictures: readonly Buffer[]): Promise<Buffer> {
	const { width, height } = landscapeTablet;
	const gap = 12;
	await page.setViewportSize({ width: width + 3 * gap, height: (3 * height) / 2 + 4 * gap });
	const images = pictures.map(
		(picture) =>
			`<img width="${width / 2}" height="${height / 2}" src="data:image/png;base64,${picture.toString('base64')}">`,
	);
	await page.setContent(
		`<body style="display: flex; flex-wrap: wrap; gap: ${gap}px; margin: ${gap}px; background: #b9b4aa">${images.join('')}</body>`,
	);
	await page.waitForFunction(() => [...document.images].every((image) => image.complete));
	return page.screenshot({ type: 'jpeg', quality: 82 });
}

await mkdir(folder, { recursive: true });
await onStage({ reducedMotion: 'reduce', isSharp: true }, async (stage) => {
	const page = await stage.openShow();
	await stage.isKept(page);
	await page.getByRole('button', { name: 'Load the example' }).click();
	await page.getByRole('button', { name: 'Close' }).click();
	await cell(page, 8, 'picture width').click(); // a print that would fall through its window
	await page.screenshot({ path: `${folder}prints.png` });
	const pictures: Buffer[] = [];
	for (const step of steps) {
		await step(page);
		pictures.push(await page.screenshot());
	}
	await writeFile(`${folder}screens.jpg`, await onOneSheet(await stage.context.newPage(), pictures));
});
console.log(`The pictures are in ${folder}`);
await closeSharedBrowser();
