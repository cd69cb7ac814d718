import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { fittingCaution } from '../../../src/core/lists/fittingCaution.ts';
import { papers } from '../../../src/core/values/papers.ts';
import { allOr, testInSoak } from '../../soak.ts';
import { tapUntil } from '../grid/fingers.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { type Pages, pagesOf, pastMargins } from '../harness/pdfPages.ts';
import { dropFiles, paintedPicture } from '../pictures/pictureFiles.ts';
import { oneStage } from '../screens/oneStage.ts';
import { buyer, copies, openNastyShow, prints, soldPrints, titles, withoutBlanks } from './nastyShow.ts';

const play = oneStage({ isInOnePage: true, hasTouch: true, reducedMotion: 'reduce' });

const goTo = (page: Page, place: string) => goByAddress(page, place);
/** The documents, and what stands at the head of their pages. */
const documents = {
	'Print cards': 'Print card',
	'Catalogue, plain list': 'Catalogue',
	'Catalogue with pictures': 'Catalogue',
	'Handing over and taking down': 'Handing over and taking down',
	'Packing list': 'Packing list',
};

/** Chooses some documents, and no others: all at once, so that the pages are laid out once. */
async function choose(page: Page, ...names: readonly string[]): Promise<void> {
	const found = await page.locator('.line input[type=checkbox]').evaluateAll((boxes, chosen) => {
		const words = (box: Element) => (box as HTMLInputElement).labels![0]!.innerText.trim();
		for (const box of boxes as HTMLInputElement[]) if (box.checked !== chosen.includes(words(box))) box.click();
		return boxes.map(words);
	}, names);
	expect(found).toEqual(expect.arrayContaining([...names]));
	await page.locator('article').first().waitFor();
}

type Name = keyof typeof documents;
const all = Object.keys(documents) as Name[];

/** Prints these of them, all by default, on one paper: nothing is cut off on the screen, and every text lies inside its page. */
async function printed(page: Page, paper: 'A4' | 'Letter', names: readonly Name[] = all) {
	await goTo(page, 'paper');
	await page.getByRole('radio', { name: paper, exact: true }).check();
	await choose(page, ...names);
	const cut = await page
		.locator('article > .body')
		.evaluateAll((bodies) =>
			bodies.flatMap((body, at) =>
				body.scrollHeight > body.clientHeight || body.scrollWidth > body.clientWidth
					? [`page ${at + 1}: ${body.scrollWidth} x ${body.scrollHeight} in ${body.clientWidth} x ${body.clientHeight}`]
					: [],
			),
		);
	expect(cut, 'cut off').toEqual([]);
	const bytes = await page.pdf({ preferCSSPageSize: true });
	expect(bytes.includes(buyer)).toBe(false);
	const pages = await pagesOf(new Uint8Array(bytes));
	const { widthMm: width, heightMm: height } = papers[paper];
	expect(pastMargins(pages, { width, height })).toEqual([]);
	const textOf = (own: Pages) => withoutBlanks(own.flatMap(({ texts }) => texts.map(({ text }) => text)).join(''));
	expect(textOf(pages)).not.toContain(withoutBlanks(buyer));
	expect(textOf(pages)).toContain(`Page${pages.length}of${pages.length}`);
	for (const head of new Set(names.map((name) => documents[name]))) {
		const own = pages.filter(({ texts }) => texts.some(({ text }) => text === head));
		const text = textOf(own);
		for (const title of new Set(titles)) expect(text, head).toContain(withoutBlanks(title));
	}
	return pages;
}

async function saved(page: Page, label: string): Promise<string> {
	const given = page.waitForEvent('download');
	await page.getByRole('button', { name: label }).first().tap();
	return readFile(await (await given).path(), 'utf8');
}

