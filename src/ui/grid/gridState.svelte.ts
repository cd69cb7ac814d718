import { planFill } from '../../core/grid/planFill.ts';
import { type CellPlan, type GridCells, planPaste } from '../../core/grid/planPaste.ts';
import { asTyped } from '../../core/show/asTyped.ts';
import type { ColumnName } from '../../core/show/columns.ts';
import type { CellTexts, RowId } from '../../core/show/row.ts';
import { exactText } from './cellView.ts';
import { type EntryProblem, entryProblem } from './entryProblem.ts';
import { columnIndexOf, gridColumns } from './gridColumns.ts';
import { type GridFocus, GridHand, type GridRows } from './gridHand.svelte.ts';

interface Change {
	readonly id: RowId;
	readonly cells: CellTexts;
}

/** The edits that the grid asks for: each is one step of undo. `focus` is kept with the step and handed back. */
export interface GridSource extends GridRows {
	typeCells(changes: readonly Change[], label: string, focus?: unknown): void;
	typeAndAdd(
		changes: readonly Change[],
		rows: readonly { readonly cells: CellTexts }[],
		at: number,
		label: string,
		focus?: unknown,
	): readonly RowId[];
	removeRows(ids: readonly RowId[], label?: string, focus?: unknown): void;
	moveRows(ids: readonly RowId[], to: number, label?: string, focus?: unknown): void;
	duplicateRows(ids: readonly RowId[], focus?: unknown): readonly RowId[];
	undo(): unknown;
	redo(): unknown;
}

/** A cell that is being typed into. */
export interface Editing extends GridFocus {
	readonly text: string;
	/** What the cell held before. */
	readonly original: string;
	/** Whether the text is selected, so that typing replaces it. */
	readonly isSelected: boolean;
	/** Why the text could not be read when it was last put in. */
	readonly problem: EntryProblem | undefined;
}

/** Where the hand goes when a cell has been typed. */
export type After = 'stay' | 'down' | 'up' | 'right' | 'left';

const isGridFocus = (value: unknown): value is GridFocus =>
	typeof value === 'object' && value !== null && 'id' in value && 'key' in value;

/** What is done to the cells in hand: everything that a key or a tap of the grid does is a method here. */
export class GridState extends GridHand {
	readonly #source: GridSource;
	/** The cell being typed into. */
	editing = $state.raw<Editing>();
	/** What is to be said aloud. */
	announcement = $state.raw('');

	constructor(source: GridSource) {
		super(source);
		this.#source = source;
	}

	/**
	 * Opens the cell in hand for typing.
	 * @param isReplacing whether what it held is put away, as when one types over it
	 * @returns false where nothing can be typed
	 */
	edit(isReplacing: boolean): boolean {
		const { row } = this;
		const { column, key } = this.gridColumn;
		if (row === undefined || column === undefined) return false;
		const original = asTyped(row, column);
		const text = isReplacing ? '' : original;
		this.editing = { id: row.id, key, text, original, isSelected: !isReplacing, problem: undefined };
		return true;
	}

	/** Takes in what the editor holds. */
	setText(text: string): void {
		if (this.editing) this.editing = { ...this.editing, text, problem: undefined };
	}

	/** Leaves the cell as it was. */
	cancel(): void {
		this.editing = undefined;
	}

	/**
	 * Types what the editor holds into its cell. What cannot be read keeps the editor open with the reason, once: put
	 * in again, it stays in the cell as typed, and marked.
	 * @returns whether the editor is closed
	 */
	commit(after: After, isKeepingUnread = false): boolean {
		const { editing } = this;
		if (editing === undefined) return true;
		const text = editing.text.trim();
		const row = this.#source.show.rows.find(({ id }) => id === editing.id);
		const { column, label } = gridColumns[columnIndexOf(editing.key)]!;
		if (row !== undefined && column !== undefined && text !== editing.original) {
			const isAskedAgain = editing.problem !== undefined || isKeepingUnread;
			const problem = isAskedAgain ? undefined : entryProblem(row, column, text, this.#source.settings);
			if (problem !== undefined) {
				this.editing = { ...editing, problem };
				return false;
			}
			this.take(row.id, { [column]: text }, `Type ${label.toLowerCase()}`);
		}
		this.editing = undefined;
		this.#go(after);
		return true;
	}

	/** Types one of the readings offered for what could not be read. */
	takeReading(text: string): void {
		this.setText(text);
		this.commit('stay', true);
	}

	/** Types cells of one row, as a mend does, and says what the row is told then. */
	take(id: RowId, cells: CellTexts, label: string): void {
		this.#source.typeCells([{ id, cells }], label, this.focus);
		const index = this.#source.show.rows.findIndex((row) => row.id === id);
		this.announcement = this.#source.results[index]?.findings[0]?.message ?? '';
	}

	/** Hands the cells in hand back to be worked out. */
	clear(label = 'Clear'): void {
		const { range } = this;
		if (range === undefined) return;
		const columns = gridColumns.slice(range.left, range.right + 1).flatMap(({ column }) => column ?? []);
		const cells: CellTexts = Object.fromEntries(columns.map((column) => [column, '']));
		const words = columns.length === 1 ? `${label} ${this.gridColumn.label.toLowerCase()}` : `${label} cells`;
		this.#source.typeCells(
			this.rowsInHand.map((id) => ({ id, cells })),
			words,
			this.focus,
		);
	}

