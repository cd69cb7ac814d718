/** A cell of the grid, by its place among the rows and columns shown, from 0. A column's head is in row `headRow`. */
export interface Position {
	readonly row: number;
	readonly column: number;
}

/** The row of the column heads, which can be gone to but are no part of a range. */
export const headRow = -1;

/**
 * What is selected: one rectangle, and in it the active cell, which has the focus and is typed into.
 *
 *     anchor ┌───────┐
 *            │ ▢     │   ▢ active: the anchor, until Tab or Enter steps through the range
 *            └───────┘ head
 */
export interface Selection {
	readonly active: Position;
	/** The corner that stays when the range is extended. */
	readonly anchor: Position;
	/** The corner that moves. */
	readonly head: Position;
	/** The column in which a run of Tab began, to which Enter comes back; absent outside a run. */
	readonly runFrom?: number;
}

/** A rectangle of cells; all four are in it. */
export interface Range {
	readonly top: number;
	readonly bottom: number;
	readonly left: number;
	readonly right: number;
}

/** How many rows and columns there are. */
export interface Extent {
	readonly rows: number;
	readonly columns: number;
}

/** One cell. */
export const at = (row: number, column: number): Selection => between({ row, column }, { row, column });

/** The rectangle between two corners; the first is active. */
export const between = (anchor: Position, head: Position): Selection => ({ active: anchor, anchor, head });

/** The same anchor and active cell, with another corner opposite: Shift+click, dragging. */
export const extendTo = (selection: Selection, head: Position): Selection => ({ ...selection, head });

/** The rectangle that is selected. */
export const rangeOf = ({ anchor, head }: Selection): Range => ({
	top: Math.min(anchor.row, head.row),
	bottom: Math.max(anchor.row, head.row),
	left: Math.min(anchor.column, head.column),
	right: Math.max(anchor.column, head.column),
});

/** Whether a cell lies in a rectangle. */
export const contains = ({ top, bottom, left, right }: Range, { row, column }: Position): boolean =>
	row >= top && row <= bottom && column >= left && column <= right;

/** Whether two positions are the same cell. */
export const isSamePosition = (a: Position, b: Position): boolean => a.row === b.row && a.column === b.column;

/** Whether no more than one cell is selected. */
export const isSingle = ({ anchor, head }: Selection): boolean => isSamePosition(anchor, head);

/** All of the rows that the range touches; the active cell stays. */
export const wholeRows = (selection: Selection, { columns }: Extent): Selection => {
	const { top, bottom } = rangeOf(selection);
	return { active: selection.active, anchor: { row: top, column: 0 }, head: { row: bottom, column: columns - 1 } };
};

/** All of the columns that the range touches; the active cell stays. */
export const wholeColumns = (selection: Selection, { rows }: Extent): Selection => {
	const { left, right } = rangeOf(selection);
	return { active: selection.active, anchor: { row: 0, column: left }, head: { row: rows - 1, column: right } };
};

/** The columns from one to another, all of their rows, from their heads; active is a cell of the given row in the first of them. */
export const columnsBetween = (from: number, to: number, activeRow: number, { rows }: Extent): Selection => ({
	active: { row: Math.max(0, activeRow), column: from },
	anchor: { row: 0, column: from },
	head: { row: rows - 1, column: to },
});

/** The rows from one to another, all of their columns; the first of them is active. */
export const rowsBetween = (from: number, to: number, activeColumn: number, { columns }: Extent): Selection => ({
	active: { row: from, column: activeColumn },
	anchor: { row: from, column: 0 },
	head: { row: to, column: columns - 1 },
});

/** Everything; the active cell stays. */
export const everything = (selection: Selection, { rows, columns }: Extent): Selection => ({
	active: selection.active,
	anchor: { row: 0, column: 0 },
	head: { row: rows - 1, column: columns - 1 },
});

/** The selection with nothing outside a grid that may have shrunk; undefined where there are no cells. */
export function clamp(selection: Selection, { rows, columns }: Extent): Selection | undefined {
	if (rows === 0 || columns === 0) return undefined;
	const inside = ({ row, column }: Position): Position => ({
		row: Math.max(row === headRow ? headRow : 0, Math.min(row, rows - 1)),
		column: Math.max(0, Math.min(column, columns - 1)),
	});
	const { active, anchor, head } = selection;
	return { ...selection, active: inside(active), anchor: inside(anchor), head: inside(head) };
}

/**
 * The selection on the same rows after rows have come, gone or moved. A row that is gone gives way to the one that stood
 * after it, or to the last; a range whose ends no longer stand around its active cell shrinks to that cell.
 * @param before names of the rows as the selection counts them
 * @param after names of the rows as they stand now
 * @returns undefined where no rows are left
 */
export function follow(
	selection: Selection,
	before: readonly string[],
	after: readonly string[],
): Selection | undefined {
	if (after.length === 0) return undefined;
	const places = new Map(after.map((id, row) => [id, row]));
	const moved = ({ row, column }: Position): Position => {
		if (row === headRow) return { row, column };
		const next = before.slice(row).find((id) => places.has(id));
		return { row: next === undefined ? after.length - 1 : places.get(next)!, column };
	};
	const [active, anchor, head] = [moved(selection.active), moved(selection.anchor), moved(selection.head)];
	const isAround = contains(rangeOf({ active, anchor, head }), active);
	return isAround ? { active, anchor, head } : at(active.row, active.column);
}

/** The selection on the same columns after columns have come, gone or moved, by the rule of `follow`. */
export function followColumns(
	selection: Selection,
	before: readonly string[],
	after: readonly string[],
): Selection | undefined {
	const followed = follow(turned(selection), before, after);
	return followed && turned(followed);
}

/** Columns are to a selection what rows are: turned, one rule holds for both. */
const turned = ({ active, anchor, head }: Selection): Selection => {
	const turn = ({ row, column }: Position): Position => ({ row: column, column: row });
	return { active: turn(active), anchor: turn(anchor), head: turn(head) };
};
