import { mm } from '../../../../src/core/length/length.ts';
import { expect, test } from 'vitest';
import { paperRoom, papers } from '../../../../src/core/values/papers.ts';
import { sheetDrawingMm, sheetHeadMm, sheetLineMm, sheetOnPages } from '../../../../src/core/sheets/sheetPaper.ts';
import { plannedSheet, showOf } from './sheetsOf.ts';

const scale = { unit: 'mm', ruler: mm(1) } as const;

test.each(['A4', 'Letter'] as const)(
	'on %s every blank and every cut comes once, and nothing runs off its page',
	(paper) => {
		const show = showOf(120, { mountSize: '60 x 45 mm', border: '8 mm', leastBorder: '5 mm' });
		const sheet = plannedSheet(show);
		expect(sheet.blanks.length).toBeGreaterThan(50);
		const long =
			'A title that is longer than a line of the page has room for, so that it runs into the next one at least';
		const pages = sheetOnPages([sheet], 'Chalk, sheet 1', () => long, scale, paper);
		expect(pages.length).toBeGreaterThan(2);
		expect(pages.map(({ isContinued }) => isContinued)).toEqual(pages.map((_, place) => place > 0));
		const { margin, head, foot } = paperRoom;
		for (const { words, isContinued } of pages) {
			const lines = words.reduce((sum, each) => sum + each.lines, 0);
			const used = sheetHeadMm + (isContinued ? 0 : sheetDrawingMm) + lines * sheetLineMm;
			expect(used).toBeLessThanOrEqual(papers[paper].heightMm - 2 * margin - head - foot);
		}
		const words = pages.flatMap((page) => page.words);
		expect(words.filter(({ isCut }) => !isCut)).toHaveLength(sheet.blanks.length);
		expect(words.filter(({ isCut }) => isCut).map(({ text }) => Number.parseInt(text))).toEqual(
			sheet.cuts.map((_, place) => place + 1),
		);
		expect(words[0]!.lines).toBe(2);
	},
);

test('sheets cut alike are named by letters, with the prints of each', () => {
	const sheet = plannedSheet(showOf(2));
	const [page] = sheetOnPages([sheet, { ...sheet, id: 'other' }], 'Chalk', ({ rowId }) => rowId ?? '', scale, 'A4');
	const [dropOut] = sheetOnPages([sheet], 'Chalk', () => 'Ebb', scale, 'A4', ['from the window of Ebb']);
	expect(dropOut!.words[0]).toEqual({ text: 'from the window of Ebb', isCut: false, isMade: false, lines: 1 });
	expect(page!.words.map(({ text }) => text).slice(0, 2)).toEqual([
		expect.stringMatching(/^A: 600 × 450 mm: r\d; r\d$/),
		expect.stringMatching(/^B: 600 × 450 mm: r\d; r\d$/),
	]);
});