	/** The selected cells as texts: all that they show, in full, and what of it was typed. */
	copied(): { readonly shown: readonly string[][]; readonly typed: readonly string[][] } | undefined {
		const { range } = this;
		if (range === undefined) return undefined;
		const columns = gridColumns.slice(range.left, range.right + 1);
		const sources = this.rowsInHand.map((_, place) => this.sourceOf(range.top + place));
		return {
			shown: sources.map((source) => columns.map((column) => exactText(column, source))),
			typed: sources.map(({ row }) => columns.map(({ column }) => (column ? asTyped(row, column) : ''))),
		};
	}

	/** Types a table into the cells from the one in hand on; rows past the last are added. */
	paste(table: readonly (readonly string[])[]): void {
		if (this.selection !== undefined && this.rowIndex >= 0)
			this.#carryOut(planPaste(table, this.selection, this.#cells), 'Paste');
	}

	/** Fills the selection from its first row or column. */
	fill(way: 'down' | 'right'): void {
		if (this.selection === undefined || this.rowIndex < 0) return;
		const rows = this.#source.show.rows;
		const textOf = (index: number, column: ColumnName) => asTyped(rows[index]!, column);
		const plan = planFill(way, this.selection, this.#cells, textOf);
		if (plan) this.#carryOut(plan, way === 'down' ? 'Fill down' : 'Fill right');
	}

	/** Adds a blank row at a place and takes it in hand. */
	addRow(at: number): void {
		const [id] = this.#source.typeAndAdd([], [{ cells: {} }], at, 'Add print', this.focus);
		if (id !== undefined) this.selectCell(id, this.gridColumn.column === undefined ? 'title' : this.gridColumn.key);
	}

	/** Copies the rows in hand, under them. */
	duplicateRows(): void {
		const [id] = this.#source.duplicateRows(this.rowsInHand, this.focus);
		if (id !== undefined) this.selectCell(id, this.gridColumn.key);
	}

	/** Deletes the rows in hand. */
	removeRows(): void {
		const ids = this.rowsInHand;
		const label = ids.length === 1 ? 'Delete print' : `Delete ${ids.length} prints`;
		if (ids.length > 0) this.#source.removeRows(ids, label, this.focus);
	}

	/** Moves the rows in hand one place up or down. */
	moveRows(by: 1 | -1): void {
		const { range } = this;
		const to = by < 0 ? (range?.top ?? 0) - 1 : (range?.bottom ?? 0) + 2;
		if (range === undefined || to < 0 || to > this.#source.show.rows.length) return;
		this.#source.moveRows(this.rowsInHand, to, by < 0 ? 'Move up' : 'Move down', this.focus);
		this.announcement = `Moved to row ${range.top + 1 + by}`;
	}

	undo(): void {
		this.#return(this.#source.undo());
	}

	redo(): void {
		this.#return(this.#source.redo());
	}

	get #cells(): GridCells {
		return { rows: this.#source.show.rows.map(({ id }) => id), columns: gridColumns.map(({ column }) => column) };
	}

	#carryOut(plan: CellPlan, label: string): void {
		const focus = this.focus;
		this.#source.typeAndAdd(plan.changes, plan.added, this.#source.show.rows.length, label, focus);
		this.selectRange(plan.range);
		const passedOver = plan.skipped + plan.outside;
		this.announcement =
			passedOver > 0 ? `${label}: ${passedOver} cells passed over, where nothing can be typed` : label;
	}

	#return(focus: unknown): void {
		if (isGridFocus(focus)) this.selectCell(focus.id, focus.key);
	}

	#go(after: After): void {
		if (after === 'stay') return;
		const isMoved = this.step(
			after === 'right' || after === 'left' ? 'tab' : 'enter',
			after === 'left' || after === 'up',
		);
		// Past the last row one is added, unless the last one is still blank.
		const isForward = after === 'right' || after === 'down';
		if (!isMoved && isForward && Object.keys(this.row?.typed ?? {}).length > 0) {
			this.addRow(this.rowIndex + 1);
			if (after === 'right') this.select(this.rowIndex, 0);
		}
	}
}
