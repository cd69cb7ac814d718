import type { Filter } from '../../core/grid/filterRows.ts';
import { cannotMoveSorted, saidOfShown } from '../../core/grid/saidOfArranging.ts';
import { placeBehind, placeInShow } from '../../core/grid/shownRows.ts';
import type { Sort } from '../../core/grid/sortRows.ts';
import { changeViews } from '../../core/grid/changeViews.ts';
import { addRows } from '../../core/show/addRows.ts';
import { asTyped } from '../../core/show/asTyped.ts';
import { duplicateRows } from '../../core/show/duplicateRows.ts';
import { compose, type Edit } from '../../core/show/edit.ts';
import { moveRows } from '../../core/show/moveRows.ts';
import { orderRows } from '../../core/show/orderRows.ts';
import { removeRows } from '../../core/show/removeRows.ts';
import type { CellTexts, RowId } from '../../core/show/row.ts';
import { typeCells } from '../../core/show/typeCells.ts';
import { textAndState } from './cellView.ts';
import { type EntryProblem, entryProblem } from './entryProblem.ts';
import { type Command, GridBlocks } from './gridBlocks.svelte.ts';
import { type GridColumn, gridColumns } from './gridColumns.ts';
import type { CellPlace, GridFocus } from './gridHand.svelte.ts';

/** A cell that is being typed into. */
export interface Editing extends CellPlace {
	readonly text: string;
	/** What the editor was opened with. */
	readonly opened: string;
	/** Whether the text is selected, so that typing replaces it. */
	readonly isSelected: boolean;
	/** Why the text could not be read when it was last put in. */
	readonly problem: EntryProblem | undefined;
}

/** Where the hand goes when a cell has been typed. */
export type After = 'stay' | 'down' | 'up' | 'right' | 'left';

const isGridFocus = (value: unknown): value is GridFocus =>
	typeof value === 'object' && value !== null && 'active' in value && 'anchor' in value && 'head' in value;

/** What is done to the cells in hand: everything that a key or a tap of the grid does is a method here. */
export class GridState extends GridBlocks {
	/** The cell being typed into. */
	editing = $state.raw<Editing>();
	/** The place before which rows that are being dragged would go; undefined while none are. */
	dropAt = $state.raw<number>();
	/** The place before which columns that are being dragged would go; undefined while none are. */
	dropBefore = $state.raw<number>();

	/**
	 * Opens the cell in hand for typing.
	 * @param isReplacing whether what it held is put away, as when one types over it
	 * @returns false where nothing can be typed
	 */
	edit(isReplacing: boolean): boolean {
		const { row } = this;
		const { column, key } = this.gridColumn;
		if (row === undefined || column === undefined) return false;
		// A line has no line ends; those of a pasted text stay until it is typed anew.
		const opened = asTyped(row, column).replaceAll(/\s*[\r\n]+\s*/g, ' ');
		const text = isReplacing ? '' : opened;
		this.editing = { id: row.id, key, text, opened, isSelected: !isReplacing, problem: undefined };
		this.arranged.kept = row.id;
		return true;
	}

	/** Takes in what the editor holds. */
	setText(text: string): void {
		if (this.editing) this.editing = { ...this.editing, text, problem: undefined };
	}

	/** Leaves the cell as it was. */
	cancel(): void {
		this.#close();
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
		const row = this.source.show.rows.find(({ id }) => id === editing.id);
		const gridColumn = gridColumns.find(({ key }) => key === editing.key)!;
		const { column } = gridColumn;
		if (row !== undefined && column !== undefined && text !== editing.opened.trim()) {
			const isAskedAgain = editing.problem !== undefined || isKeepingUnread;
			const problem = isAskedAgain ? undefined : entryProblem(row, column, text, this.source.settings);
			if (problem !== undefined) {
				this.editing = { ...editing, problem };
				this.announcement = problem.message;
				return false;
			}
			this.#typeCell(row.id, gridColumn, text);
		}
		this.#close();
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
		if (this.does((show, settings) => typeCells(show, [{ id, cells }], settings, label), this.staying))
			this.announcement = this.#toldOf(id);
	}

