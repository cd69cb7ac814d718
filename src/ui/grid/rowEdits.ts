import { cannotMoveSorted } from '../../core/grid/saidOfArranging.ts';
import { placeBehind, placeInShow } from '../../core/grid/shownRows.ts';
import { addRows } from '../../core/commands/addRows.ts';
import { duplicateRows } from '../../core/commands/duplicateRows.ts';
import type { Command, Edit } from '../../core/show/edit.ts';
import { moveRows } from '../../core/commands/moveRows.ts';
import { removeRows } from '../../core/commands/removeRows.ts';
import type { CellTexts, RowId } from '../../core/show/row.ts';
import { type CellChange, typeCells } from '../../core/commands/typeCells.ts';
import type { GridColumn } from './gridColumns.ts';
import type { GridEdits } from './gridEdits.ts';
import { focusOnCell } from './gridFocus.ts';
import type { GridNotices } from './gridNotices.svelte.ts';
import type { GridSelection } from './gridSelection.svelte.ts';
import type { RowsSource } from './gridSource.ts';
import type { SeenCells } from './seenCells.ts';

/** A blank row that was added, and the step that added it. */
export interface AddedRow {
	readonly id: RowId;
	readonly step: Edit;
}

/** What is done to rows: typed into, added, and, those that are selected, duplicated, moved and deleted. */
export class RowEdits {
	readonly #source: RowsSource;
	readonly #cells: SeenCells;
	readonly #selection: GridSelection;
	readonly #edits: GridEdits;
	readonly #notices: GridNotices;

	constructor(source: RowsSource, cells: SeenCells, selection: GridSelection, edits: GridEdits, notices: GridNotices) {
		this.#source = source;
		this.#cells = cells;
		this.#selection = selection;
		this.#edits = edits;
		this.#notices = notices;
	}

	/** Types cells of one row, and says the gravest finding that the row has then. */
	type(id: RowId, cells: CellTexts, label: string): void {
		if (this.typeEach([{ id, cells }], label)) this.#notices.say(this.gravestOf(id));
	}

	/** Types cells of rows, as a mend does, in one step. @returns the step, if anything changed */
	typeEach(changes: readonly CellChange[], label: string): Edit | undefined {
		return this.#edits.do((show, settings) => typeCells(show, changes, settings, label));
	}

	/** The gravest finding of a row, in a sentence; blank where there is none. */
	gravestOf(id: RowId): string {
		const index = this.#source.show.rows.findIndex((row) => row.id === id);
		return this.#source.resultAt(index)?.findings[0]?.message ?? '';
	}

	/** Adds a blank row at a place and selects its cell in a column. @returns the row and the step; undefined if none was added */
	add(place: number, column: GridColumn = this.#selection.column): AddedRow | undefined {
		const { focus } = this.#selection;
		const key = column.column === undefined ? 'title' : column.key;
		const [id] = this.#edits.newIds(1) as [RowId];
		const at = placeBehind(this.#cells.arranged.shown, place);
		const add: Command = (show, settings) => addRows(show, [{ cells: {} }], at, [id], settings, 'Add print');
		const step = this.#edits.do(add, { before: focus, after: focusOnCell({ id, key }) });
		if (step === undefined) return undefined;
		this.#selection.selectCell(id, key);
		this.#notices.say(`Row ${this.#selection.rowIndex + 1} added`);
		return { id, step };
	}

	/** Copies the rows, under them, and selects the copies. */
	duplicate(): void {
		const { rowIds, column, focus } = this.#selection;
		const ids = this.#edits.newIds(rowIds.length);
		const [first, last] = [ids[0], ids.at(-1)];
		if (first === undefined || last === undefined) return;
		const label = ids.length === 1 ? 'Duplicate print' : `Duplicate ${ids.length} prints`;
		const { key } = column;
		const after = { ...focusOnCell({ id: first, key }), head: { id: last, key }, rows: ids };
		if (!this.#edits.do((show) => duplicateRows(show, rowIds, ids, label), { before: focus, after })) return;
		this.#selection.restore(after);
		this.#notices.say(ids.length === 1 ? 'Duplicated' : `${ids.length} prints duplicated`);
	}

	/** Deletes the rows, and selects the one after them. */
	remove(): void {
		const { range, rowIds, column, focus } = this.#selection;
		if (range === undefined || rowIds.length === 0) return;
		const { rows } = this.#cells;
		const next = rows[range.bottom + 1] ?? rows[range.top - 1];
		const after = next && focusOnCell({ id: next.id, key: column.key });
		const label = rowIds.length === 1 ? 'Delete print' : `Delete ${rowIds.length} prints`;
		const step = this.#edits.do((show) => removeRows(show, rowIds, label), { before: focus, after });
		if (!step) return;
		this.#selection.restore(after);
		const said = rowIds.length === 1 ? 'Print deleted' : `${rowIds.length} prints deleted`;
		this.#notices.showDone(said + this.#ofThoseSeen, step);
	}

	/** Moves the rows one place up or down. */
	move(by: 1 | -1): void {
		const { range } = this.#selection;
		if (range !== undefined) this.moveTo(by < 0 ? range.top - 1 : range.bottom + 2);
	}

	/** Moves the rows before a place, counted as they are seen now, from 0; past those that are left out. */
	moveTo(to: number): void {
		const { range, rowIds } = this.#selection;
		const { shown } = this.#cells.arranged;
		if (range === undefined) return;
		if (to >= range.top && to <= range.bottom + 1) return;
		if (shown.isSorted) return this.#notices.show(cannotMoveSorted(this.#cells.columns.sort?.column));
		const isUp = to < range.top;
		const moved = rowIds.length === 1 ? 'print' : `${rowIds.length} prints`;
		const label = `Move ${moved} ${isUp ? 'up' : 'down'}`;
		const place = isUp ? placeInShow(shown, to) : placeBehind(shown, to);
		if (!this.#edits.do((show) => moveRows(show, rowIds, place, label))) return;
		this.#notices.say(`Moved to row ${isUp ? to + 1 : to - (range.bottom - range.top)}${this.#ofThoseSeen}`);
	}

	/** What is added to what was done, where prints are left out. */
	get #ofThoseSeen(): string {
		return this.#cells.isWhole ? '' : ' of those shown';
	}
}
