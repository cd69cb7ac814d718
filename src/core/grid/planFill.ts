import type { ColumnName } from '../show/columns.ts';
import { type CellPlan, type GridCells, planPaste } from './planPaste.ts';
import { type Range, rangeOf, type Selection } from './selection.ts';

/**
 * Fills the selection from its first row (down) or its first column (right); where it is only one, from the one before
 * it. A cell that was worked out there is worked out here too.
 * @param textOf what was typed into a cell, with its unit where it has one of its own; blank where worked out
 * @returns undefined where there is nothing to fill from
 */
export function planFill(
	way: 'down' | 'right',
	selection: Selection,
	grid: GridCells,
	textOf: (row: number, column: ColumnName) => string,
): CellPlan | undefined {
	const range = rangeOf(selection);
	const { source, target } = way === 'down' ? fromAbove(range) : fromLeft(range);
	if (source.top < 0 || source.left < 0) return undefined;
	const table = places(source.top, source.bottom).map((row) =>
		places(source.left, source.right).map((at) => {
			const column = grid.columns[at];
			return column === undefined ? '' : textOf(row, column);
		}),
	);
	const anchor = { row: target.top, column: target.left };
	const plan = planPaste(table, { active: anchor, anchor, head: { row: target.bottom, column: target.right } }, grid);
	return { ...plan, range };
}

function fromAbove(range: Range): { readonly source: Range; readonly target: Range } {
	if (range.top === range.bottom)
		return { source: { ...range, top: range.top - 1, bottom: range.top - 1 }, target: range };
	return { source: { ...range, bottom: range.top }, target: { ...range, top: range.top + 1 } };
}

function fromLeft(range: Range): { readonly source: Range; readonly target: Range } {
	if (range.left === range.right)
		return { source: { ...range, left: range.left - 1, right: range.left - 1 }, target: range };
	return { source: { ...range, right: range.left }, target: { ...range, left: range.left + 1 } };
}

const places = (first: number, last: number): readonly number[] =>
	Array.from({ length: last - first + 1 }, (_, index) => first + index);