	/** Adds a blank row at a place and takes it in hand. */
	addRow(place: number): void {
		const key = this.gridColumn.column === undefined ? 'title' : this.gridColumn.key;
		const id = this.source.makeId();
		const at = placeBehind(this.arranged.shown, place);
		const focus = { before: this.focus, after: oneCell({ id, key }) };
		const add: Command = (show, settings) => addRows(show, [{ cells: {} }], at, [id], settings, 'Add print');
		if (!this.does(add, focus)) return;
		this.selectCell(id, key);
		this.announcement = `Row ${this.rowIndex + 1} added`;
	}

	/** Copies the rows in hand, under them, and takes the copies in hand. */
	duplicateRows(): void {
		const { key } = this.gridColumn;
		const { rowsInHand } = this;
		const ids = rowsInHand.map(this.source.makeId);
		const [first, last] = [ids[0], ids.at(-1)];
		if (first === undefined || last === undefined) return;
		const label = ids.length === 1 ? 'Duplicate row' : `Duplicate ${ids.length} rows`;
		const after = { ...oneCell({ id: first, key }), head: { id: last, key } };
		if (!this.does((show) => duplicateRows(show, rowsInHand, ids, label), { before: this.focus, after })) return;
		this.restore(after);
		this.announcement = ids.length === 1 ? 'Duplicated' : `${ids.length} prints duplicated`;
	}

	/** Deletes the rows in hand. */
	removeRows(): void {
		const { range, focus } = this;
		const ids = this.rowsInHand;
		if (range === undefined || ids.length === 0) return;
		const { rows } = this;
		const next = rows[range.bottom + 1] ?? rows[range.top - 1];
		const left = next && oneCell({ id: next.id, key: this.gridColumn.key });
		const label = ids.length === 1 ? 'Delete print' : `Delete ${ids.length} prints`;
		if (!this.does((show) => removeRows(show, ids, label), { before: focus, after: left })) return;
		if (left) this.restore(left);
		this.announcement = (ids.length === 1 ? 'Print deleted' : `${ids.length} prints deleted`) + this.ofThoseSeen;
	}

	/** Moves the rows in hand one place up or down. */
	moveRows(by: 1 | -1): void {
		const { range } = this;
		if (range !== undefined) this.moveRowsTo(by < 0 ? range.top - 1 : range.bottom + 2);
	}

	/** Moves the rows in hand before a place, counted as they are seen now, from 0; past those that are left out. */
	moveRowsTo(to: number): void {
		const { range } = this;
		const { shown } = this.arranged;
		if (range === undefined) return;
		if (to >= range.top && to <= range.bottom + 1) return;
		if (shown.isSorted) {
			this.tell(cannotMoveSorted(this.columns.sort?.column));
			return;
		}
		const isUp = to < range.top;
		const label = isUp ? 'Move up' : 'Move down';
		const place = isUp ? placeInShow(shown, to) : placeBehind(shown, to);
		const { rowsInHand } = this;
		if (!this.does((show) => moveRows(show, rowsInHand, place, label), this.staying)) return;
		this.announcement = `Moved to row ${isUp ? to + 1 : to - (range.bottom - range.top)}${this.ofThoseSeen}`;
	}

	/** The first and the last of the columns in hand: those selected from end to end, else the one in hand. */
	get columnsInHand(): readonly [first: number, last: number] {
		const { range } = this;
		const isWhole = range?.top === 0 && range.bottom === this.rows.length - 1;
		return isWhole && this.rowIndex >= 0 ? [range.left, range.right] : [this.column, this.column];
	}

	/** Sorts the rows by a column, or puts them in the show's own order; the row in hand stays in hand. */
	sortBy(sort: Sort | undefined): void {
		this.columns.sortBy(sort);
		this.arranged.anew();
		this.settle();
		this.announcement = saidOfShown(this.rows.length, this.source.show.rows.length, this.columns.sort);
	}

	/** Asks for some rows only; those that are typed into later stay. */
	filterBy(filter: Filter): void {
		this.arranged.filter = filter;
		this.announcement = saidOfShown(this.rows.length, this.source.show.rows.length, this.columns.sort);
	}

	/** Sorts and filters by what the rows are now. */
	arrangeAnew(): void {
		this.arranged.anew();
		this.announcement = saidOfShown(this.rows.length, this.source.show.rows.length, this.columns.sort);
	}

