import { frozenColumns } from '../../core/grid/columnView.ts';
import {
	at,
	between,
	clamp,
	columnsBetween,
	everything,
	extendTo,
	follow,
	followColumns,
	headRow,
	isSingle,
	type Position,
	type Range,
	rangeOf,
	rowsBetween,
	type Selection,
	wholeColumns,
	wholeRows,
} from '../../core/grid/selection.ts';
import { isSameSequence } from '../../core/grid/shownRows.ts';
import type { Row, RowId } from '../../core/show/row.ts';
import type { GridColumn } from './gridColumns.ts';
import { type GridFocus, type GridPlace, isGridFocus } from './gridFocus.ts';
import type { SeenCells } from './seenCells.ts';
import type { ShownColumn } from './shownColumns.svelte.ts';

/**
 * What of a selection is scrolled into view: its active cell, the corner that was moved, only the row of that or the active
 * column, or the corner that was moved with the first of the columns that scroll.
 */
type Look = 'active' | 'head' | 'row' | 'column' | 'start';

/** A selection, and the rows and columns among which its places were counted. */
interface Kept {
	readonly selection: Selection;
	readonly rows: readonly Row[];
	readonly columns: readonly ShownColumn[];
	readonly look: Look;
}

/** What is selected, and in it the active cell. It stays on its prints when rows come, go or move. */
export class GridSelection {
	readonly #cells: SeenCells;
	#kept = $state.raw<Kept>({ selection: at(0, frozenColumns.indexOf('title')), rows: [], columns: [], look: 'active' });
	/** Rows that are wholly in view; the screen says how many. */
	pageRows = 10;

