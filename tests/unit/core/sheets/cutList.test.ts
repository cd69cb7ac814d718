import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { cutListOf, cutListWords } from '../../../../src/core/sheets/cutList.ts';
import { cutListOnPages } from '../../../../src/core/sheets/sheetPaper.ts';
import { paperRoom, papers } from '../../../../src/core/values/papers.ts';
import { writeCutList } from '../../../../src/files/cutListCsv.ts';
import { plannedSheet, showOf } from './sheetsOf.ts';

const scale = { unit: 'mm', ruler: mm(1) } as const;
const sheet = plannedSheet(showOf(2)); // two mounts of 600 × 450 mm
const turned = {
	...sheet,
	id: 'turned',
	blanks: [
		{ ...sheet.blanks[0]!, width: mm(450), height: mm(600) },
		{ ...sheet.blanks[1]!, width: mm(700), height: mm(300) },
		{ ...sheet.blanks[1]!, part: 'undermount' as const },
	],
};
const words = (...args: Parameters<typeof cutListOf>) => cutListOf(...args).map((line) => cutListWords(line, scale));

test('pieces of one size and use stand together, whichever way they lie, the largest first', () => {
	expect(words([sheet, turned])).toEqual([
		'700 × 300 mm, mount: 1 piece',
		'600 × 450 mm, mount: 3 pieces',
		'600 × 450 mm, undermount: 1 piece',
	]);
});

test('what is cut, spoilt or came ready cut is not to be cut', () => {
	expect(words([{ ...sheet, made: sheet.cuts.map((_, place) => place) }])).toEqual([]);
	expect(words([{ ...sheet, isSpoilt: true }])).toEqual([]);
	expect(words([{ ...sheet, cuts: [] }])).toEqual([]);
	expect(words([{ ...sheet, cuts: [...sheet.cuts, ...sheet.cuts], made: [0] }]), 'begun').toHaveLength(1);
});

const boards = [
	{ name: '=Chalk', material: undefined, lines: cutListOf([sheet]) },
	{ name: 'Clear', material: 'glazing' as const, lines: cutListOf([{ ...turned, blanks: turned.blanks.slice(0, 1) }]) },
];

test('as a file: exact lengths, whom the pieces are for, formulas made harmless', () => {
	expect(writeCutList(boards, 'mm', ({ rowId }) => rowId ?? '').split('\r\n')).toEqual([
		'kind,name,width (mm),height (mm),part,pieces,prints',
		expect.stringMatching(/^board,'=Chalk,600,450,mount,2,r\d; r\d$/),
		expect.stringMatching(/^glazing,Clear,600,450,mount,1,r\d$/),
		'',
	]);
});

test('on pages: a box to tick for each size, every piece named once, and nothing runs off its page', () => {
	const [page] = cutListOnPages(boards, 'Cut list', ({ rowId }) => rowId ?? '', scale, 'A4');
	expect(page).toMatchObject({ name: 'Cut list', sheets: [], isContinued: false });
	expect(page!.words.map(({ text, isCut }) => [text.replace(/r\d/g, 'r'), isCut])).toEqual([
		['=Chalk, 600 × 450 mm, mount: 2 pieces. r; r', true],
		['Clear, 600 × 450 mm, mount: 1 piece. r', true],
	]);
	const many = [{ ...boards[0]!, lines: cutListOf(Array.from({ length: 150 }, () => sheet)) }];
	let named = 0;
	const pages = cutListOnPages(many, 'Cut list', () => `A title of some length, the ${++named}th`, scale, 'A4');
	expect(named).toBe(300);
	expect(pages.length).toBeGreaterThan(1);
	expect(pages.flatMap((each) => each.words).filter(({ isCut }) => isCut)).toHaveLength(1);
	for (const each of pages) {
		const used = 12 + 5 * each.words.reduce((sum, { lines }) => sum + lines, 0);
		const { margin, head, foot } = paperRoom;
		expect(used).toBeLessThanOrEqual(papers.A4.heightMm - 2 * margin - head - foot);
	}
	expect(cutListOnPages([{ ...boards[0]!, lines: [] }], 'Cut list', () => '', scale, 'A4')).toEqual([]);
});
