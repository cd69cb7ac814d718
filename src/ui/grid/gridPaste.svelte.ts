import { type CellPlan, planPaste } from '../../core/grid/planPaste.ts';
import { cannotPasteInHead, cellsTyped, withoutCells } from '../../core/grid/saidOfPaste.ts';
import { at } from '../../core/grid/selection.ts';
import type { CellPlace } from '../../core/show/cellPlace.ts';
import type { Edit } from '../../core/show/edit.ts';
import type { Row } from '../../core/show/row.ts';
import type { CellPlans } from './cellPlans.ts';
import type { GridFocus } from './gridFocus.ts';
import type { GridNotices } from './gridNotices.svelte.ts';
import type { GridSelection } from './gridSelection.svelte.ts';
import type { RowsSource } from './gridSource.ts';
import type { SeenCells } from './seenCells.ts';

/** What can still be said to a paste that has just been made. */
interface PasteOffer {
	/** The step that it was. */
	readonly step: Edit;
	readonly plan: CellPlan;
	/** The cells that it typed over and that had been worked out. */
	readonly workedOut: readonly CellPlace[];
	/** What it did, in a sentence. */
	readonly said: string;
	/** Whether that is more than that all was typed where it belonged. */
	readonly isShown: boolean;
	/** What was selected before it. */
	readonly before: GridFocus | undefined;
	/** The rows as it left them: once they are others, there is nothing more to be said. */
	readonly rows: readonly Row[];
}

/** Pastes into the selected cells, and what is offered after a paste: to leave alone what had been worked out. */
export class GridPaste {
	readonly #source: RowsSource;
	readonly #cells: SeenCells;
	readonly #selection: GridSelection;
	readonly #plans: CellPlans;
	readonly #notices: GridNotices;
	#last = $state.raw<PasteOffer>();

	/** The paste that was made last, while worked-out cells can still be left alone. */
	readonly offer = $derived.by(() => (this.#last?.rows === this.#source.show.rows ? this.#last : undefined));

	constructor(source: RowsSource, cells: SeenCells, selection: GridSelection, plans: CellPlans, notices: GridNotices) {
		this.#source = source;
		this.#cells = cells;
		this.#selection = selection;
		this.#plans = plans;
		this.#notices = notices;
	}

	/** Types a table into the cells from the active one on; rows past the last are added. */
	paste(table: readonly (readonly string[])[]): void {
		const { now, rowIndex, columnIndex, focus: before } = this.#selection;
		if (rowIndex < 0 && this.#cells.rows.length > 0) return this.#notices.show(cannotPasteInHead);
		const plan = planPaste(table, now ?? at(0, columnIndex), this.#plans.plannedFor);
		const workedOut = cellsTyped(plan).filter((cell) => this.#cells.viewOf(cell)?.state === 'worked out');
		const done = this.#plans.carryOut(plan, 'Paste', before);
		if (done === undefined) return;
		const { step, said, unread } = done;
		const isShown = workedOut.length > 0 || plan.skipped > 0 || plan.outside > 0 || unread > 0;
		this.#last = { step, plan, workedOut, said, isShown, before, rows: this.#source.show.rows };
	}

	/** Makes the last paste again, without the cells that had been worked out: still one step of undo. */
	leaveWorkedOut(): void {
		const { offer } = this;
		if (offer === undefined || offer.workedOut.length === 0) return;
		this.close();
		const done = this.#plans.carryOut(withoutCells(offer.plan, offer.workedOut), 'Paste', offer.before, offer.step);
		const count = offer.workedOut.length;
		const left = `${count} worked-out cell${count === 1 ? '' : 's'} left alone`;
		this.#notices.say(done ? `${done.said}; ${left}` : left);
	}

	/** Ends the offers that the last paste made. */
	close(): void {
		this.#last = undefined;
	}
}
