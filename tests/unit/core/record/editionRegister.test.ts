import { describe, expect, test } from 'vitest';
import { withFindingsAcross } from '../../../../src/core/findings/acrossRows.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { editionRegister } from '../../../../src/core/record/editionRegister.ts';
import { numbersHere, rangesText, runName, soldNumbers } from '../../../../src/core/record/registerWords.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row, Typed } from '../../../../src/core/show/row.ts';
import { writeEditions } from '../../../../src/files/editionsCsv.ts';

const { settings } = readSettings({});
function registerOf(prints: readonly Typed[]) {
	const rows = prints.map((typed, at): Row => ({ id: `r${at}`, order: at + 1, typed }));
	const alone = rows.map((row) => judgeRow(row, settings));
	return editionRegister(rows, withFindingsAcross(rows, alone, settings));
}

const pier = { title: 'Pier', maker: 'Ilse Tarnow' };

describe('the register', () => {
	test('counts what is numbered, sold and left, and names what is not there', () => {
		const [entry] = registerOf([
			{ ...pier, edition: '4/12' },
			{ ...pier, edition: '1/12', stage: 'sold' },
			{ title: 'pier ', maker: 'ilse tarnow', edition: '2 of 12', stage: 'collected' },
		]);
		const [run] = entry!.runs;
		expect(run).toMatchObject({ series: '', size: 12, count: 3, sold: 2, left: 10, clashes: [] });
		expect(rangesText(numbersHere(run!.numbers))).toBe('1–2, 4');
		expect(rangesText(soldNumbers(run!.numbers))).toBe('1–2');
		expect(rangesText(run!.missing)).toBe('3, 5–12');
	});

	test('leaves out rows of which no copy is made, as other lists do', () => {
		const none = { ...pier, copies: '0', stage: 'sold' };
		expect(registerOf([{ ...none, edition: '3/12' }])).toEqual([]);
		const [entry] = registerOf([
			{ ...none, edition: '3/12' },
			{ ...pier, edition: '4/12' },
		]);
		expect(entry!.runs[0]!.numbers.map(({ number }) => number)).toEqual([4]);
		expect(rangesText(entry!.runs[0]!.missing)).toBe('1–3, 5–12');
	});

	test('keeps sizes, roman figures and proofs apart, the edition first', () => {
		const [entry] = registerOf([
			{ ...pier, edition: 'HC' },
			{ ...pier, edition: 'AP 2/3', stage: 'sold' },
			{ ...pier, edition: 'II/V' },
			{ ...pier, edition: '1/30' },
			{ ...pier, edition: '1/12' },
			{ ...pier, edition: 'PP' },
			{ ...pier, edition: 'BAT' },
			{ ...pier, edition: 'open', copies: '5' },
			{ ...pier, copies: '2', stage: 'sold' },
		]);
		expect(entry!.runs.map((run) => [runName(run), run.count, run.sold, run.left])).toEqual([
			['Edition of 12', 1, 0, 12],
			['Edition of 30', 1, 0, 30],
			['Edition of 5 in Roman numerals', 1, 0, 5],
			['3 artist’s proofs', 1, 1, 2],
			['1 hors commerce print', 1, 0, undefined],
			['1 printer’s proof', 1, 0, undefined],
			['1 bon à tirer (BAT)', 1, 0, undefined],
		]);
		expect([entry!.open, entry!.unnumbered]).toEqual([
			{ count: 5, sold: 0 },
			{ count: 2, sold: 2 },
		]);
	});

	test('says what clashes: a number twice, a number above the size', () => {
		const [entry] = registerOf([
			{ ...pier, edition: '3/12' },
			{ ...pier, edition: '3/12' },
			{ ...pier, edition: '13/12' },
		]);
		expect(entry!.runs[0]!.clashes.map(({ place }) => place)).toEqual([0, 1, 2]);
		expect(rangesText(entry!.runs[0]!.missing)).toBe('1–2, 4–12');
	});

	test('has each title of each maker, and none that says no edition', () => {
		const titles = registerOf([
			{ ...pier, edition: '1/3' },
			{ title: 'Pier', maker: 'Jonas Abt', edition: '1/3' },
			{ title: 'Weir', price: '90' },
			{ edition: '1/3' },
			{ title: 'Sluice', edition: 'of sorts' },
		]);
		expect(titles.map(({ title, maker }) => [title, maker])).toEqual([
			['Pier', 'Ilse Tarnow'],
			['Pier', 'Jonas Abt'],
		]);
	});

	test('as CSV, a line each', () =>
		expect(
			writeEditions(
				registerOf([
					{ ...pier, edition: '2/3', stage: 'sold' },
					{ ...pier, title: '=Pier', edition: 'open' },
				]),
			),
		).toBe(
			[
				'maker,title,series,size,prints,sold,left,numbers,sold numbers,not here,clashes',
				'Ilse Tarnow,Pier,edition,3,1,1,2,2,2,"1, 3",',
				"Ilse Tarnow,'=Pier,open,,1,0,,,,,",
				'',
			].join('\r\n'),
		));
});

test('a long list of ranges is cut, and says so', () => {
	const ranges = Array.from({ length: 14 }, (_, at) => ({ first: 2 * at + 1, last: 2 * at + 1 }));
	expect(rangesText(ranges, 3)).toBe('1, 3, 5 and more');
});
