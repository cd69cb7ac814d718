import type { ColumnName } from '../show/columns.ts';
import { numberSeries } from './numberSeries.ts';
import { type CellPlan, type GridCells, planPaste } from './planPaste.ts';
import { type Range, rangeOf, type Selection } from './selection.ts';

/** Which way cells are filled. */
export type FillWay = 'down' | 'right';

/** What was typed into a cell, with its unit where it has one of its own; blank where worked out. */
export type TextOf = (row: number, column: ColumnName) => string;

/**
 * Fills the selection from its first row (down) or its first column (right); where it is only one, from the one before
 * it. A cell that was worked out there is worked out here too. Catalogue numbers, where more than one is selected, go
 * on from the first, by the step to the second if that is typed.
 * @returns undefined where there is nothing to fill from
 */
export function planFill(way: FillWay, selection: Selection, grid: GridCells, textOf: TextOf): CellPlan | undefined {
	const range = rangeOf(selection);
	const { source, target } = way === 'down' ? fromAbove(range) : fromLeft(range);
	if (source.top < 0 || source.left < 0) return undefined;
	return { ...spread(way, source, target, grid, textOf, range), range };
}

/**
 * Fills on from a range, as far as its handle was drawn: its rows (down) or columns (right) again and again, catalogue
 * numbers going on.
 * @param target the cells to fill, next to the range and as wide (down) or as high (right)
 */
export function planSpread(way: FillWay, source: Range, target: Range, grid: GridCells, textOf: TextOf): CellPlan {
	const range = { ...source, bottom: target.bottom, right: target.right };
	return { ...spread(way, source, target, grid, textOf, source), range };
}

/**
 * Where the handle of a range has been drawn to: the cells below it, or to the right of it, whichever is farther.
 * @returns undefined while that is within the range
 */
export function spreadTo(
	source: Range,
	row: number,
	column: number,
): { readonly way: FillWay; readonly target: Range } | undefined {
	const [down, right] = [row - source.bottom, column - source.right];
	if (down <= 0 && right <= 0) return undefined;
	return down >= right
		? { way: 'down', target: { ...source, top: source.bottom + 1, bottom: row } }
		: { way: 'right', target: { ...source, left: source.right + 1, right: column } };
}

/** @param known the cells that say how catalogue numbers go on */
function spread(way: FillWay, source: Range, target: Range, grid: GridCells, textOf: TextOf, known: Range): CellPlan {
	const rows = places(target.top, target.bottom);
	const at = (first: number, last: number, from: number, place: number) =>
		first + ((place - from) % (last - first + 1));
	const columns = places(target.left, target.right).map((place): readonly string[] => {
		const column = grid.columns[way === 'down' ? place : at(source.left, source.right, target.left, place)];
		if (column === undefined) return rows.map(() => '');
		const series = way === 'down' && column === 'number' ? goingOn(source, known, rows.length, textOf) : undefined;
		return (
			series ?? rows.map((row) => textOf(way === 'down' ? at(source.top, source.bottom, target.top, row) : row, column))
		);
	});
	const table = rows.map((_, down) => columns.map((texts) => texts[down]!));
	const anchor = { row: target.top, column: target.left };
	return planPaste(table, { active: anchor, anchor, head: { row: target.bottom, column: target.right } }, grid);
}

/** The catalogue numbers after those of the source; from a single row the one below it, if typed, gives the step. */
function goingOn(source: Range, known: Range, count: number, textOf: TextOf): readonly string[] | undefined {
	if (known.top > source.top) return undefined; // a single cell is a copy of the one above it
	const numbers = places(source.top, source.bottom).map((row) => textOf(row, 'number'));
	const second = known.bottom > source.bottom ? textOf(source.bottom + 1, 'number') : '';
	const next = second.trim() === '' ? undefined : numberSeries([...numbers.slice(-1), second], count - 1);
	return next ? [second, ...next] : numberSeries(numbers, count);
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
