import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { allOr } from '../../soak.ts';
import { axeProblems } from '../harness/axe.ts';
import { goBehindName } from '../harness/behindName.ts';
import { resize } from '../harness/resize.ts';
import { choosePaper, goTo } from '../harness/screens.ts';
import { pagesOf, pastMargins } from '../harness/pdfPages.ts';
import { phone, uprightTablet } from '../harness/stage.ts';
import { smallTargets } from '../harness/smallTargets.ts';
import { oneStage } from '../screens/oneStage.ts';
import { openSalesShow, salesShow, unbroken } from './salesShow.ts';

const play = oneStage({ isPlanned: false, viewport: phone, hasTouch: true, reducedMotion: 'reduce' });

const letter = { name: 'Letter', width: 215.9, height: 279.4 };
/** The lower one; in the soak both. All documents are tried on A4 in `paper/onPaper.test.ts`. */
const papers = allOr([{ name: 'A4', width: 210, height: 297 }, letter], [letter]);

const figures = async (page: Page) => {
	const rows = page.getByRole('region', { name: 'Who gets what' }).getByRole('row');
	return (await rows.allInnerTexts()).slice(1).map((row) => row.replace(/\s+/g, ' ').trim());
};
const total = (page: Page) => page.getByRole('main').getByRole('status').innerText();
const sold = (page: Page, name: string) => page.getByRole('button', { name: `Sold: ${name}`, exact: true });
const collected = (page: Page, name: string) => page.getByRole('button', { name: `Collected: ${name}`, exact: true });

/** What of the page is wider than the window. */
const pastTheSide = (page: Page) =>
	page
		.getByRole('main')
		.locator('*')
		.evaluateAll((all) =>
			all
				.filter((each) => each.getBoundingClientRect().right > innerWidth + 1)
				.map((each) => each.outerHTML.slice(0, 80)),
		);

async function saved(page: Page, button: string) {
	const given = page.waitForEvent('download');
	await page.getByRole('button', { name: button }).tap();
	const file = await given;
	return { name: file.suggestedFilename(), text: await readFile(await file.path(), 'utf8') };
}

test('held upright, a print that is not sold is one line of 64 px; its price stands close over the line to write on', () =>
	play(async (page) => {
		await resize(page, uprightTablet);
		await openSalesShow(page);
		await goBehindName(page, 'Sales');
		const item = page.getByRole('listitem').filter({ has: sold(page, '1 Ebb') });
		const height = async () => (await item.boundingBox())!.height;
		expect(await height()).toBeLessThanOrEqual(64);
		await sold(page, '1 Ebb').tap();
		await page.getByRole('textbox', { name: 'Buyer of 1 Ebb' }).waitFor();
		expect(await height()).toBeGreaterThan(64 + 40);
	}));

