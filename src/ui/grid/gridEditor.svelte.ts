import type { Move } from '../../core/grid/move.ts';
import { planPaste } from '../../core/grid/planPaste.ts';
import { asTyped } from '../../core/show/asTyped.ts';
import { isBlankRow } from '../../core/show/blankRow.ts';
import type { Row, RowId } from '../../core/show/row.ts';
import { oneLine, withLineEnds } from '../../core/values/oneLine.ts';
import { typedIntoDeleted } from '../../core/device/shelf.ts';
import type { CellPlans } from './cellPlans.ts';
import { textAndState } from './cellView.ts';
import { type EntryProblem, entryProblem } from './entryProblem.ts';
import { type GridColumn, gridColumns } from './gridColumns.ts';
import type { GridEdits } from './gridEdits.ts';
import type { GridPlace } from './gridFocus.ts';
import type { GridNotices } from './gridNotices.svelte.ts';
import type { GridSelection } from './gridSelection.svelte.ts';
import type { RowsSource } from './gridSource.ts';
import type { AddedRow, RowEdits } from './rowEdits.ts';
import type { SeenCells } from './seenCells.ts';
import type { SelectionMoves } from './selectionMoves.ts';

/** A cell that is being typed into. */
export interface Editing extends GridPlace {
	readonly text: string;
	/** What the editor was opened with. */
	readonly opened: string;
	/** Whether the cell is typed over: an arrow then keeps the text and moves on. Else it moves the caret. */
	readonly isOver: boolean;
	/** Why the text could not be read when it was last put in. */
	readonly problem: EntryProblem | undefined;
}

/**
 * Which cell is active after one was typed into: the same; the next or former one, as Enter (`down`, `up`) and Tab go;
 * or the neighbour to which an arrow goes.
 */
export type After = 'stay' | 'down' | 'up' | 'right' | 'left' | `arrow ${'left' | 'right' | 'up' | 'down'}`;

/** The editor of the active cell. */
export class GridEditor {
	readonly #source: RowsSource;
	readonly #cells: SeenCells;
	readonly #selection: GridSelection;
	readonly #moves: SelectionMoves;
	readonly #rowEdits: RowEdits;
	readonly #edits: GridEdits;
	readonly #plans: CellPlans;
	readonly #notices: GridNotices;
	#editing = $state.raw<Editing>();
	#deletions = $state.raw(0);
	/** The row that Enter or Tab has added past the last, until another is gone to. */
	#begun: AddedRow | undefined;

	constructor(
		source: RowsSource,
		cells: SeenCells,
		selection: GridSelection,
		moves: SelectionMoves,
		rowEdits: RowEdits,
		edits: GridEdits,
		plans: CellPlans,
		notices: GridNotices,
	) {
		this.#source = source;
		this.#cells = cells;
		this.#selection = selection;
		this.#moves = moves;
		this.#rowEdits = rowEdits;
		this.#edits = edits;
		this.#plans = plans;
		this.#notices = notices;
	}

	/** The cell being typed into; undefined while the editor is closed. */
	get editing(): Editing | undefined {
		return this.#editing;
	}

	/**
	 * Opens the active cell for typing.
	 * @param isReplacing whether what it held is put away, as when it is typed over
	 * @returns false where nothing can be typed
	 */
	open(isReplacing: boolean): boolean {
		const { row } = this.#selection;
		const { column, key } = this.#selection.column;
		if (row === undefined || column === undefined) return false;
		const opened = oneLine(asTyped(row, column));
		const text = isReplacing ? '' : opened;
		this.#editing = { id: row.id, key, text, opened, isOver: isReplacing, problem: undefined };
		this.#cells.arranged.kept = row.id;
		return true;
	}

