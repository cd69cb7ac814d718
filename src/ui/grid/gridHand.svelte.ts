import { type GridShape, move, type Move, step } from '../../core/grid/move.ts';
import {
	at,
	clamp,
	everything,
	extendTo,
	follow,
	headRow,
	isSamePosition,
	type Range,
	rangeOf,
	type Selection,
	wholeColumns,
	wholeRows,
} from '../../core/grid/selection.ts';
import type { RowResult } from '../../core/row/rowResult.ts';
import type { Row, RowId } from '../../core/show/row.ts';
import type { Settings } from '../../core/show/settings.ts';
import { isFilled } from './cellView.ts';
import { columnIndexOf, type GridColumn, gridColumns } from './gridColumns.ts';

/** What the grid reads: the show as it is, and what it works out. */
export interface GridRows {
	readonly show: { readonly rows: readonly Row[] };
	readonly settings: Settings;
	readonly results: readonly RowResult[];
	readonly bench: { readonly stepsOfRows: readonly (readonly number[])[] };
}

/** The cell in hand, as it is kept with a step of undo. */
export interface GridFocus {
	readonly id: RowId;
	readonly key: GridColumn['key'];
}

/** The cells in hand: a selection that stays on its prints when rows come, go or move. */
export class GridHand {
	readonly #rows: GridRows;
	#kept = $state.raw<{ readonly selection: Selection; readonly rows: readonly Row[] }>({
		selection: at(0, columnIndexOf('title')),
		rows: [],
	});
	/** Rows that are wholly in view; the screen tells. */
	pageRows = 10;

	/** What is selected; undefined where there are no rows. */
	readonly selection: Selection | undefined = $derived.by(() => {
		const { selection, rows } = this.#kept;
		const now = this.#rows.show.rows;
		if (now === rows) return selection;
		if (rows.length === 0 || now.length === 0) return clamp(selection, extentOf(now));
		const [before, after] = [rows.map(idOf), now.map(idOf)];
		const known = new Set(before);
		// Another show has been put in the place of this one: one begins at its top.
		if (!after.some((id) => known.has(id))) return at(0, selection.active.column);
		return follow(selection, before, after);
	});
	/** Place of the row in hand, from 0; -1 for the head, or where there are no rows. */
	readonly rowIndex = $derived(this.selection?.active.row ?? headRow);
	/** Place of the column in hand, from 0. */
	readonly column = $derived((this.selection ?? this.#kept.selection).active.column);
	/** The cells that are selected; undefined where there are none, and in the head. */
	readonly range: Range | undefined = $derived(
		this.selection === undefined || this.rowIndex === headRow ? undefined : rangeOf(this.selection),
	);

	constructor(rows: GridRows) {
		this.#rows = rows;
	}

	/** The row in hand; undefined in the head, or where there are no rows. */
	get row(): Row | undefined {
		return this.#rows.show.rows[this.rowIndex];
	}

	/** The rows in hand: all that the selection touches. */
	get rowsInHand(): readonly RowId[] {
		return this.range === undefined ? [] : this.#rows.show.rows.slice(this.range.top, this.range.bottom + 1).map(idOf);
	}

	/** The column in hand. */
	get gridColumn(): GridColumn {
		return gridColumns[this.column]!;
	}

	/** The cell in hand, to be kept with an edit; undefined where there is none. */
	get focus(): GridFocus | undefined {
		return this.row && { id: this.row.id, key: this.gridColumn.key };
	}

	/** Takes one cell in hand. Past an edge: the cell at the edge. */
	select(rowIndex: number, column: number): void {
		this.#take(at(rowIndex, column));
	}

	/** Takes a rectangle in hand, its first cell to be typed into. */
	selectRange({ top, bottom, left, right }: Range): void {
		this.#take({ ...at(top, left), head: { row: bottom, column: right } });
	}

	/** Takes a cell in hand by its row and column, if the row is there. */
	selectCell(id: RowId, key: string): void {
		const index = this.#rows.show.rows.findIndex((row) => row.id === id);
		const column = columnIndexOf(key);
		if (index >= 0) this.select(index, column < 0 ? this.column : column);
	}

	/** Selects up to a cell, as Shift+click and dragging do. */
	extend(rowIndex: number, column: number): void {
		if (this.selection) this.#take(extendTo(this.selection, { row: Math.max(0, rowIndex), column }));
	}

	/** Goes a way, or extends the selection that way. */
	go(way: Move, isExtending: boolean): void {
		if (!this.selection || (isExtending && this.rowIndex === headRow)) return;
		const rows = this.#rows.show.rows;
		const shape: GridShape = {
			...extentOf(rows),
			pageRows: this.pageRows,
			hasHead: true,
			isFilled: ({ row, column }) => isFilled(gridColumns[column]!, this.sourceOf(row)),
		};
		this.#take(move(this.selection, way, shape, isExtending));
	}

	/** Selects whole rows, whole columns or everything. */
	selectWhole(what: 'rows' | 'columns' | 'everything'): void {
		if (!this.selection || this.rowIndex === headRow) return;
		const select = { rows: wholeRows, columns: wholeColumns, everything }[what];
		this.#take(select(this.selection, extentOf(this.#rows.show.rows)));
	}

	/** Goes on as Tab and Enter do. @returns false if that leads nowhere */
	step(key: 'tab' | 'enter', isBack: boolean): boolean {
		if (!this.selection) return false;
		const next = step(this.selection, key, isBack, extentOf(this.#rows.show.rows));
		if (isSamePosition(next.active, this.selection.active)) return false;
		this.#take(next);
		return true;
	}

	/** What the cells of a row are made from. */
	protected sourceOf(index: number) {
		const { show, results, bench, settings } = this.#rows;
		return { row: show.rows[index]!, result: results[index]!, steps: bench.stepsOfRows[index] ?? [], settings };
	}

	#take(selection: Selection): void {
		const rows = this.#rows.show.rows;
		this.#kept = { selection: clamp(selection, extentOf(rows)) ?? selection, rows };
	}
}

const idOf = ({ id }: Row): RowId => id;
const extentOf = (rows: readonly Row[]) => ({ rows: rows.length, columns: gridColumns.length });
