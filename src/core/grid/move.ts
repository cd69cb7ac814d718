import { at, contains, type Extent, headRow, isSingle, type Position, rangeOf, type Selection } from './selection.ts';

/** A way to go from a cell to another. */
export type Move =
	| 'left'
	| 'right'
	| 'up'
	| 'down'
	| 'row start'
	| 'row end'
	| 'grid start'
	| 'grid end'
	| 'page up'
	| 'page down'
	| 'edge left'
	| 'edge right'
	| 'edge up'
	| 'edge down';

/** What moves need to know of the grid. */
export interface GridShape extends Extent {
	/** How many rows are seen at a time. */
	readonly pageRows: number;
	/** Whether the column heads can be gone to, above the first row. */
	readonly hasHead: boolean;
	/** Whether a cell shows anything, typed or worked out. */
	readonly isFilled: (position: Position) => boolean;
}

const steps = {
	left: { row: 0, column: -1 },
	right: { row: 0, column: 1 },
	up: { row: -1, column: 0 },
	down: { row: 1, column: 0 },
} as const;

/**
 * Goes from the selection to one cell. Nothing wraps, and at an edge one stays.
 * @param extends whether the range is extended instead, from its head; ranges do not reach the column heads
 */
export function move(selection: Selection, way: Move, grid: GridShape, isExtending = false): Selection {
	const to = target(isExtending ? selection.head : selection.active, way, grid);
	if (!isExtending) return at(to.row, to.column);
	return { ...selection, head: { row: Math.max(0, to.row), column: to.column } };
}

function target(from: Position, way: Move, grid: GridShape): Position {
	const [lastRow, lastColumn] = [grid.rows - 1, grid.columns - 1];
	const firstRow = grid.hasHead ? headRow : 0;
	switch (way) {
		case 'row start':
			return { row: from.row, column: 0 };
		case 'row end':
			return { row: from.row, column: lastColumn };
		case 'grid start':
			return { row: Math.min(0, lastRow), column: 0 };
		case 'grid end':
			return { row: lastRow, column: lastColumn };
		case 'page up':
			return { row: Math.max(Math.min(0, from.row), from.row - grid.pageRows), column: from.column };
		case 'page down':
			return { row: Math.min(lastRow, from.row + grid.pageRows), column: from.column };
		case 'edge left':
			return edge(from, steps.left, grid);
		case 'edge right':
			return edge(from, steps.right, grid);
		case 'edge up':
			return edge(from, steps.up, grid);
		case 'edge down':
			return edge(from, steps.down, grid);
		default: {
			const row = Math.max(firstRow, Math.min(lastRow, from.row + steps[way].row));
			const column = Math.max(0, Math.min(lastColumn, from.column + steps[way].column));
			return { row, column };
		}
	}
}

/**
 * The edge of what is filled: from within a filled stretch its last cell, else the next filled cell; where there is
 * none, the last cell of the grid.
 */
function edge(from: Position, step: Position, grid: GridShape): Position {
	const whole = { top: 0, bottom: grid.rows - 1, left: 0, right: grid.columns - 1 };
	const next = ({ row, column }: Position): Position => ({ row: row + step.row, column: column + step.column });
	let here = next(from);
	if (!contains(whole, here)) return from;
	const isInStretch = contains(whole, from) && grid.isFilled(from) && grid.isFilled(here);
	for (let ahead = next(here); contains(whole, ahead); ahead = next(here)) {
		if (isInStretch ? !grid.isFilled(ahead) : grid.isFilled(here)) return here;
		here = ahead;
	}
	return here;
}

/**
 * Where Tab and Enter go after a cell was typed. In a range they step through it, row by row or column by column, and
 * begin again at its end. From a single cell Tab goes on in the next row at the end of a row, Enter comes back to the
 * column in which a run of Tab began, and both stay at the end of the grid.
 * @param isBack with Shift
 */
export function step(selection: Selection, key: 'tab' | 'enter', isBack: boolean, grid: Extent): Selection {
	if (isSingle(selection)) return stepAlone(selection, key, isBack, grid);
	const { top, bottom, left, right } = rangeOf(selection);
	const [rows, columns] = [bottom - top + 1, right - left + 1];
	const { row, column } = selection.active;
	const place = key === 'tab' ? (row - top) * columns + column - left : (column - left) * rows + row - top;
	const next = (place + (isBack ? -1 : 1) + rows * columns) % (rows * columns);
	const across = key === 'tab' ? next % columns : Math.floor(next / rows);
	const down = key === 'tab' ? Math.floor(next / columns) : next % rows;
	return { ...selection, active: { row: top + down, column: left + across } };
}

function stepAlone(selection: Selection, key: 'tab' | 'enter', isBack: boolean, grid: Extent): Selection {
	const { row, column } = selection.active;
	const by = isBack ? -1 : 1;
	if (key === 'enter') {
		const to = Math.max(0, Math.min(grid.rows - 1, row + by));
		return to === row ? selection : at(to, isBack ? column : runColumn(selection));
	}
	const place = Math.max(0, Math.min(grid.rows * grid.columns - 1, row * grid.columns + column + by));
	return { ...at(Math.floor(place / grid.columns), place % grid.columns), runFrom: runColumn(selection) };
}

/** The column to which Enter goes in the row below: where a run of Tab began, else the active one. */
export const runColumn = ({ active, runFrom = active.column }: Selection): number => runFrom;
