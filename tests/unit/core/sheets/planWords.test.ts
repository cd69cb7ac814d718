import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { rowsOfDropOut } from '../../../../src/core/sheets/leftOvers.ts';
import { hasBounds, unplacedWords } from '../../../../src/core/sheets/planWords.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { plansOf, showOf } from './sheetsOf.ts';

const boards = [{ name: 'Chalk', width: 600, height: 900, price: 900, count: 1 }];

test('whose the blanks are that have no place is said, with how many of each, and no least is', () => {
	const show = showOf(3, { boards, spares: '10 %' });
	const rows = show.rows.map((row, place) => (place === 1 ? { ...row, typed: { ...row.typed, copies: '3' } } : row));
	const [plan] = plansOf({ ...show, rows });
	expect(hasBounds(plan!)).toBe(false);
	const [words, ...others] = unplacedWords(plan!, { unit: 'mm', ruler: mm(1) });
	expect(others).toEqual([]);
	expect(words!.sentence).toBe(
		'4 blanks of 600 × 450 mm: the “Chalk” in stock is used up. To buy more, add it to the list once more, with “In stock” left blank.',
	);
	expect(words!.whose.reduce((sum, { count }) => sum + count, 0)).toBe(4);
	expect(words!.whose).toContainEqual({ rowId: 'r3', count: 1 });
	expect(words!.whose.at(-1), 'the spare').toEqual({ rowId: undefined, count: 1 });
	expect(hasBounds(plansOf(showOf(2, { boards }))[0]!)).toBe(true);
});

test('a drop-out may be of any print of its board whose window, or inner window, is of its size', () => {
	const { settings } = readSettings({
		...{ mountSize: '600 x 450 mm', border: '70 mm', boards },
		bench: { inner: 'own blank' },
	});
	const windowed = (typed: Typed): Typed => ({ 'window width': '400', 'window height': '260', ...typed });
	const typed: Typed[] = [
		windowed({}),
		windowed({ board: 'Greyback' }),
		windowed({ copies: '0' }),
		windowed({ 'picture width': 'abc' }),
		windowed({ 'window width': '410', 'window height': '270', 'inner mount': '5' }),
		windowed({ 'window width': '410' }),
	];
	const rows = typed.map((cells, place) => ({ id: `r${place}`, order: place, typed: cells }));
	const results = rows.map((row) => judgeRow(row, settings));
	const piece = { board: 'chalk', width: mm(400), height: mm(260) };
	expect(rowsOfDropOut(piece, results, settings)).toEqual([0, 4]);
});
