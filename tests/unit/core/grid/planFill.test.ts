import { expect, test } from 'vitest';
import { planFill, planSpread, spreadTo } from '../../../../src/core/grid/planFill.ts';
import type { GridCells } from '../../../../src/core/grid/planPaste.ts';
import { between } from '../../../../src/core/grid/selection.ts';
import type { ColumnName } from '../../../../src/core/show/columns.ts';

const grid: GridCells = {
	rows: ['r0', 'r1', 'r2', 'r3', 'r4', 'r5'],
	columns: ['number', 'title', undefined, 'top', 'bottom'],
};

/** What is typed, by row, in the columns number, title, top and bottom. */
const typed = (...rows: readonly string[]) => {
	const columns: readonly ColumnName[] = ['number', 'title', 'top', 'bottom'];
	return (row: number, column: ColumnName) => rows[row]?.split(' ')[columns.indexOf(column)]?.replace('.', '') ?? '';
};
const range = (top: number, left: number, bottom: number, right: number) => ({ top, left, bottom, right });

test('drawn down, a range is repeated, and its catalogue numbers go on', () => {
	const plan = planSpread('down', range(0, 0, 1, 1), range(2, 0, 5, 1), grid, typed('1 a', '3 b'));
	expect(plan.changes).toEqual([
		{ id: 'r2', cells: { number: '5', title: 'a' } },
		{ id: 'r3', cells: { number: '7', title: 'b' } },
		{ id: 'r4', cells: { number: '9', title: 'a' } },
		{ id: 'r5', cells: { number: '11', title: 'b' } },
	]);
	expect(plan.range).toEqual(range(0, 0, 5, 1));
});

test('drawn down from a single number it goes on by one; what is no number is repeated', () => {
	const from = (number: string) =>
		planSpread('down', range(0, 0, 0, 0), range(1, 0, 2, 0), grid, typed(number)).changes.map(
			({ cells }) => cells.number,
		);
	expect(from('9')).toEqual(['10', '11']);
	expect(from('ten')).toEqual(['ten', 'ten']);
});

test('drawn to the right, columns are repeated; a cell that can only be worked out is passed over', () => {
	const plan = planSpread('right', range(0, 0, 0, 1), range(0, 2, 0, 4), grid, typed('1 a'));
	expect(plan.changes).toEqual([{ id: 'r0', cells: { top: 'a', bottom: '1' } }]);
	expect(plan.skipped).toBe(1);
});

test.each([
	{ numbers: ['7'], filled: ['8', '9', '10'] },
	{ numbers: ['10', '20'], filled: ['20', '30', '40'] },
	{ numbers: ['10', 'x'], filled: ['11', '12', '13'] },
	{ numbers: ['x'], filled: ['x', 'x', 'x'] },
])('Ctrl+D over four catalogue numbers that begin $numbers fills $filled', ({ numbers, filled }) => {
	const plan = planFill('down', between({ row: 0, column: 0 }, { row: 3, column: 0 }), grid, typed(...numbers));
	expect(plan?.changes.map(({ cells }) => cells.number)).toEqual(filled);
});

test('Ctrl+D in a single catalogue number copies the one above it', () => {
	const one = between({ row: 1, column: 0 }, { row: 1, column: 0 });
	expect(planFill('down', one, grid, typed('7'))?.changes).toEqual([{ id: 'r1', cells: { number: '7' } }]);
});

test('the handle goes down or to the right, whichever it is drawn farther', () => {
	const source = range(1, 1, 2, 2);
	expect(spreadTo(source, 2, 2)).toBeUndefined();
	expect(spreadTo(source, 0, 0), 'within or before the range there is nothing to fill').toBeUndefined();
	expect(spreadTo(source, 4, 3)).toEqual({ way: 'down', target: range(3, 1, 4, 2) });
	expect(spreadTo(source, 3, 4)).toEqual({ way: 'right', target: range(1, 3, 2, 4) });
});
