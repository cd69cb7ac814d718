import { type FillWay, planFill, planSpread, spreadTo } from '../../core/grid/planFill.ts';
import { type CellPlan, type GridCells, planPaste } from '../../core/grid/planPaste.ts';
import { type CellName, cellsTyped, saidOfPaste, withoutCells } from '../../core/grid/saidOfPaste.ts';
import { at, type Range } from '../../core/grid/selection.ts';
import { asTyped } from '../../core/show/asTyped.ts';
import type { ColumnName } from '../../core/show/columns.ts';
import type { Edit } from '../../core/show/edit.ts';
import type { CellTexts, Row, RowId } from '../../core/show/row.ts';
import type { Settings } from '../../core/show/settings.ts';
import type { Show } from '../../core/show/show.ts';
import { typeAndAdd } from '../../core/show/typeAndAdd.ts';
import { typeCells } from '../../core/show/typeCells.ts';
import { exactText, textAndState } from './cellView.ts';
import { gridColumns } from './gridColumns.ts';
import { type GridFocus, GridHand, type GridRows } from './gridHand.svelte.ts';

/** What is in hand before an edit and after it. */
export interface FocusOfEdit {
	readonly before: GridFocus | undefined;
	readonly after: GridFocus | undefined;
}

/** Makes an edit of the show as it is. */
export type Command = (show: Show, settings: Settings) => Edit;

/** Where the grid's edits are made: each is one step of undo. The focus is kept with the step, and handed back by undo. */
export interface GridSource extends GridRows {
	/** Names rows. */
	readonly makeId: () => RowId;
	/** Makes an edit. @returns the step; undefined where nothing was done, or not yet */
	do(command: Command, focus?: FocusOfEdit): Edit | undefined;
	/** Makes an edit in the place of a step. */
	doInstead(step: Edit, command: Command, focus?: FocusOfEdit): Edit | undefined;
	/** Takes one step back. */
	takeBack(step: Edit | undefined): unknown;
	undo(): unknown;
	redo(): unknown;
}

/** What can still be said to a paste that has just been made. */
interface PasteOffer {
	/** The step that it was. */
	readonly step: Edit;
	readonly plan: CellPlan;
	/** The cells that it typed over and that had been worked out. */
	readonly workedOut: readonly CellName[];
	/** What it did, in a sentence. */
	readonly said: string;
	/** Whether that is more than that all was typed where it belonged. */
	readonly isTold: boolean;
	/** What was in hand before it. */
	readonly before: GridFocus | undefined;
	/** The rows as it left them: once they are others, there is nothing more to be said. */
	readonly rows: readonly Row[];
}

/** What is done to the cells in hand as a block: copied, pasted, filled, cleared. */
export class GridBlocks extends GridHand {
	protected readonly source: GridSource;
	/** What is to be said aloud. */
	announcement = $state.raw('');
	/** What has to be read as well as heard: that something cannot be done, and why. */
	notice = $state.raw<string>();
	#offered = $state.raw<PasteOffer>();
	/** Where the handle of the selection has been drawn to, to fill it from there. */
	drawnTo = $state.raw<ReturnType<typeof spreadTo>>();

	/** The paste that was made last, while worked-out cells can still be left alone. */
	readonly offer = $derived.by(() => {
		const offered = this.#offered;
		return offered?.rows === this.source.show.rows ? offered : undefined;
	});

	constructor(source: GridSource) {
		super(source);
		this.source = source;
	}