test('from what a maker wants to what is due to them, and from the label to the taking down, by touch on a phone', () =>
	play(async (page) => {
		await openSalesShow(page);
		await goBehindName(page, 'Sales');
		await page.getByRole('heading', { name: 'Sales', level: 1 }).waitFor();
		expect(await total(page)).toBe('Nothing sold yet.');
		// 180 / (1 − 0.4 · 1.2) = 346.15…, up to a multiple of 5
		expect(await page.getByRole('textbox', { name: 'Price of 1 Ebb' }).getAttribute('placeholder')).toBe('350.00');

		// A row has lines to write on, and boxes only to tick.
		const boxes = await page
			.getByRole('listitem')
			.filter({ has: sold(page, '1 Ebb') })
			.locator(':is(input, button, .tick)')
			.evaluateAll((parts) =>
				parts
					.filter((part) => {
						const { borderLeftWidth, borderLeftColor } = getComputedStyle(part);
						return parseFloat(borderLeftWidth) > 0 && borderLeftColor !== 'rgba(0, 0, 0, 0)';
					})
					.map((part) => part.classList[0]),
			);
		expect(boxes).toEqual(['tick', 'tick']);

		await sold(page, '1 Ebb').tap();
		await expect
			.poll(() => total(page))
			.toBe('1 print sold for 350.00 EUR. Collected 0 of 1. Buyer missing for 1 Ebb.');
		expect(await figures(page)).toEqual(['Ilse 1 350.00 140.00 28.00 182.00']);
		await page.getByRole('textbox', { name: 'Buyer of 1 Ebb' }).fill('R. Thistle');
		await collected(page, '2 Ebb').tap();
		await expect.poll(() => sold(page, '2 Ebb').getAttribute('aria-pressed')).toBe('true');
		await page.getByRole('textbox', { name: 'Price of 2 Ebb' }).fill('300');
		await page.getByRole('textbox', { name: 'Price of 2 Ebb' }).press('Enter');
		await expect
			.poll(() => total(page))
			.toBe('2 prints sold for 650.00 EUR. Collected 1 of 2. Buyer missing for 2 Ebb.');

		// Tapped again, it is what it was; undo brings it back.
		await sold(page, '2 Ebb').tap();
		await expect.poll(() => total(page)).toBe('1 print sold for 350.00 EUR. Collected 0 of 1.');
		await page.getByRole('button', { name: /^Undo: mark not sold/ }).tap();
		await expect
			.poll(() => total(page))
			.toBe('2 prints sold for 650.00 EUR. Collected 1 of 2. Buyer missing for 2 Ebb.');

		// Copies are sold together until they are split.
		await page.getByText('3 copies, sold together: 3 × 90.00 = 270.00').waitFor();
		await page.getByRole('button', { name: 'Split into 3 rows' }).tap();
		await sold(page, '3 Weir').first().tap();
		await sold(page, '4 Quay').tap();
		await expect.poll(() => total(page)).toMatch(/^3 prints sold for 740\.00 EUR\..*left out of the sums: 4 Quay\.$/);
		expect(await figures(page)).toEqual([
			'Ilse 2 650.00 260.00 52.00 338.00',
			'Jonah 1 90.00 36.00 7.20 46.80',
			'All makers 3 740.00 296.00 59.20 384.80',
		]);

		await page.getByRole('radio', { name: 'Not sold' }).check();
		await expect.poll(() => page.getByRole('button', { name: /^Sold: / }).count()).toBe(3);
		await page.getByRole('combobox', { name: 'Maker' }).selectOption('Ilse');
		await page.getByText('No print matches.').waitFor();
		await page.getByRole('radio', { name: 'All', exact: true }).check();
		await expect.poll(() => page.getByRole('button', { name: /^Sold: / }).count()).toBe(2);

		const editions = page.getByRole('region', { name: 'Editions' });
		expect((await editions.getByRole('listitem').first().innerText()).replace(/\s+/g, ' ')).toBe(
			'Ebb, Ilse Edition of 12 numbers here 1–2 numbers sold 1–2 left 10 not in the show 3–12',
		);
		expect(await axeProblems(page)).toEqual([]);
		expect(await smallTargets(page)).toEqual([]);

		// Names that have no place to break leave all in reach, in every width.
		await page.getByRole('combobox', { name: 'Maker' }).selectOption('All');
		await sold(page, `5 ${unbroken}`).tap();
		await expect.poll(() => total(page)).toMatch(/^4 prints/);
		for (const width of [phone.width, 700, uprightTablet.width]) {
			await resize(page, { width, height: phone.height });
			await expect.poll(() => pastTheSide(page), { message: `${width} px` }).toEqual([]);
		}
		await resize(page, phone);
		await sold(page, `5 ${unbroken}`).tap();

		// No buyer leaves but where that is asked for.
		const sales = await saved(page, 'Export sales');
		expect(sales.name).toBe(`${salesShow} sales.csv`);
		expect(sales.text).toContain('print,1,Ebb,Ilse,1/12,1,sold,350.00,EUR,350.00,,,');
		expect(sales.text).toContain('maker,,,Jonah,,1,,,EUR,90.00,36.00,7.20,46.80');
		expect(sales.text).not.toMatch(/Thistle|buyer/);
		await page.getByRole('checkbox', { name: 'With the buyers’ names' }).check();
		expect((await saved(page, 'Export sales')).text).toContain('R. Thistle');
		expect((await saved(page, 'Export edition register')).text).toContain('Ilse,Ebb,edition,12,2,2,10,1–2,1–2,3–12,');
		await page.getByRole('link', { name: 'Print on paper' }).tap();
		await page.getByText('Edition register, 1 page').tap(); // on a phone what is chosen is a line that unfolds
		await page.getByRole('checkbox', { name: 'Edition register', checked: true }).waitFor();
		for (const { name, width, height } of papers) {
			await page.getByRole('radio', { name }).check();
			const pages = await pagesOf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
			expect(pastMargins(pages, { width, height }), name).toEqual([]);
			const whole = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
			for (const said of [
				'Ebb, Ilse',
				'Edition of 12: numbers here 1–2; numbers sold 1–2; left 10',
				'Open edition: 3 prints, 1 sold',
			])
				expect(whole.replace(/\s+/g, ' ')).toContain(said);
			expect(whole).not.toContain('Thistle');
		}

		// Labels and catalogue have the prices; what is taken down is marked for who hands it over.
		await page.getByRole('link', { name: 'Back to the sales' }).tap();
		await sold(page, '4 Quay').tap();
		await collected(page, '1 Ebb').tap();
		await expect.poll(() => collected(page, '1 Ebb').getAttribute('aria-pressed')).toBe('true');
		await goTo(page, 'On paper');
		const documents = ['Labels for the wall', 'Catalogue, plain list', 'Handing over and taking down'];
		await choosePaper(page, ...documents);
		await page
			.getByRole('article', { name: /^Handing over and taking down, page/ })
			.first()
			.waitFor();
		const printed = await pagesOf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
		const textOf = (at: (typeof printed)[number]) =>
			at.texts
				.map(({ text }) => text)
				.join(' ')
				.replace(/\s+/g, ' ');
		const texts = printed.map(textOf);
		const [labels, catalogue, handOver] = [
			texts[0]!,
			texts.find((text) => text.includes('Catalogue'))!,
			texts.filter((text) => text.includes('Handing over')),
		];
		for (const price of ['350.00 EUR', 'NFS']) expect(labels).toContain(price);
		expect(catalogue).toContain('350.00 EUR, sold');
		expect(handOver.length).toBeGreaterThanOrEqual(3); // a page for each maker at least
		expect(handOver.find((text) => text.includes('Ilse'))).toContain(
			'1 Ebb 1/12 unframed 500 × 400 mm ✓ sold ✓ collected',
		);
		expect(handOver.find((text) => text.includes('Jonah'))).toMatch(
			/4 Quay AP 1\/2 unframed 500 × 400 mm sold collected/,
		);
		expect(texts.join(' ')).not.toContain('Thistle');

		await page.getByRole('button', { name: 'Files' }).tap();
		const rows = await saved(page, 'Export CSV');
		expect(rows.text).toContain('collected');
		expect(rows.text).not.toMatch(/Thistle|buyer/i);
		await page.getByText('Buyers are left out.').waitFor();
	}));