test('by touch prints are finished at the bench, and on A4 the ticks stand on their cards', () =>
	play(async (page) => {
		await openNastyShow(page);
		await goTo(page, 'bench');
		// The plans come meanwhile, and what stands over the link grows.
		const start = page.getByRole('link', { name: 'Start finishing' });
		await start.waitFor();
		await tapUntil(start, async () => !(await start.isVisible()));
		await page.getByRole('heading', { name: new RegExp(`^1 Tide 1.*0 of ${copies} ready`) }).waitFor();
		for (const area of await page.locator('.area, .ticks button, select, .views .press:not(.rest)').all())
			expect((await area.boundingBox())!.height).toBeGreaterThanOrEqual(60);
		await page.getByRole('button', { name: 'Printed' }).first().tap();
		await page.getByRole('button', { name: 'Signed' }).first().tap();
		await page.getByRole('button', { name: /^Undo tick/ }).tap();
		await page.getByRole('button', { name: 'Signed', pressed: false }).first().waitFor();
		// The second print has three copies, and no frame: the second copy is finished at once.
		await page.getByRole('combobox', { name: 'Print' }).selectOption({ label: '2 Tide 2, copy 2 of 3' });
		await page.getByRole('button', { name: 'Fitted, pinned, sealed' }).waitFor({ state: 'detached' });
		const rest = page.getByRole('button', { name: 'Tick the 5 left' });
		const [foot, box] = [
			await page.getByRole('navigation', { name: 'Steps' }).boundingBox(),
			(await rest.boundingBox())!,
		];
		expect(foot!.y - box.y - box.height, 'far from what one taps without looking').toBeGreaterThan(88);
		expect(box.height).toBeGreaterThanOrEqual(43.5);
		await rest.tap();
		await page.getByRole('button', { name: 'Next: 2 Tide 2, copy 3 of 3' }).tap();
		await page.getByRole('heading', { name: new RegExp(`^2 Tide 2, copy 3 of 3.*1 of ${copies} ready`) }).waitFor();
		// A copy that is ready: the main button, in the same corner, names the next that is not, and goes there.
		const corner = await page.locator('.area.main').boundingBox();
		await page.getByRole('combobox', { name: 'Print' }).selectOption({ label: '✓ 2 Tide 2, copy 2 of 3' });
		const next = page.getByRole('button', { name: 'Next: 2 Tide 2, copy 3 of 3' });
		const { x, width, y } = (await next.boundingBox())!;
		expect([x + width, y]).toEqual([corner!.x + corner!.width, corner!.y]);
		await next.focus();
		await page.keyboard.press('Enter'); // a second tap at one place so soon is taken for the first
		await page.getByRole('heading', { name: /^2 Tide 2, copy 3 of 3/ }).waitFor();
		// The ticks outlive the page, once they are on disk.
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.reload();
		await page.getByRole('heading', { name: new RegExp(`1 of ${copies} ready`) }).waitFor();
		const pages = await printed(page, 'A4', allOr(all, ['Print cards']));
		const cards = pages.filter(({ texts }) => texts.some(({ text }) => text === 'Print card'));
		const ticks = cards.map(({ texts }) => texts.filter(({ text }) => text === '✓').length);
		expect(ticks).toEqual([1, 5, ...Array.from({ length: prints - 2 }, () => 0)]);
		for (const { texts } of cards)
			expect(texts.map(({ text }) => text).join(' '), 'glass and points, as on the screen').toContain(fittingCaution);
	}));

// As the play above, on the other paper; all documents on A4: `paper/onPaper.test.ts`.
testInSoak('on Letter too all lists come out whole; the catalogue has pictures, what is sold, and prices or none', () =>
	play(async (page) => {
		await openNastyShow(page);
		await dropFiles(page, [{ name: 'Tide 1.jpg', bytes: await paintedPicture(page, 96, 64) }]);
		await page.getByRole('button', { name: /^Add pictures: / }).tap();
		await page.getByRole('grid').waitFor();
		const pages = await printed(page, 'Letter');
		const catalogue = pages.filter(({ texts }) => texts.some(({ text }) => text === 'Catalogue'));
		const sold = catalogue.flatMap(({ texts }) => texts.filter(({ text }) => /\bsold$/.test(text)));
		expect(sold).toHaveLength(2 * soldPrints);
		expect(await page.locator('article img').count()).toBe(1);

		await choose(page, 'Catalogue, plain list');
		const priced = await saved(page, 'Export catalogue');
		expect(priced.split('\r\n')).toHaveLength(1 + prints + 1);
		expect(priced).toContain('EUR');
		await page.getByRole('checkbox', { name: 'With prices' }).uncheck();
		await expect.poll(() => page.locator('article').first().innerText()).not.toContain('EUR');
		expect(await page.locator('article').first().innerText()).toContain('sold');
		const unpriced = await saved(page, 'Export catalogue');
		expect(unpriced).not.toContain('EUR');
		await choose(page, 'Packing list');
		const packing = await saved(page, 'Export packing list');
		for (const file of [priced, unpriced, packing]) expect(file).not.toContain(buyer);
	}),
);