	/** Hands the cells in hand back to be worked out. */
	clear(label = 'Clear'): void {
		const { range } = this;
		if (range === undefined) return;
		const columns = this.columns.list.slice(range.left, range.right + 1).flatMap(({ column }) => column ?? []);
		const cells: CellTexts = Object.fromEntries(columns.map((column) => [column, '']));
		const words = columns.length === 1 ? `${label} ${this.gridColumn.label.toLowerCase()}` : `${label} cells`;
		const ids = this.rowsInHand;
		const cleared = ids.flatMap((id, place) =>
			columns.flatMap((column): CellName | readonly [] =>
				this.rows[range.top + place]?.typed[column] === undefined ? [] : { id, column },
			),
		);
		const changes = ids.map((id) => ({ id, cells }));
		if (cleared.length === 0) this.announcement = 'Nothing was typed there';
		else if (this.does((show, settings) => typeCells(show, changes, settings, words), this.staying))
			this.announcement = this.#saidOfCleared(cleared);
	}

	/** The selected cells as texts: all that they show, in full, and what of it was typed. */
	copied(): { readonly shown: readonly string[][]; readonly typed: readonly string[][] } | undefined {
		const { range } = this;
		if (range === undefined) return undefined;
		const columns = this.columns.list.slice(range.left, range.right + 1);
		const sources = this.rowsInHand.map((_, place) => this.sourceOf(range.top + place));
		return {
			shown: sources.map((source) => columns.map((column) => exactText(column, source))),
			typed: sources.map(({ row }) => columns.map(({ column }) => (column ? asTyped(row, column) : ''))),
		};
	}

	/** Types a table into the cells from the one in hand on; rows past the last are added. */
	paste(table: readonly (readonly string[])[]): void {
		if (this.rowIndex < 0 && this.rows.length > 0) return;
		const plan = planPaste(table, this.selection ?? at(0, this.column), this.#cells);
		const workedOut = cellsTyped(plan).filter((cell) => this.#viewOf(cell)?.state === 'worked out');
		const before = this.focus;
		const done = this.#carryOut(plan, 'Paste', before);
		if (done === undefined) return;
		const { step, said, unread } = done;
		const isTold = workedOut.length > 0 || plan.skipped > 0 || plan.outside > 0 || unread > 0;
		this.#offered = { step, plan, workedOut, said, isTold, before, rows: this.source.show.rows };
	}

	/** Makes the last paste again, without the cells that had been worked out: still one step of undo. */
	leaveWorkedOut(): void {
		const { offer } = this;
		if (offer === undefined || offer.workedOut.length === 0) return;
		this.#offered = undefined;
		const done = this.#carryOut(withoutCells(offer.plan, offer.workedOut), 'Paste', offer.before, offer.step);
		const count = offer.workedOut.length;
		const left = `${count} worked-out cell${count === 1 ? '' : 's'} left alone`;
		this.announcement = done ? `${done.said}; ${left}` : left;
	}

	/** Nothing more is to be said to the last paste. */
	closeOffer(): void {
		this.#offered = undefined;
	}

	/** Fills the selection from its first row or column. */
	fill(way: FillWay): void {
		if (this.selection === undefined || this.rowIndex < 0) return;
		const plan = planFill(way, this.selection, this.#cells, this.#textOf);
		if (plan) this.#carryOut(plan, way === 'down' ? 'Fill down' : 'Fill right', this.focus);
	}

	/** Draws the handle of the selection to a cell; what would be filled is shown. */
	drawTo(row: number, column: number): void {
		this.drawnTo = this.range && spreadTo(this.range, row, column);
	}

	/** Lets the handle go: the selection is filled on to where it was drawn. */
	fillDrawn(): void {
		const { range, drawnTo } = this;
		this.drawnTo = undefined;
		if (range === undefined || drawnTo === undefined) return;
		const plan = planSpread(drawnTo.way, range, drawnTo.target, this.#cells, this.#textOf);
		this.#carryOut(plan, drawnTo.way === 'down' ? 'Fill down' : 'Fill right', this.focus);
	}

	/** Says something aloud that has to be read as well. */
	tell(sentence: string): void {
		this.notice = sentence;
		this.announcement = sentence;
	}

	/** Asks for an edit. @returns whether it was made: it may change nothing, or wait for an answer */
	protected does(command: Command, focus: FocusOfEdit): boolean {
		return this.source.do(command, focus) !== undefined;
	}

	/** The cells in hand, before and after an edit that leaves them in hand. */
	protected get staying(): FocusOfEdit {
		const { focus } = this;
		return { before: focus, after: focus };
	}

	/** What a cell shows now; undefined if its row is gone. */
	#viewOf({ id, column }: CellName) {
		const index = this.#indexOf(id);
		return index === undefined ? undefined : textAndState(columnNamed(column), this.sourceOf(index));
	}

	get #cells(): GridCells {
		return { rows: this.rows.map(({ id }) => id), columns: this.columns.list.map(({ column }) => column) };
	}

	readonly #textOf = (index: number, column: ColumnName): string => {
		const row = this.rows[index];
		return row ? asTyped(row, column) : '';
	};

	/**
	 * @param former the step in whose place it is done
	 * @returns what was done, in a sentence, which is also said aloud, and how much of it could not be read
	 */
	#carryOut(plan: CellPlan, label: string, before: GridFocus | undefined, former?: Edit) {
		// In place of a step, the rows that it added are not there: its rows go, and those of this one come.
		const gone = new Set(former?.rows.flatMap((diff) => (diff.before || !diff.after ? [] : [diff.after.id])));
		const rows = this.rows.filter(({ id }) => !gone.has(id));
		const ids = plan.added.map(this.source.makeId);
		const after = this.focusOn(selectionOf(plan.range), [...rows, ...ids.map((id) => ({ id }))]);
		const above = rows.at(-1)?.id;
		const command: Command = (show, settings) => {
			const at = show.rows.findIndex(({ id }) => id === above) + 1;
			return typeAndAdd(show, plan.changes, { rows: plan.added, at, ids }, settings, label);
		};
		const focus = { before, after };
		const step = former ? this.source.doInstead(former, command, focus) : this.source.do(command, focus);
		if (step === undefined) return undefined;
		this.selectRange(plan.range);
		const unread = this.#unreadOf(plan, ids);
		const leftOut = this.source.show.rows.length - this.rows.length;
		const said = saidOfPaste(label, plan, unread, leftOut);
		this.announcement = said;
		return { step, said, unread };
	}

