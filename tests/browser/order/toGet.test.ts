import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { allOr } from '../../soak.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { pagesOf, pastMargins } from '../harness/pdfPages.ts';
import { resize } from '../harness/resize.ts';
import { phone } from '../harness/stage.ts';
import { cell, seen } from '../screens/prints.ts';
import { oneStage } from '../screens/oneStage.ts';
import { openPaperShow } from './paperShow.ts';

const play = oneStage({ isInOnePage: true, hasTouch: true, reducedMotion: 'reduce' });

const letter = { name: 'Letter', width: 215.9, height: 279.4 };
/** The lower one; in the soak both. All documents are tried on A4 in `paper/onPaper.test.ts`. */
const papers = allOr([{ name: 'A4', width: 210, height: 297 }, letter], [letter]);

test('what to get is reached in one tap, and printed with what is in stock, packs, sums, shares and what to saw', () =>
	play(async (page) => {
		await openPaperShow(page);
		await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'To get' }).tap();
		await page.getByRole('heading', { name: /^Total [\d.]+ EUR$/ }).waitFor();
		await page.getByRole('heading', { name: /^Oak, \d+ lengths?$/ }).waitFor();
		await expect.poll(() => page.getByText('Working out the plans…').count(), { timeout: 30_000 }).toBe(0);
		const heads = await page.locator('tbody .kind').allInnerTexts();
		expect(heads, 'with one line a group has its heading too').toEqual([
			'Boards',
			'Glazing',
			'Backing',
			'Moulding',
			'Papers',
			'Supplies',
		]);
		const total = await page.getByRole('heading', { name: /^Total/ }).innerText();
		const shares = await page.locator('.shares > li').allInnerTexts();
		expect(shares.map((share) => share.split(':')[0])).toEqual(['Ilse', 'Jonah']);
		for (const { width, height } of [phone, { width: 1180, height: 820 }]) {
			await resize(page, { width, height });
			const edges = await page
				.getByRole('row')
				.evaluateAll((rows) =>
					rows
						.map((row) => [...row.querySelectorAll('td')].map((each) => Math.round(each.getBoundingClientRect().right)))
						.filter(({ length }) => length > 0),
				);
			expect(edges.length).toBeGreaterThan(5);
			for (const column of [0, 1, 2, 3]) expect(new Set(edges.map((row) => row[column])).size, `${width} px`).toBe(1);
			expect(await page.evaluate(() => document.documentElement.scrollWidth), 'nothing to the side').toBe(width);
		}
		const lines = await page.locator('tbody tr:has(summary)').evaluateAll((rows) =>
			rows.map((row) => {
				return { height: Math.round(row.getBoundingClientRect().height) };
			}),
		);
		expect(new Set(lines.map(({ height }) => height)), 'lines of one height').toEqual(new Set([45]));
		expect(await page.locator('.cost:empty').count(), 'where nothing is bought too').toBe(0);
		const sticks = await page.getByText(/ mm left$/).allInnerTexts();
		expect(sticks.length).toBeGreaterThan(1);

		await page.getByRole('link', { name: 'Print on paper' }).tap();
		await page.getByRole('checkbox', { name: 'To get', checked: true }).waitFor();
		for (const { name, width, height } of papers) {
			await page.getByRole('radio', { name }).check();
			const pages = await pagesOf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
			expect(pages).toHaveLength(await page.locator('article').count());
			const texts = pages.flatMap((each) => each.texts);
			expect(pastMargins(pages, { width, height }), name).toEqual([]);
			const bare = (text: string) => text.replace(/\s+/g, '');
			const whole = bare(texts.map(({ text }) => text).join(' '));
			for (const said of [
				total,
				...shares,
				...sticks,
				'1 pack of 25',
				'1 roll of 15 m',
				'Clamp the moulding',
				'6 Quay',
			])
				expect(whole).toContain(bare(said));
		}
		await page.getByRole('link', { name: 'Back to “To get”' }).tap();
		await page.getByRole('heading', { name: 'To get', exact: true }).waitFor();
	}));

test('each print shows what it costs, why where one asks, and it goes out as CSV; on a phone too', () =>
	play(async (page) => {
		await openPaperShow(page);
		await goByAddress(page, 'prints');
		await page.getByRole('grid').waitFor();
		await expect.poll(() => seen(page, 0, 'cost'), { timeout: 30_000 }).toMatch(/^\d+\.\d\d worked-out$/);
		expect(await seen(page, 5, 'cost'), 'a print that is left out').toBe('');
		await cell(page, 0, 'cost').tap();
		const reason = page.locator('#sentences').getByText(/What it needs costs [\d.]+ EUR: .*[\d.]+ for Cotton/);
		await reason.waitFor();
		await page.getByRole('button', { name: 'Files' }).tap();
		const given = page.waitForEvent('download');
		await page.getByRole('button', { name: 'Export CSV' }).first().tap();
		const [header, first] = (await readFile(await (await given).path(), 'utf8')).split('\r\n');
		expect(header).toMatch(/,result cost$/);
		expect(first).toMatch(/,\d+\.\d\d$/);
		await resize(page, phone);
		await page
			.getByRole('group', { name: 'Record' })
			.getByText(/^cost\s*\d+\.\d\d$/)
			.waitFor();
	}));
