import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { type Length, toMm } from '../../../../src/core/length/length.ts';
import {
	copiesWords,
	marginWords,
	leftOutWords,
	rollWords,
	takesWords,
	wantedWords,
	wayWords,
} from '../../../../src/core/order/printWords.ts';
import { piecesOf } from '../../../../src/core/order/printList.ts';
import { whatToPrint } from '../../../../src/core/order/whatToPrint.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { runs } from '../../../soak.ts';

/** The print list of rows by their cells. */
function listOf(cells: readonly Typed[], show: TypedSettings = {}) {
	const { settings, problems } = readSettings(show);
	expect(problems).toEqual([]);
	const rows = cells.map((typed, place) => ({ id: `r${place}`, order: place, typed }));
	const results = rows.map((row) => judgeRow(row, settings));
	return { rows, results, settings, ...whatToPrint(rows, results, settings) };
}

const print: Typed = { 'picture width': '300', 'picture height': '200' };
const papers = [
	{ name: 'Rag', width: 329, height: 483, margin: 5, price: '42', pack: 25, count: 3 },
	{ name: 'Roll', width: 432, roll: '15 m', margin: 3, price: '80', count: 1 },
];

describe('papers and pictures', () => {
	const { papers: printed, settings } = listOf(
		[
			{ ...print, paper: 'Roll', copies: '60' },
			{ ...print, paper: 'rag', copies: '4', 'margin left': '20' },
			{ 'picture width': '200', 'picture height': '300', paper: 'Roll' },
			{ ...print, paper: 'A3' },
		],
		{ papers, proofs: 2 },
	);
	test('by paper, in the order of the list, others behind', () =>
		expect(printed.map(({ name, pictures }) => [name, pictures.map(({ place }) => place)])).toEqual([
			['Rag', [1]],
			['Roll', [0, 2]],
			['A3', [3]],
		]));
	test('the way up, the margins, copies and proofs, and what they take', () => {
		const [[rag], [wide, tall], [sheet]] = printed.map(({ pictures }) => pictures) as [
			(typeof printed)[0]['pictures'],
			(typeof printed)[0]['pictures'],
			(typeof printed)[0]['pictures'],
		];
		expect(marginWords(rag!.on, settings)).toBe('left 20, top 64.5, right 163, bottom 64.5 mm');
		expect([copiesWords(rag!), takesWords(rag!, settings)]).toEqual(['4 copies and 2 proofs', '6 sheets']);
		expect([wide!, tall!].map(({ picture }) => wayWords(picture))).toEqual(['landscape', 'portrait']);
		expect([wide!, tall!].map((picture) => takesWords(picture, settings))).toEqual([
			'62 pieces of 306 mm',
			'3 pieces of 306 mm',
		]);
		expect([copiesWords({ copies: 1, proofs: 0 }), copiesWords({ copies: 1, proofs: 1 })]).toEqual([
			'1 copy',
			'1 copy and 1 proof',
		]);
		expect(takesWords(sheet!, settings)).toBe('3 sheets');
	});
	test('sheets, packs and the length of roll, with what is in stock', () => {
		expect(printed.map(wantedWords)).toEqual(['6 sheets', '19.89 m of the roll', '3 sheets']);
		expect(printed.map(({ line }) => [line.packs, line.cost])).toEqual([
			[1, 4200],
			[1, 8000],
			[3, undefined],
		]);
		expect(printed[0]!.line.there).toBe(3);
		expect(toMm(printed[1]!.line.there as Length)).toBe(15_000);
	});
});

test('prints that are left out are named with the reason, blank rows are not', () => {
	const { leftOut, results, settings } = listOf(
		[
			{ ...print, paper: 'Rag', side: 'x' },
			{},
			{ ...print },
			{ ...print, paper: 'Rag', copies: '0' },
			{ title: 'Ebb', mount: 'fit' },
			{ ...print, paper: 'Rag' },
		],
		{ papers },
	);
	expect(leftOut.map(({ row, reason }) => [row, reason])).toEqual([
		[1, 'stop'],
		[3, 'no-paper'],
		[4, 'no-copies'],
		[5, 'stop'],
	]);
	const words = leftOut.map((each) => leftOutWords(each.reason, results[each.row - 1], settings));
	expect(words[0]).toMatch(/“x”/);
	expect(words.slice(1, 3)).toEqual(['It has no paper yet.', 'Its number of copies is 0.']);
});

