import { frozenColumns } from '../../core/grid/columnView.ts';
import { type GridShape, move, type Move, step } from '../../core/grid/move.ts';
import {
	at,
	between,
	clamp,
	columnsBetween,
	everything,
	extendTo,
	follow,
	headRow,
	isSamePosition,
	type Position,
	type Range,
	rangeOf,
	rowsBetween,
	type Selection,
	wholeColumns,
	wholeRows,
} from '../../core/grid/selection.ts';
import { isSameSequence, placeInShow } from '../../core/grid/shownRows.ts';
import type { RowResult } from '../../core/row/rowResult.ts';
import type { Row, RowId } from '../../core/show/row.ts';
import type { Settings } from '../../core/show/settings.ts';
import { ArrangedRows, type ArrangedSource } from './arrangedRows.svelte.ts';
import { isFilled, type RowSource } from './cellView.ts';
import type { GridColumn } from './gridColumns.ts';
import { type ShownColumn, ShownColumns, type ViewsSource } from './shownColumns.svelte.ts';

/** What the grid reads: the show as it is, how it is looked at, and what it works out. */
export interface GridRows extends ArrangedSource, ViewsSource {
	readonly settings: Settings;
	/** The bench steps in which the cuts of each row come; it may lag behind what is typed. */
	readonly lateBench: { readonly stepsOf: (row: Row) => readonly number[] };
}

/** A cell by its print and its column. */
export interface CellPlace {
	readonly id: RowId;
	readonly key: GridColumn['key'];
}

/** The cells in hand, as they are kept with a step of undo: prints may have moved by then. */
export type GridFocus = Readonly<Record<keyof Selection, CellPlace>>;

/**
 * What of a selection is to be in view: its cell in hand, the corner that was moved, only its column, or the corner that
 * was moved with the first of the columns that scroll.
 */
type Look = 'active' | 'head' | 'column' | 'start';

/** The cells in hand: a selection that stays on its prints when rows come, go or move. */
export class GridHand {
	readonly #rows: GridRows;
	/** The rows that are seen. Places of rows here are among these. */
	readonly arranged: ArrangedRows;
	/** The columns that are shown. Places of columns here are among these. */
	readonly columns: ShownColumns;
	#kept = $state.raw<Kept>({ selection: at(0, frozenColumns.indexOf('title')), rows: [], columns: [], look: 'active' });
	/** Rows that are wholly in view; the screen tells. */
	pageRows = 10;