	/** What the editor holds has become another text. */
	setText(text: string): void {
		if (this.#editing) this.#editing = { ...this.#editing, text, problem: undefined };
	}

	/** The text is edited from now on: arrows move the caret. */
	settleIn(): void {
		if (this.#editing?.isOver) this.#editing = { ...this.#editing, isOver: false };
	}

	/** How often the print that was typed into was deleted meanwhile. */
	get deletions(): number {
		return this.#deletions;
	}

	/** Where the print that is typed into has been deleted, in another tab say, the editor closes and says what it held. */
	follow(): void {
		const editing = this.#editing;
		if (editing === undefined || this.#rowOf(editing) !== undefined) return;
		const text = editing.text.trim();
		if (text !== editing.opened.trim()) this.#notices.show(typedIntoDeleted(text));
		this.#deletions++;
		this.cancel();
	}

	/**
	 * Leaves no blank row behind where Enter or Tab added one and nothing was typed into it.
	 * @param isGone whether the grid goes from the page
	 */
	dropBlank(isGone = false): void {
		const begun = this.#begun;
		if (begun === undefined || this.#editing !== undefined) return;
		if (!isGone && this.#selection.row?.id === begun.id) return;
		this.#begun = undefined;
		const row = this.#source.show.rows.find(({ id }) => id === begun.id);
		if (row !== undefined && isBlankRow(row)) this.#edits.withdraw(begun.step);
	}

	#rowOf({ id }: Editing): Row | undefined {
		return this.#source.show.rows.find((row) => row.id === id);
	}

	/** Closes the editor and leaves the cell as it was. */
	cancel(): void {
		this.#editing = undefined;
		this.#cells.arranged.kept = undefined;
	}

	/**
	 * Types what the editor holds into its cell. What cannot be read keeps the editor open with the reason, once: put
	 * in again, it stays in the cell as typed, and marked.
	 * @returns whether the editor is closed
	 */
	commit(after: After, isKeepingUnread = false): boolean {
		this.follow();
		const editing = this.#editing;
		if (editing === undefined) return true;
		const text = editing.text.trim();
		const row = this.#rowOf(editing);
		const gridColumn = gridColumns.find(({ key }) => key === editing.key)!;
		if (row !== undefined && gridColumn.column !== undefined && text !== editing.opened.trim()) {
			if (!isKeepingUnread && this.#isRefused(editing, row, text)) return false;
			this.#type(row.id, gridColumn, withLineEnds(text));
		}
		this.cancel();
		this.#goOn(after);
		return true;
	}

	/** Types what the editor holds into every selected cell, as one step of undo. @returns whether the editor is closed */
	commitToAll(): boolean {
		this.follow();
		const editing = this.#editing;
		const { now, isRange, focus } = this.#selection;
		if (editing === undefined || now === undefined || !isRange) return this.commit('stay');
		const text = editing.text.trim();
		const row = this.#rowOf(editing);
		if (row !== undefined && this.#isRefused(editing, row, text)) return false;
		this.cancel();
		this.#plans.carryOut(planPaste([[withLineEnds(text)]], now, this.#plans.plannedFor), 'Fill', focus);
		return true;
	}

	/** Whether a text cannot be read and has not been put in before: the editor stays open then, with the reason. */
	#isRefused(editing: Editing, row: Row, text: string): boolean {
		if (editing.problem !== undefined) return false;
		const column = gridColumns.find(({ key }) => key === editing.key)?.column;
		const problem = column && entryProblem(row, column, text, this.#source.settings);
		if (problem === undefined) return false;
		this.#editing = { ...editing, isOver: false, problem };
		this.#notices.say(problem.message);
		return true;
	}

	/** Types one of the readings offered for what could not be read. */
	applyReading(text: string): void {
		this.setText(text);
		this.commit('stay', true);
	}

	/** Types into a cell and says what it shows then, and the gravest finding of its row. */
	#type(id: RowId, column: GridColumn, text: string): void {
		const before = this.#viewOf(id, column)?.state;
		this.#rowEdits.type(id, { [column.key]: text }, `Type ${column.label.toLowerCase()}`);
		const said = saidOfTyped(column.label, before, this.#viewOf(id, column));
		this.#notices.say([said, this.#rowEdits.gravestOf(id)].filter((part) => part !== '').join('. '));
	}

	#viewOf(id: RowId, column: GridColumn): View | undefined {
		const index = this.#cells.indexOf(id);
		return index < 0 ? undefined : textAndState(column, this.#cells.sourceOf(index));
	}

	#goOn(after: After): void {
		if (after === 'stay') return;
		if (after.startsWith('arrow ')) return this.#moves.go(after.slice('arrow '.length) as Move, false);
		const isSideways = after === 'right' || after === 'left';
		const isMoved = this.#moves.step(isSideways ? 'tab' : 'enter', after === 'left' || after === 'up');
		// Past the last row a new one is added, unless the last one is still blank.
		const isForward = after === 'right' || after === 'down';
		if (isMoved || !isForward || isBlank(this.#selection.row)) return;
		this.#begun = this.#rowEdits.add(this.#selection.rowIndex + 1, this.#moves.runColumn);
		if (after === 'right') this.#selection.select(this.#selection.rowIndex, 0);
	}
}

type View = ReturnType<typeof textAndState>;
const isBlank = (row: Row | undefined) => row === undefined || isBlankRow(row);

/** What is said where a typed text replaces another state of the cell, or the reverse. */
function saidOfTyped(label: string, before: View['state'] | undefined, after: View | undefined): string {
	if (after?.state === 'typed' && (before === 'worked out' || before === 'inherited'))
		return `${label} typed; it was ${before === 'inherited' ? 'from the show' : before}`;
	if (before === 'typed' && (after?.state === 'worked out' || after?.state === 'inherited'))
		return `${label}, ${after.text}, ${after.state === 'inherited' ? 'from the show' : after.state}`;
	return '';
}