	/** Undefined where there are no rows. */
	readonly now: Selection | undefined = $derived.by(() => {
		const { selection, rows, columns } = this.#kept;
		const { rows: now, extent } = this.#cells;
		const across = onColumns(selection, columns, this.#cells.columns.list);
		if (rows.length === 0 || now.length === 0) return clamp(across, extent);
		if (now === rows || isSameSequence(rows, now)) return across; // no row has come, gone or moved
		const [before, after] = [rows.map(idOf), now.map(idOf)];
		const known = new Set(before);
		// Another show has been put in the place of this one: one begins at its top.
		if (!after.some((id) => known.has(id))) return at(0, across.active.column);
		return follow(across, before, after);
	});
	/** Place of the active row, from 0; -1 for the head, or where there are no rows. */
	readonly rowIndex = $derived(this.now?.active.row ?? headRow);
	/** Place of the active column, from 0. */
	readonly columnIndex = $derived((this.now ?? this.#kept.selection).active.column);
	/** The cells that are selected; undefined where there are none, and in the head. */
	readonly range: Range | undefined = $derived(
		this.now === undefined || this.rowIndex === headRow ? undefined : rangeOf(this.now),
	);

	/** The cell to scroll into view; in `headRow`, its column only. */
	readonly lookedAt: Position = $derived.by(() => {
		const { now } = this;
		const { look } = this.#kept;
		if (now === undefined || look === 'column') return { row: headRow, column: this.columnIndex };
		if (look === 'start') return { row: now.head.row, column: frozenColumns.length };
		if (look === 'row') return { row: now.head.row, column: this.columnIndex };
		return look === 'head' ? now.head : now.active;
	});

	constructor(cells: SeenCells) {
		this.#cells = cells;
	}

	/** Another object each time something is selected, and the same while the rows change under what is selected. */
	get choice(): object {
		return this.#kept;
	}

	/** The active row; undefined in the head, or where there are no rows. */
	get row(): Row | undefined {
		return this.#cells.rows[this.rowIndex];
	}

	/** The active column. */
	get column(): GridColumn {
		return this.#cells.columns.list[this.columnIndex]!;
	}

	/** Whether more than one cell is selected. */
	get isRange(): boolean {
		return this.range !== undefined && this.now !== undefined && !isSingle(this.now);
	}

	/** The rows that are selected, or of which a cell is. */
	get rowIds(): readonly RowId[] {
		return this.range === undefined ? [] : this.#cells.rows.slice(this.range.top, this.range.bottom + 1).map(idOf);
	}

	/** The first and the last of the columns that are selected from end to end, else the active one. */
	get wholeColumns(): readonly [first: number, last: number] {
		const { range, columnIndex } = this;
		const isWhole = range?.top === 0 && range.bottom === this.#cells.rows.length - 1;
		return isWhole ? [range.left, range.right] : [columnIndex, columnIndex];
	}

	/** What is selected, to be kept with an edit; undefined in the head, and where there are no rows. */
	get focus(): GridFocus | undefined {
		return this.now && this.focusOn(this.now);
	}

	/** A selection by its prints and columns; undefined in the head, and past the last row or column. */
	focusOn(selection: Selection, rows: readonly { readonly id: RowId }[] = this.#cells.rows): GridFocus | undefined {
		const place = ({ row, column }: Position): GridPlace | undefined => {
			const [found, shown] = [rows[row], this.#cells.columns.list[column]];
			return found && shown && { id: found.id, key: shown.key };
		};
		const [active, anchor, head] = [place(selection.active), place(selection.anchor), place(selection.head)];
		if (!active || !anchor || !head) return undefined;
		const { top, bottom } = rangeOf(selection);
		return { active, anchor, head, rows: rows.slice(top, bottom + 1).map(idOf) };
	}

	/**
	 * Selects what was kept with an edit or a show, if its active cell is still there; else nothing changes. Only the active
	 * cell where its rows no longer stand together: after another sort or filter, other rows may stand between them.
	 */
	restore(focus: unknown): void {
		if (!isGridFocus(focus)) return;
		this.#cells.arranged.reveal(focus.active.id);
		const row = this.#cells.indexOf(focus.active.id);
		if (row < 0) return;
		const column = (key: GridPlace['key']) => Math.max(0, this.#cells.columns.indexOf(key));
		const active = { row, column: column(focus.active.key) };
		const span = spanOf(focus.rows ?? [], this.#cells.rows);
		if (span === undefined) return this.set(at(active.row, active.column));
		const isUpward = this.#cells.indexOf(focus.anchor.id) > this.#cells.indexOf(focus.head.id);
		const [from, to] = isUpward ? [span.last, span.first] : [span.first, span.last];
		const anchor = { row: from, column: column(focus.anchor.key) };
		this.set({ active, anchor, head: { row: to, column: column(focus.head.key) } });
	}

	/** Selects one cell. Past an edge: the cell at the edge. */
	select(rowIndex: number, column: number): void {
		this.set(at(rowIndex, column));
	}

	/** Selects a rectangle, its first cell active. */
	selectRange({ top, bottom, left, right }: Range): void {
		this.set({ ...at(top, left), head: { row: bottom, column: right } });
	}

	/** Selects whole columns, from one to another. */
	selectColumns(from: number, to = from): void {
		if (this.now) this.set(columnsBetween(from, to, this.rowIndex, this.#cells.extent), 'column');
	}

	/** Selects whole rows, from one to another. */
	selectRows(from: number, to = from): void {
		if (this.now) this.set(rowsBetween(from, to, this.columnIndex, this.#cells.extent), 'row');
	}

	/** Selects a cell by its row and column, if the row is there; one that is left out is seen then. */
	selectCell(id: RowId, key: string): void {
		this.#cells.arranged.reveal(id);
		const index = this.#cells.indexOf(id);
		const column = this.#cells.columns.indexOf(key);
		if (index >= 0) this.select(index, column < 0 ? this.columnIndex : column);
	}

	/** Selects rows, whole or of which a cell is; the columns that are selected; or everything. */
	selectWhole(what: 'rows' | 'columns' | 'everything'): void {
		if (!this.now) return;
		if (this.rowIndex === headRow) {
			if (what === 'columns') this.selectColumns(this.columnIndex);
			return;
		}
		const select = { rows: wholeRows, columns: wholeColumns, everything }[what];
		this.set(select(this.now, this.#cells.extent));
	}

	/** Selects up to a cell, as Shift+click and dragging do. */
	extend(rowIndex: number, column: number): void {
		if (this.now) this.set(extendTo(this.now, { row: Math.max(0, rowIndex), column }), 'head');
	}

	/** Holds the selection by a corner: it is then extended from the opposite one. */
	holdBy(corner: 'start' | 'end'): void {
		if (this.range === undefined) return;
		const { top, bottom, left, right } = this.range;
		const [first, last] = [
			{ row: top, column: left },
			{ row: bottom, column: right },
		];
		this.set(corner === 'end' ? between(first, last) : between(last, first), 'head');
	}

	/** Keeps the selection by the present places: if a selected row goes later, its present neighbour is selected instead. */
	settle(): void {
		if (this.now) this.set(this.now, this.#kept.look);
	}

	/** Makes this the selection. @param look what of it is scrolled into view */
	set(selection: Selection, look: Look = 'active'): void {
		const { rows, extent, columns } = this.#cells;
		this.#kept = { selection: clamp(selection, extent) ?? selection, rows, columns: columns.list, look };
	}
}

/** The selection on the same columns after columns have come, gone or moved. */
function onColumns(selection: Selection, before: readonly ShownColumn[], after: readonly ShownColumn[]): Selection {
	if (before === after || before.length === 0) return selection;
	const keys = (columns: readonly ShownColumn[]) => columns.map(({ key }) => key);
	return followColumns(selection, keys(before), keys(after)) ?? selection;
}

/** Where rows stand together, with none between them that is not one of them; undefined where they do not. */
function spanOf(
	ids: readonly RowId[],
	rows: readonly Row[],
): { readonly first: number; readonly last: number } | undefined {
	const wanted = new Set(ids);
	const first = rows.findIndex(({ id }) => wanted.has(id));
	const last = first + wanted.size - 1;
	const isTogether = first >= 0 && last < rows.length && rows.slice(first, last + 1).every(({ id }) => wanted.has(id));
	return isTogether ? { first, last } : undefined;
}

const idOf = ({ id }: { readonly id: RowId }): RowId => id;
