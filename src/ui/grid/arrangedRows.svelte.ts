import { untrack } from 'svelte';
import type { RowResult } from '../../core/findings/rowResult.ts';
import { type Filter, isNoFilter, noFilter } from '../../core/grid/filter.ts';
import { alsoShown, keepShown, showAll, type ShownRows } from '../../core/grid/shownRows.ts';
import type { Sort } from '../../core/grid/sortRows.ts';
import type { Row, RowId } from '../../core/show/row.ts';
import { finish } from '../../core/values/finish.ts';
import type { arrangeRows } from './arrangeRows.ts';
import type { ArrangedSource } from './gridSource.ts';

/** What a row costs, as its cells are made from it. */
export function costIn({ costs, moneySettings }: Pick<ArrangedSource, 'costs' | 'moneySettings'>, row: Row) {
	const cost = costs?.costOfRow(row);
	return { cost: cost?.minorUnits, isCostPartial: cost?.isPartial, moneySettings };
}

/** What rows are asked for. */
interface Asked {
	readonly filter: Filter;
	readonly sort: Sort | undefined;
	readonly turn: number;
}

/** Rows as they were asked for. */
interface Arranged {
	readonly asked?: Asked;
	readonly shown: ShownRows;
	/** Which row was to be seen besides. */
	readonly also?: object | undefined;
	/** Only where they are sorted or filtered. */
	readonly results?: readonly RowResult[];
}

/**
 * The rows that are seen: sorted as the show's views say, and filtered. They are arranged when that is asked for; what
 * is typed later neither moves nor hides a row, until they are arranged again. In a long show that takes some slices: until
 * it is done they stay as they were, and of several things asked the last counts.
 */
export class ArrangedRows {
	readonly #source: ArrangedSource;
	/** What the rows are asked for. It is not kept: a show that is opened again shows every print. */
	filter = $state.raw<Filter>(noFilter);
	#turn = $state.raw(0);
	#also = $state.raw<{ readonly id: RowId }>();
	/** The row that is being typed into, which stays whatever is asked. */
	kept: RowId | undefined;
	/** Arranges them; undefined until it is loaded. */
	arrangeRows = $state.raw<typeof arrangeRows>();
	/** What is seen, as it was looked at last. */
	#last: Arranged | undefined;
	/** What is being arranged in slices, and ends that. */
	#working: { readonly asked: Asked; readonly controller: AbortController } | undefined;
	/** How often that was done. */
	#done = $state.raw(0);
	#then: (() => void) | undefined;
	/** The same object while the sort stays the same, so that an edit of other views does not rearrange the rows. */
	readonly #sort = $derived.by(() => {
		const { sort } = this.#source.views;
		const known = this.#knownSort;
		if (known?.column === sort?.column && known?.way === sort?.way) return known;
		return (this.#knownSort = sort);
	});
	#knownSort: Sort | undefined;
	readonly #asked: Asked = $derived({ filter: this.filter, sort: this.#sort, turn: this.#turn });
	readonly shown: ShownRows = $derived.by(() => {
		const { rows } = this.#source.show;
		const also = this.#also;
		void this.#done;
		if (!this.#isAsAsked && (this.#isAtOnce || this.#source.isWorkedOut)) this.#arrange(rows);
		const last = this.#last ?? { shown: showAll(rows) };
		let shown = keepShown(last.shown, rows);
		if (also !== undefined && also !== last.also) shown = alsoShown(shown, also.id);
		this.#last = { ...last, also, shown };
		return shown;
	});

	constructor(source: ArrangedSource) {
		this.#source = source;
	}

	/** Whether rows are left out. */
	get isFiltered(): boolean {
		return !isNoFilter(this.filter);
	}

	/** Whether the rows are not seen yet as they are asked for. */
	get isArranging(): boolean {
		void this.shown;
		return !this.#isAsAsked;
	}

	/** Does something once the rows are seen as they are asked for, unless something else is to be done then. */
	whenArranged(act: () => void): void {
		this.#then = act;
		this.#goOn();
	}

	/** Whether something has changed since the rows were arranged. */
	get isLate(): boolean {
		const { shown } = this;
		return shown.places !== undefined && this.#source.isWorkedOut && this.#source.results !== this.#last?.results;
	}

	/** Arranges the rows by what they are now. */
	arrangeAgain(): void {
		this.#turn++;
	}

	/** Has a row seen, whatever is left out. @returns whether it had been left out */
	reveal(id: RowId): boolean {
		if (!this.isArranging && this.shown.rows.some((row) => row.id === id)) return false;
		if (!this.#source.show.rows.some((row) => row.id === id)) return false;
		this.#also = { id };
		return true;
	}

	get #isAsAsked(): boolean {
		const asked = this.#asked; // read in any case: what is shown follows it
		return this.#last?.asked !== undefined && isSameAsked(this.#last.asked, asked);
	}

	/** Whether the rows are asked for as they stand in the show. */
	get #isAsItStands(): boolean {
		return this.#asked.sort === undefined && !this.isFiltered;
	}

	get #isAtOnce(): boolean {
		return !this.#source.inSlices || this.#isAsItStands;
	}

	#goOn(): void {
		if (this.isArranging) return;
		const act = this.#then;
		this.#then = undefined;
		act?.();
	}

	/** Arranges the rows by what they are now: at once, or where they are many, beside the screen. */
	#arrange(rows: readonly Row[]): void {
		const asked = this.#asked;
		const also = this.#last?.also;
		if (this.#working && isSameAsked(this.#working.asked, asked)) return;
		this.#working?.controller.abort();
		this.#working = undefined;
		if (this.#isAsItStands) {
			this.#last = { asked, also, shown: showAll(rows) };
			return;
		}
		const { arrangeRows } = this;
		if (!arrangeRows) return;
		untrack(() => {
			const isAll = isNoFilter(asked.filter);
			const { results, inSlices } = this.#source;
			const steps = arrangeRows(this.#source, asked, ({ id }) => isAll || id === this.kept);
			if (!inSlices) {
				this.#last = { asked, also, results, shown: finish(steps) };
				return;
			}
			const controller = new AbortController();
			this.#working = { asked, controller };
			inSlices(steps, controller.signal).then(
				(shown) => {
					this.#working = undefined;
					if (!isSameAsked(asked, this.#asked)) return;
					const { kept } = this; // it may have been opened since
					this.#last = { asked, also, results, shown: kept === undefined ? shown : alsoShown(shown, kept) };
					this.#done++;
					this.#goOn();
				},
				(cause: unknown) => {
					if (!controller.signal.aborted) throw cause;
				},
			);
		});
	}
}

const isSameAsked = (a: Asked, b: Asked): boolean => a.filter === b.filter && a.sort === b.sort && a.turn === b.turn;
