import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { allOr } from '../../soak.ts';
import { axeProblems } from '../harness/axe.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { pagesOf, pastMargins } from '../harness/pdfPages.ts';
import { oneStage } from '../screens/oneStage.ts';
import { cell } from '../screens/prints.ts';
import { openPaperShow, paperShow } from './paperShow.ts';

const play = oneStage({ isInOnePage: true, hasTouch: true, reducedMotion: 'reduce' });

const letter = { name: 'Letter', width: 215.9, height: 279.4 };
/** The lower one; in the soak both. All documents are tried on A4 in `paper/onPaper.test.ts`. */
const papers = allOr([{ name: 'A4', width: 210, height: 297 }, letter], [letter]);

test('the print list says what goes on each paper and where, what is not printed and why, as CSV too', () =>
	play(async (page) => {
		await openPaperShow(page);
		await page.getByRole('link', { name: 'To get' }).tap();
		await page.getByRole('link', { name: 'Pictures to print' }).tap();
		await page.getByRole('heading', { name: 'Pictures to print' }).waitFor();
		const rag = page.getByRole('region', { name: /^Cotton/ });
		expect(await rag.locator('dd').allInnerTexts()).toEqual(['7 sheets', '3', '1 pack of 25', '42.00 EUR']);
		expect(await rag.getByRole('img').nth(1).getAttribute('aria-label')).toMatch(
			/^The picture on its paper: left 12, top [\d.]+, right [\d.]+, bottom [\d.]+ mm$/,
		);
		expect(
			await page
				.getByRole('region', { name: /^Baryta roll/ })
				.locator('dd')
				.allInnerTexts(),
		).toEqual([expect.stringMatching(/^\d\.\d\d\sm of the roll$/), '1 roll of 15\u00A0m', '180.00 EUR']);
		const figures = await page.getByRole('region', { name: /^A3/ }).locator('dd').allInnerTexts();
		expect(figures).toEqual(['2 sheets', '2 sheets', 'no price']);
		await page
			.getByRole('region', { name: /^Baryta roll/ })
			.getByText('Width across the roll, cut above and below')
			.waitFor();
		const notPrinted = await page.getByRole('region', { name: 'Not printed' }).getByRole('listitem').allInnerTexts();
		expect(notPrinted.map((text) => text.replace(/\s+/g, ' ').trim())).toEqual([
			'5 Slip It has no paper yet.',
			expect.stringMatching(/^6 Quay The window is .* than the paper 297 × 210/),
		]);
		expect(await axeProblems(page)).toEqual([]);

		const given = page.waitForEvent('download');
		await page.getByRole('button', { name: 'Export CSV' }).tap();
		const file = await given;
		expect(file.suggestedFilename()).toBe(`${paperShow} pictures to print.csv`);
		expect(await readFile(await file.path(), 'utf8')).toMatch(
			/^kind,paper,print,number,title,way up,picture width \(mm\),/,
		);

		await page.getByRole('link', { name: 'Back to “To get”' }).waitFor();
		await page.getByRole('button', { name: '5 Slip' }).tap();
		await page.getByRole('grid').waitFor();
		await expect
			.poll(() => cell(page, 4, 'paper').evaluate((element) => element === document.activeElement))
			.toBe(true);
	}));

test('a show without papers says where to name them', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Start typing' }).tap();
		await goByAddress(page, 'print-list');
		await page.getByText(/^Nothing to print yet\. Name a paper/).waitFor();
		await page.getByRole('link', { name: 'Go to the prints' }).tap();
		await page.getByRole('grid').waitFor();
	}));

test('on paper each picture stands on its paper with its margins, inside the page', () =>
	play(async (page) => {
		await openPaperShow(page);
		await goByAddress(page, 'print-list');
		await page.getByRole('link', { name: 'Print on paper' }).tap();
		await page.getByRole('checkbox', { name: 'Pictures to print', checked: true }).waitFor();
		for (const { name, width, height } of papers) {
			await page.getByRole('radio', { name }).check();
			const pages = await pagesOf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
			expect(pages).toHaveLength(await page.locator('article').count());
			const texts = pages.flatMap((each) => each.texts);
			expect(pastMargins(pages, { width, height }), name).toEqual([]);
			const whole = texts.map(({ text }) => text).join(' ');
			for (const said of ['Cotton', '4 copies and 1 proof: 5 sheets', 'Not printed', 'It has no paper yet.', '12'])
				expect(whole.replace(/\s+/g, ' ')).toContain(said);
		}
		await page.getByRole('link', { name: 'Back to the pictures to print' }).tap();
		await page.getByRole('heading', { name: 'Pictures to print' }).waitFor();
	}));
