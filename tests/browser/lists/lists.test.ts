import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { papers } from '../../../src/core/values/papers.ts';
import { pagesOf, pastMargins } from '../harness/pdfPages.ts';
import { dropFiles, paintedPicture } from '../pictures/pictureFiles.ts';
import { oneStage } from '../screens/oneStage.ts';
import { buyer, openNastyShow, titles, withoutBlanks } from './nastyShow.ts';

const play = oneStage({ hasTouch: true, reducedMotion: 'reduce' });

const goTo = (page: Page, place: string) => page.goto(`${page.url().split('#')[0]}#${place}`);
const documents = [
	...['Catalogue, plain list', 'Catalogue with pictures', 'Print cards'],
	...['Handing over and taking down', 'Packing list'],
];

/** Prints nothing but one document, on one paper. */
async function printed(page: Page, name: string, paper: 'A4' | 'Letter') {
	const chosen = page.getByRole('checkbox', { checked: true });
	while ((await chosen.count()) > 0) await chosen.first().uncheck();
	await page.getByRole('radio', { name: paper, exact: true }).check();
	await page.getByRole('checkbox', { name, exact: true }).check();
	await page.locator('article').first().waitFor();
	const cut = await page
		.locator('article > .body')
		.evaluateAll((bodies) =>
			bodies.flatMap((body, at) =>
				body.scrollHeight > body.clientHeight || body.scrollWidth > body.clientWidth
					? [`page ${at + 1}: ${body.scrollWidth} x ${body.scrollHeight} in ${body.clientWidth} x ${body.clientHeight}`]
					: [],
			),
		);
	expect(cut, `${name} on ${paper}: cut off`).toEqual([]);
	const bytes = await page.pdf({ preferCSSPageSize: true });
	expect(bytes.includes(buyer)).toBe(false);
	return pagesOf(new Uint8Array(bytes));
}

test('by touch: prints are finished at the bench, and all lists come out on both papers with nothing cut off', () =>
	play(async (page) => {
		await openNastyShow(page);
		await dropFiles(page, [{ name: 'Tide 1.jpg', bytes: await paintedPicture(page, 96, 64) }]);
		await page.getByRole('button', { name: /^Add pictures: / }).tap();
		await goTo(page, 'bench');
		await page.getByRole('link', { name: 'Start finishing' }).tap();
		await page.getByRole('heading', { name: /^1 Tide 1.*0 of 71 ready/ }).waitFor();
		for (const area of await page.locator('.area, .ticks button, select').all())
			expect((await area.boundingBox())!.height).toBeGreaterThanOrEqual(60);
		await page.getByRole('button', { name: 'Printed' }).tap();
		await page.getByRole('button', { name: 'Signed' }).tap();
		await page.getByRole('button', { name: /^Undo tick/ }).tap();
		await page.getByRole('button', { name: 'Signed', pressed: false }).waitFor();
		// The second print has three copies, and no frame: the second copy is finished at once.
		await page.getByRole('combobox', { name: 'Print' }).selectOption({ label: '2 Tide 2, copy 2 of 3' });
		await page.getByRole('button', { name: 'Sealed' }).waitFor({ state: 'detached' });
		await page.getByRole('button', { name: 'All 5 done' }).tap();
		await page.getByRole('heading', { name: /^2 Tide 2, copy 3 of 3.*1 of 71 ready/ }).waitFor();
		// The ticks outlive the page, and stand beside the print too.
		await page.reload();
		await page.getByRole('heading', { name: /1 of 71 ready/ }).waitFor();
		await goTo(page, 'paper');

		const all = withoutBlanks(titles.join(''));
		expect(all).not.toBe('');
		for (const paper of ['A4', 'Letter'] as const) {
			const { widthMm: width, heightMm: height } = papers[paper];
			for (const name of documents) {
				const pages = await printed(page, name, paper);
				expect(pastMargins(pages, { width, height }), `${name} on ${paper}`).toEqual([]);
				const texts = withoutBlanks(pages.flatMap((each) => each.texts.map(({ text }) => text)).join(''));
				expect(texts).not.toContain(withoutBlanks(buyer));
				expect(texts, `pages of ${name}`).toContain(`Page${pages.length}of${pages.length}`);
				for (const title of new Set(titles)) expect(texts, `${name} on ${paper}`).toContain(withoutBlanks(title));
				if (name.startsWith('Catalogue')) expect(texts.match(/(?<=EUR,)sold/g)).toHaveLength(4);
				if (name === 'Catalogue with pictures') expect(await page.locator('article img').count()).toBe(1);
				if (name === 'Print cards') {
					expect(pages).toHaveLength(40);
					const ticks = pages.map((each) => each.texts.filter(({ text }) => text === '✓').length);
					expect(ticks).toEqual([1, 5, ...Array.from({ length: 38 }, () => 0)]);
				}
			}
		}
	}));
