import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, test } from 'vitest';
import { allOr } from '../../soak.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { openFirstShow } from '../harness/openShow.ts';
import { someOfExample, thirty } from '../harness/someOfExample.ts';
import { pagesOf, type Pages, pointsPerMm, pastMargins } from '../harness/pdfPages.ts';
import { oneStage } from '../screens/oneStage.ts';
import { orderFound } from '../screens/prints.ts';

const play = oneStage();

/** The straight lines of a page that lie level, as long as they come out on paper, in mm. */
async function levelLines({ page }: Pages[number]): Promise<number[]> {
	const { fnArray, argsArray } = await page.getOperatorList();
	const lengths: number[] = [];
	let scale = [1, 0, 0, 1];
	const stack: number[][] = [];
	for (const [at, operation] of fnArray.entries()) {
		const args = argsArray[at] as unknown[];
		if (operation === OPS.save) stack.push(scale);
		else if (operation === OPS.restore) scale = stack.pop() ?? [1, 0, 0, 1];
		else if (operation === OPS.transform) {
			const [a, b, c, d] = args as number[];
			const [e, f, g, h] = scale as [number, number, number, number];
			scale = [a! * e + b! * g, a! * f + b! * h, c! * e + d! * g, c! * f + d! * h];
		} else if (operation === OPS.constructPath) {
			const [operations, numbers] = args as [number[], number[]];
			if (operations.length !== 2 || operations[0] !== OPS.moveTo || operations[1] !== OPS.lineTo) continue;
			const [x1, y1, x2, y2] = numbers as [number, number, number, number];
			if (y1 === y2) lengths.push((Math.abs(x2 - x1) * Math.abs(scale[0]!)) / pointsPerMm);
		}
	}
	return lengths;
}

/** In the soak all thirty; else one of a kind, but four of the moulding that is sawn, and one of two copies. */
const prints = allOr(thirty, [1, 4, 7, 10, 11, 12, 15, 26, 28, 29]);

const letter = { paper: 'Letter', width: 215.9, height: 279.4 };
/** The lower one; in the soak both. All documents are tried on A4 in `paper/onPaper.test.ts`. */
const papers = allOr([{ paper: 'A4', width: 210, height: 297 }, letter], [letter]);

test('on paper the ruler is 100 mm, every text lies inside its page, and each page says whose it is', () =>
	play(async (page) => {
		await openFirstShow(page, someOfExample(prints));
		await goByAddress(page, 'bench');
		await orderFound(page);
		const stepsOnScreen = await page.getByRole('heading', { name: /^Step \d+/ }).count();
		expect(stepsOnScreen).toBeGreaterThan(10);
		await page.getByRole('link', { name: 'Print on paper' }).click();
		await page.getByRole('checkbox', { name: /Corner templates/ }).check();
		for (const { paper, width, height } of papers) {
			await page.getByRole('radio', { name: paper }).check();
			const pageCount = await page.locator('article').count();
			// Each copy has a box of its own, and no words are smaller than 8.5 points.
			const lines = await page.locator('article p:has(.boxes)').evaluateAll((all) =>
				all.map((line) => ({
					boxes: line.querySelectorAll('.box').length,
					copies: Number(/(\d+) copies/.exec(line.textContent)?.[1] ?? 1),
				})),
			);
			expect(Math.max(...lines.map(({ copies }) => copies))).toBeGreaterThan(1);
			for (const { boxes, copies } of lines) expect(boxes).toBe(copies);
			const points = await page
				.locator('article :is(p, span, h2, h3, small, strong, dt, dd, li)')
				.evaluateAll((all) => all.map((each) => parseFloat(getComputedStyle(each).fontSize) * 0.75));
			expect(Math.min(...points)).toBeGreaterThan(8.49); // of 8.5 points the browser makes 11.3333 pixels
			const pages = await pagesOf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));

			expect(pages).toHaveLength(pageCount);
			for (const [place, each] of pages.entries()) {
				expect(each.width).toBeCloseTo(width, 0);
				expect(each.height).toBeCloseTo(height, 0);
				const whole = each.texts.map(({ text }) => text).join(' ');
				expect(whole).toContain('Salt and slate, Kiln Lane Rooms');
				expect(whole).toContain(`Page ${place + 1} of ${pageCount}`);
				expect(whole).toMatch(/\b20\d\d\b/);
			}
			expect(pastMargins(pages, { width, height }), paper).toEqual([]);
			const numbers = pages.flatMap(
				({ texts }) =>
					texts
						.map(({ text }) => text)
						.join(' ')
						.match(/Step \d+/g) ?? [],
			);
			expect(numbers).toEqual(Array.from({ length: stepsOnScreen }, (_, place) => `Step ${place + 1}`));

			const rulers = pages.filter(({ texts }) => texts.some(({ text }) => text.includes('This ruler is 100 mm')));
			expect(rulers.length).toBeGreaterThan(0);
			for (const ruler of rulers) {
				const longest = (await levelLines(ruler)).filter((length) => length > 90 && length < 110);
				expect(longest).toHaveLength(1);
				expect(Math.abs(longest[0]! - 100)).toBeLessThanOrEqual(0.3);
			}
		}
	}));

test('frames and hinges: on paper each print with its frame, its stack and its undermount, inside its page', () =>
	play(
		async (page) => {
			// In the page of the play before, which has the show.
			await goByAddress(page, 'paper');
			for (const other of ['Bench list', 'Marks on the back'])
				await page.getByRole('checkbox', { name: other }).uncheck();
			await page.getByRole('checkbox', { name: 'Frames and hinges' }).check();
			await page.getByRole('img', { name: 'Frame in profile: 1 Ebb, before six' }).waitFor();
			const drawn = await page.getByRole('img', { name: /^Frame in profile/ }).count();
			for (const { paper, width, height } of papers) {
				await page.getByRole('radio', { name: paper }).check();
				const pages = await pagesOf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
				const whole = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
				expect(whole.match(/The stack is about/g)).toHaveLength(drawn);
				expect(whole).toMatch(/Seen\s+from\s+the\s+front/);
				// Two square frames and two wide ones are made of the ash moulding: legs; at the foot, how their corners close.
				const bare = (text: string) => text.replace(/\s+/g, '');
				for (const legs of ['two of 459 and two of 465 mm', 'two of 739 and two of 500 mm'])
					expect(bare(whole).split(bare(`legs, long point to long point: ${legs}`)), legs).toHaveLength(3);
				for (const said of ['corners tried dry', 'Clamp the moulding. Wear eye and hearing protection'])
					expect(bare(whole)).toContain(bare(said));
				expect(bare(whole), 'nothing is cut with a knife here').not.toContain(bare('draw the blade past your side'));
				expect(pastMargins(pages, { width, height }), paper).toEqual([]);
			}
		},
		{ goesOn: true },
	));