	/** How many of the cells that a plan has typed could not be read. */
	#unreadOf(plan: CellPlan, added: readonly RowId[]): number {
		const typed = [...plan.changes, ...plan.added.map(({ cells }, place) => ({ id: added[place]!, cells }))];
		const columns = new Map(typed.map(({ id, cells }) => [id, new Set(Object.keys(cells))]));
		const unread = this.rows.flatMap(({ id }, index) => {
			const own = columns.get(id);
			if (own === undefined) return [];
			const { findings } = this.sourceOf(index).result;
			return findings.filter(({ code, cells }) => code === 'not-read' && cells.some((cell) => own.has(cell)));
		});
		return unread.length;
	}

	#saidOfCleared(cleared: readonly CellName[]): string {
		if (cleared.length > 1) return `${cleared.length} cells handed back`;
		const first = cleared[0]!;
		const { text, state } = this.#viewOf(first) ?? { text: '', state: 'blank' };
		const words = { typed: '', blank: 'blank', 'worked out': 'worked out', inherited: 'from the show' }[state];
		return [columnNamed(first.column).label, text, words].filter((word) => word !== '').join(', ');
	}

	#indexOf(id: RowId): number | undefined {
		const { rows } = this;
		const places = this.#places.get(rows) ?? new Map(rows.map((row, place) => [row.id, place]));
		this.#places.set(rows, places);
		return places.get(id);
	}

	/** Places of rows that are seen by their names, made once for each state of them. */
	readonly #places = new WeakMap<readonly Row[], ReadonlyMap<RowId, number>>();
}

const columnNamed = (name: ColumnName) => gridColumns.find(({ key }) => key === name)!;

const selectionOf = ({ top, bottom, left, right }: Range) => ({
	...at(top, left),
	head: { row: bottom, column: right },
});