	/** What is selected; undefined where there are no rows. */
	readonly selection: Selection | undefined = $derived.by(() => {
		const { selection, rows, columns } = this.#kept;
		const now = this.rows;
		const across = followColumns(selection, columns, this.columns.list);
		if (rows.length === 0 || now.length === 0) return clamp(across, this.#extent);
		if (now === rows || isSameSequence(rows, now)) return across; // no row has come, gone or moved
		const [before, after] = [rows.map(idOf), now.map(idOf)];
		const known = new Set(before);
		// Another show has been put in the place of this one: one begins at its top.
		if (!after.some((id) => known.has(id))) return at(0, across.active.column);
		return follow(across, before, after);
	});
	/** Place of the row in hand, from 0; -1 for the head, or where there are no rows. */
	readonly rowIndex = $derived(this.selection?.active.row ?? headRow);
	/** Place of the column in hand, from 0. */
	readonly column = $derived((this.selection ?? this.#kept.selection).active.column);
	/** The cells that are selected; undefined where there are none, and in the head. */
	readonly range: Range | undefined = $derived(
		this.selection === undefined || this.rowIndex === headRow ? undefined : rangeOf(this.selection),
	);

	/** The cell to be brought into view; in `headRow`, its column only. */
	readonly lookedAt: Position = $derived.by(() => {
		const { selection } = this;
		const { look } = this.#kept;
		if (selection === undefined || look === 'column') return { row: headRow, column: this.column };
		if (look === 'start') return { row: selection.head.row, column: frozenColumns.length };
		return look === 'head' ? selection.head : selection.active;
	});

	constructor(rows: GridRows) {
		this.#rows = rows;
		this.arranged = new ArrangedRows(rows);
		this.columns = new ShownColumns(rows);
	}

	/** Another object each time something is selected, and the same while the rows change under what is selected. */
	get choice(): object {
		return this.#kept;
	}

	/** The rows that are seen. */
	get rows(): readonly Row[] {
		return this.arranged.shown.rows;
	}

	/** Place in the show of the row in hand, from 0; -1 where there is none. */
	get showIndex(): number {
		return placeInShow(this.arranged.shown, this.rowIndex);
	}

	/** What a row that is seen works out. */
	resultAt(index: number): RowResult | undefined {
		return this.#rows.results[placeInShow(this.arranged.shown, index)];
	}

	/** The row in hand; undefined in the head, or where there are no rows. */
	get row(): Row | undefined {
		return this.rows[this.rowIndex];
	}

	/** The rows in hand: all that the selection touches. */
	get rowsInHand(): readonly RowId[] {
		return this.range === undefined ? [] : this.rows.slice(this.range.top, this.range.bottom + 1).map(idOf);
	}

	/** The column in hand. */
	get gridColumn(): GridColumn {
		return this.columns.list[this.column]!;
	}

	/** The cells in hand, to be kept with an edit; undefined where there are none. */
	get focus(): GridFocus | undefined {
		return this.selection && this.focusOn(this.selection);
	}

	/** Takes the cells in hand that were kept with an edit, if the one with the focus is still there. */
	restore({ active, anchor, head }: GridFocus): void {
		this.arranged.reveal(active.id);
		const { rows } = this;
		const find = ({ id, key }: CellPlace): Position => ({
			row: rows.findIndex((row) => row.id === id),
			column: Math.max(0, this.columns.indexOf(key)),
		});
		const kept: Selection = { active: find(active), anchor: find(anchor), head: find(head) };
		if (kept.active.row < 0) return;
		const isWhole = kept.anchor.row >= 0 && kept.head.row >= 0;
		this.#take(isWhole ? kept : at(kept.active.row, kept.active.column));
	}

	/** Takes one cell in hand. Past an edge: the cell at the edge. */
	select(rowIndex: number, column: number): void {
		this.#take(at(rowIndex, column));
	}

	/** Takes a rectangle in hand, its first cell to be typed into. */
	selectRange({ top, bottom, left, right }: Range): void {
		this.#take({ ...at(top, left), head: { row: bottom, column: right } });
	}

	/** Takes whole columns in hand, from one to another. */
	selectColumns(from: number, to = from): void {
		if (this.selection) this.#take(columnsBetween(from, to, this.rowIndex, this.#extent), 'column');
	}

	/** Takes whole rows in hand, from one to another. */
	selectRows(from: number, to = from): void {
		if (this.selection) this.#take(rowsBetween(from, to, this.column, this.#extent), 'head');
	}

	/** Takes a cell in hand by its row and column, if the row is there; one that is left out is seen then. */
	selectCell(id: RowId, key: string): void {
		this.arranged.reveal(id);
		const index = this.rows.findIndex((row) => row.id === id);
		const column = this.columns.indexOf(key);
		if (index >= 0) this.select(index, column < 0 ? this.column : column);
	}

	/** Selects up to a cell, as Shift+click and dragging do. */
	extend(rowIndex: number, column: number): void {
		if (this.selection) this.#take(extendTo(this.selection, { row: Math.max(0, rowIndex), column }), 'head');
	}

	/** Takes hold of a corner of the selection, which is then extended from the opposite one. */
	holdBy(corner: 'start' | 'end'): void {
		if (this.range === undefined) return;
		const { top, bottom, left, right } = this.range;
		const [first, last] = [
			{ row: top, column: left },
			{ row: bottom, column: right },
		];
		this.#take(corner === 'end' ? between(first, last) : between(last, first), 'head');
	}

	/** Goes a way, or extends the selection that way. */
	go(way: Move, isExtending: boolean): void {
		if (!this.selection || (isExtending && this.rowIndex === headRow)) return;
		const shape: GridShape = {
			...this.#extent,
			pageRows: this.pageRows,
			hasHead: true,
			isFilled: ({ row, column }) => isFilled(this.columns.list[column]!, this.sourceOf(row)),
		};
		// The first columns never scroll away: to go to them shows what begins beside them.
		const look = way === 'row start' || way === 'grid start' ? 'start' : isExtending ? 'head' : 'active';
		this.#take(move(this.selection, way, shape, isExtending), look);
	}

	/** Selects whole rows, whole columns or everything. */
	selectWhole(what: 'rows' | 'columns' | 'everything'): void {
		if (!this.selection) return;
		if (this.rowIndex === headRow) {
			if (what === 'columns') this.selectColumns(this.column);
			return;
		}
		const select = { rows: wholeRows, columns: wholeColumns, everything }[what];
		this.#take(select(this.selection, this.#extent));
	}

	/** Goes on as Tab and Enter do. @returns false if that leads nowhere */
	step(key: 'tab' | 'enter', isBack: boolean): boolean {
		if (!this.selection) return false;
		const next = step(this.selection, key, isBack, this.#extent);
		if (isSamePosition(next.active, this.selection.active)) return false;
		this.#take(next);
		return true;
	}

	/** Takes in hand what is in hand, by where it stands now: what goes then gives way to its neighbour of now. */
	protected settle(): void {
		if (this.selection) this.#take(this.selection, this.#kept.look);
	}

	/** What the cells of a row that is seen are made from. */
	sourceOf(index: number): RowSource {
		const { lateBench, settings } = this.#rows;
		const row = this.rows[index]!;
		return { row, result: this.resultAt(index)!, steps: lateBench.stepsOf(row), settings };
	}

	/** A selection by its prints and columns; undefined in the head, and past the last row or column. */
	protected focusOn(selection: Selection, rows: readonly { readonly id: RowId }[] = this.rows) {
		const place = ({ row, column }: Position): CellPlace | undefined => {
			const [found, shown] = [rows[row], this.columns.list[column]];
			return found && shown && { id: found.id, key: shown.key };
		};
		const [active, anchor, head] = [place(selection.active), place(selection.anchor), place(selection.head)];
		return active && anchor && head && ({ active, anchor, head } satisfies GridFocus);
	}

	get #extent() {
		return { rows: this.rows.length, columns: this.columns.list.length };
	}

	#take(selection: Selection, look: Look = 'active'): void {
		const columns = this.columns.list;
		this.#kept = { selection: clamp(selection, this.#extent) ?? selection, rows: this.rows, columns, look };
	}
}

interface Kept {
	readonly selection: Selection;
	readonly rows: readonly Row[];
	readonly columns: readonly ShownColumn[];
	readonly look: Look;
}

/** The selection on the same columns after columns have come, gone or moved. */
function followColumns(selection: Selection, before: readonly ShownColumn[], after: readonly ShownColumn[]): Selection {
	if (before === after || before.length === 0) return selection;
	const keys = (columns: readonly ShownColumn[]) => columns.map(({ key }) => key);
	// Columns are to a selection what rows are: the same rule holds, turned.
	const turn = ({ row, column }: Position): Position => ({ row: column, column: row });
	const turned = ({ active, anchor, head }: Selection): Selection => ({
		active: turn(active),
		anchor: turn(anchor),
		head: turn(head),
	});
	const followed = follow(turned(selection), keys(before), keys(after));
	return followed ? turned(followed) : selection;
}

const idOf = ({ id }: Row): RowId => id;
