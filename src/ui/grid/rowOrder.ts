import { changeViews } from '../../core/grid/changeViews.ts';
import type { Filter } from '../../core/grid/filter.ts';
import { saidOfShown } from '../../core/grid/saidOfArranging.ts';
import type { Sort } from '../../core/grid/sortRows.ts';
import { countPrints } from '../../core/show/blankRow.ts';
import { type Command, compose } from '../../core/show/edit.ts';
import { orderRows } from '../../core/commands/orderRows.ts';
import type { GridEdits } from './gridEdits.ts';
import type { GridNotices } from './gridNotices.svelte.ts';
import type { GridSelection } from './gridSelection.svelte.ts';
import type { GridSource } from './gridSource.ts';
import type { SeenCells } from './seenCells.ts';

/** Which rows are seen and in which sequence, as a person asks for it; what is selected stays selected. */
export class RowOrder {
	readonly #source: GridSource;
	readonly #cells: SeenCells;
	readonly #selection: GridSelection;
	readonly #edits: GridEdits;
	readonly #notices: GridNotices;

	constructor(source: GridSource, cells: SeenCells, selection: GridSelection, edits: GridEdits, notices: GridNotices) {
		this.#source = source;
		this.#cells = cells;
		this.#selection = selection;
		this.#edits = edits;
		this.#notices = notices;
	}

	/** Sorts the rows by a column, or puts them in the show's own order. */
	sortBy(sort: Sort | undefined): void {
		this.#cells.columns.sortBy(sort);
		this.#cells.arranged.arrangeAgain();
		this.#sayShown(() => this.#selection.settle());
	}

	/** Asks for some rows only; those that are typed into later stay. */
	filterBy(filter: Filter): void {
		this.#cells.arranged.filter = filter;
		this.#sayShown();
	}

	/** Sorts and filters by what the rows are now. */
	arrangeAnew(): void {
		this.#cells.arranged.arrangeAgain();
		this.#sayShown();
	}

	/** Makes the sequence in which the rows are seen the show's own, as one step of undo. */
	keep(): void {
		const ids = this.#cells.rows.map(({ id }) => id);
		const views = { ...this.#source.views, sort: undefined };
		const label = 'Save this order';
		const order: Command = (show) => compose(orderRows(show, ids, label), changeViews(show, views, label));
		if (this.#edits.do(order)) this.#notices.say('The prints are in this order now');
	}

	#sayShown(first?: () => void): void {
		this.#cells.arranged.whenArranged(() => {
			first?.();
			const { rows, columns } = this.#cells;
			this.#notices.say(saidOfShown(countPrints(rows), countPrints(this.#source.show.rows), columns.sort));
		});
	}
}
