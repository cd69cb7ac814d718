import { expect, test } from 'vitest';
import { planFill } from '../../../../src/core/grid/planFill.ts';
import { type GridCells, planPaste } from '../../../../src/core/grid/planPaste.ts';
import { at, between } from '../../../../src/core/grid/selection.ts';

/** Number, title, a column that can only be worked out, top, bottom; three rows. */
const grid: GridCells = { rows: ['r0', 'r1', 'r2'], columns: ['number', 'title', undefined, 'top', 'bottom'] };
const cells = (top: number, left: number, bottom: number, right: number) =>
	between({ row: top, column: left }, { row: bottom, column: right });

test('a table goes to the right and down from the active cell', () => {
	expect(
		planPaste(
			[
				['1', 'Pier'],
				['2', 'Quay'],
			],
			at(1, 0),
			grid,
		),
	).toEqual({
		changes: [
			{ id: 'r1', cells: { number: '1', title: 'Pier' } },
			{ id: 'r2', cells: { number: '2', title: 'Quay' } },
		],
		added: [],
		skipped: 0,
		outside: 0,
		range: { top: 1, bottom: 2, left: 0, right: 1 },
	});
});

test('rows past the last are added, blank ones at the end are not', () => {
	const plan = planPaste([['a'], ['b'], [''], ['c'], [' '], ['']], at(2, 1), grid);
	expect(plan.changes).toEqual([{ id: 'r2', cells: { title: 'a' } }]);
	expect(plan.added.map(({ cells: { title } }) => title)).toEqual(['b', '', 'c']);
	expect(plan.range).toEqual({ top: 2, bottom: 5, left: 1, right: 1 });
});

test('into an empty grid all rows are added', () => {
	const plan = planPaste([['1'], ['2']], at(0, 0), { ...grid, rows: [] });
	expect(plan.added).toEqual([{ cells: { number: '1' } }, { cells: { number: '2' } }]);
});

test('what can only be worked out is passed over and counted, and so is what has no column', () => {
	const plan = planPaste(
		[
			['a', 'b', 'c', 'd', 'e', 'f'],
			['g', 'h'],
		],
		at(0, 1),
		grid,
	);
	expect(plan.changes[0]).toEqual({ id: 'r0', cells: { title: 'a', top: 'c', bottom: 'd' } });
	expect(plan.changes[1]).toEqual({ id: 'r1', cells: { title: 'g' } });
	expect([plan.skipped, plan.outside, plan.range.right]).toEqual([2, 2, 4]);
});

test('blank cells clear, and a row that is too short leaves what is there', () => {
	expect(planPaste([['', 'b'], ['']], at(0, 0), grid).changes).toEqual([
		{ id: 'r0', cells: { number: '', title: 'b' } },
		{ id: 'r1', cells: { number: '' } },
	]);
});

test('one text fills the range', () => {
	const plan = planPaste([['70']], cells(0, 3, 2, 4), grid);
	expect(plan.changes).toEqual(grid.rows.map((id) => ({ id, cells: { top: '70', bottom: '70' } })));
	expect(plan.range).toEqual({ top: 0, bottom: 2, left: 3, right: 4 });
});

test('a table fills a range that is a whole number of it, and no other', () => {
	const twice = planPaste([['1'], ['2']], cells(0, 3, 1, 4), grid);
	expect(twice.changes).toEqual([
		{ id: 'r0', cells: { top: '1', bottom: '1' } },
		{ id: 'r1', cells: { top: '2', bottom: '2' } },
	]);
	expect(planPaste([['1'], ['2']], cells(0, 3, 2, 3), grid).changes).toHaveLength(2);
});

test('the corner that the range was begun from does not matter', () => {
	expect(planPaste([['70']], between({ row: 2, column: 4 }, { row: 0, column: 3 }), grid).changes).toHaveLength(3);
});

const textOf = (row: number, column: string) => (column === 'bottom' ? '' : `${column} ${row}`);

test('filling down copies the first row of the range into the others', () => {
	const plan = planFill('down', cells(0, 1, 2, 4), grid, textOf);
	expect(plan?.changes).toEqual([
		{ id: 'r1', cells: { title: 'title 0', top: 'top 0', bottom: '' } },
		{ id: 'r2', cells: { title: 'title 0', top: 'top 0', bottom: '' } },
	]);
	expect(plan?.range).toEqual({ top: 0, bottom: 2, left: 1, right: 4 });
});

test('filling down into one row copies the row above it', () => {
	expect(planFill('down', at(1, 1), grid, textOf)?.changes).toEqual([{ id: 'r1', cells: { title: 'title 0' } }]);
	expect(planFill('down', at(0, 1), grid, textOf)).toBeUndefined();
});

test('filling right copies the first column of the range, or the one before it', () => {
	expect(planFill('right', cells(0, 3, 1, 4), grid, textOf)?.changes).toEqual([
		{ id: 'r0', cells: { bottom: 'top 0' } },
		{ id: 'r1', cells: { bottom: 'top 1' } },
	]);
	expect(planFill('right', at(2, 4), grid, textOf)?.changes).toEqual([{ id: 'r2', cells: { bottom: 'top 2' } }]);
	expect(planFill('right', at(2, 0), grid, textOf)).toBeUndefined();
});