test('a row that only has columns of another program says that nothing is typed in it', () => {
	const { settings } = readSettings({});
	const rows = [{ id: 'r', order: 0, typed: {}, extra: { crate: '7' } }];
	const results = rows.map((row) => judgeRow(row, settings));
	const { leftOut } = whatToPrint(rows, results, settings);
	expect(leftOut.map(({ reason }) => leftOutWords(reason, results[0], settings))).toEqual([
		'Nothing is typed in it yet.',
	]);
});

test('what the paper makes of a picture is said beside it', () => {
	const { papers: printed } = listOf([{ shape: '3:2', paper: 'A5' }]);
	expect(printed[0]!.pictures[0]!.said.map(({ code }) => code)).toEqual(['paper-bounds']);
});

test('a show without papers has nothing to print', () => {
	expect(listOf([print, {}])).toMatchObject({ papers: [], leftOut: [{ row: 1, reason: 'no-paper' }] });
	expect(listOf([])).toMatchObject({ papers: [], leftOut: [] });
});

test('margins and picture add up to the paper, and sheets and roll to the pieces, whatever is typed', () => {
	const size = fc.integer({ min: 40, max: 420 });
	const cells = fc.record({
		width: size,
		height: size,
		paper: fc.constantFrom('Rag', 'Roll', 'A2', ''),
		copies: fc.constantFrom('', '0', '1', '7'),
		left: fc.option(fc.nat(30), { nil: undefined }),
	});
	fc.assert(
		fc.property(fc.array(cells, { maxLength: 8 }), fc.nat(3), (rows, proofs) => {
			const typed = rows.map(({ width, height, paper, copies, left }) => ({
				'picture width': `${width}`,
				'picture height': `${height}`,
				...(paper && { paper }),
				...(copies && { copies }),
				...(left !== undefined && { 'margin left': `${left}` }),
			}));
			const { papers: printed, leftOut } = listOf(typed, { papers, proofs });
			const places = [
				...printed.flatMap(({ pictures }) => pictures.map(({ place }) => place)),
				...leftOut.map(({ row }) => row - 1),
			];
			expect(places.sort((a, b) => a - b)).toEqual(rows.map((_, place) => place)); // each print once
			for (const { pictures, pieces, rollLength, line } of printed) {
				expect(pieces).toBe(pictures.reduce((sum, { copies, proofs: own }) => sum + copies + own, 0));
				let length = 0;
				for (const picture of pictures) {
					const { on, picture: own } = picture;
					expect(on.left + own.width + on.right).toBe(on.paper.width);
					expect(on.top + own.height + on.bottom).toBe(on.paper.height);
					length += (picture.cutOff ?? 0) * piecesOf(picture);
				}
				expect(rollLength ?? 0).toBe(length);
				expect(line.wanted).toBe(rollLength ?? pieces);
			}
		}),
		{ numRuns: runs(50, 20_000) },
	);
});

test('a picture on a roll says how it lies across it, and at which of its sides the roll is cut', () => {
	const { papers: printed } = listOf(
		[
			{ ...print, paper: 'Roll' },
			{ 'picture width': '200', 'picture height': '300', paper: 'Roll' },
			{ ...print, paper: 'Rag' },
		],
		{ papers },
	);
	const words = new Map(printed.flatMap(({ pictures }) => pictures.map((each) => [each.place, rollWords(each)])));
	expect([words.get(0), words.get(1), words.get(2)]).toEqual([
		'Height across the roll, cut left and right',
		'Width across the roll, cut above and below',
		undefined,
	]);
	// As it lies, the roll's 432 mm are across the picture's shorter side.
	const [, roll] = printed;
	expect(roll!.pictures.map(({ on }) => [toMm(on.paper.width), toMm(on.paper.height)])).toEqual([
		[306, 432],
		[432, 306],
	]);
});