	/** Makes the sequence in which the rows are seen the show's own, as one step of undo. */
	keepOrder(): void {
		const ids = this.rows.map(({ id }) => id);
		const views = { ...this.source.views, sort: undefined };
		const label = 'Keep this order';
		const order: Command = (show) => compose(orderRows(show, ids, label), changeViews(show, views, label));
		if (!this.does(order, this.staying)) return;
		this.announcement = 'The prints are in this order now';
	}

	/** Makes the column in hand wider or narrower by a step. */
	sizeColumn(by: 1 | -1): void {
		const column = this.columns.list[this.column]!;
		this.columns.size(column.key, column.shownWidth + by * widthStep);
		this.announcement = `${column.label}, ${this.columns.list[this.column]!.shownWidth} wide`;
	}

	/** Moves the columns in hand one place to the left or right. */
	moveColumns(by: 1 | -1): void {
		const [first, last] = this.columnsInHand;
		this.moveColumnsTo(by < 0 ? first - 1 : last + 2);
	}

	/** Moves the columns in hand before a place among those shown. Those that stay where they are do not move. */
	moveColumnsTo(to: number): void {
		const [first, last] = this.columnsInHand;
		const { list } = this.columns;
		const moved = list.slice(first, last + 1).filter(({ isFrozen }) => !isFrozen);
		const [leading] = moved;
		if (leading === undefined) return this.tell('Number and title stay first: they are what the others belong to.');
		if (to > list.length || (to >= first && to <= last + 1)) return;
		const { key, label } = leading;
		const before = list.findIndex((column) => column.key === key);
		this.columns.move(
			moved.map((column) => column.key),
			to,
		);
		const place = this.columns.indexOf(key);
		if (place !== before) this.announcement = `${label}, column ${place + 1} of ${list.length}`;
	}

	/** Hides the columns in hand; what was typed into them stays. */
	hideColumns(): void {
		const [first, last] = this.columnsInHand;
		const hidden = this.columns.list.slice(first, last + 1).filter(({ isFrozen }) => !isFrozen);
		if (hidden.length === 0) return this.tell('Number and title stay: they are what the others belong to.');
		this.settle();
		this.columns.hide(hidden.map(({ key }) => key));
		this.announcement = `${hidden.map(({ label }) => label).join(', ')} hidden`;
	}

	/** What is added to what was done, where prints are left out. */
	private get ofThoseSeen(): string {
		return this.rows.length === this.source.show.rows.length ? '' : ' of those that are seen';
	}

	/** Takes one step back, and selects what was selected before it. */
	takeBack(step: Edit | undefined): void {
		this.#return(this.source.takeBack(step));
	}

	undo(): void {
		this.#return(this.source.undo());
	}

	redo(): void {
		this.#return(this.source.redo());
	}

	#close(): void {
		this.editing = undefined;
		this.arranged.kept = undefined;
	}

	/** Types a cell and says what has become of it, and the gravest that its row is told. */
	#typeCell(id: RowId, column: GridColumn, text: string): void {
		const view = () => {
			const index = this.rows.findIndex((row) => row.id === id);
			return index < 0 ? undefined : textAndState(column, this.sourceOf(index));
		};
		const before = view()?.state;
		this.take(id, { [column.key]: text }, `Type ${column.label.toLowerCase()}`);
		const after = view();
		const said =
			after?.state === 'typed' && (before === 'worked out' || before === 'inherited')
				? `${column.label} typed; it was ${before === 'inherited' ? 'from the show' : before}`
				: before === 'typed' && (after?.state === 'worked out' || after?.state === 'inherited')
					? `${column.label}, ${after.text}, ${after.state === 'inherited' ? 'from the show' : after.state}`
					: '';
		this.announcement = [said, this.#toldOf(id)].filter((part) => part !== '').join('. ');
	}

	/** The gravest that a row is told. */
	#toldOf(id: RowId): string {
		const index = this.source.show.rows.findIndex((row) => row.id === id);
		return this.source.results[index]?.findings[0]?.message ?? '';
	}

	#return(focus: unknown): void {
		if (isGridFocus(focus)) this.restore(focus);
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

/** How much wider a key makes a column, in pixels. */
const widthStep = 12;

const oneCell = (cell: CellPlace): GridFocus => ({ active: cell, anchor: cell, head: cell });
