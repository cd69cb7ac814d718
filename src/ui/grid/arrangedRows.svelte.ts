import { untrack } from 'svelte';
import { cutStateOf } from '../../core/bench/cutState.ts';
import { type Tick, ticksByRow } from '../../core/show/tick.ts';
import { answers, type Filter, isNoFilter, noFilter } from '../../core/grid/filterRows.ts';
import { alsoShown, keepShown, showAll, showAt, type ShownRows } from '../../core/grid/shownRows.ts';
import { sortKeyOf } from '../../core/grid/sortKey.ts';
import { type Sort, sortedPlaces } from '../../core/grid/sortRows.ts';
import type { Views } from '../../core/grid/views.ts';
import type { RowResult } from '../../core/findings/rowResult.ts';
import type { CostOfRow } from '../../core/record/priceOf.ts';
import type { Row, RowId } from '../../core/show/row.ts';
import type { Settings } from '../../core/settings/settings.ts';

/** What rows are arranged from. */
export interface ArrangedSource {
	readonly show: { readonly rows: readonly Row[]; readonly ticks?: readonly Tick[] };
	readonly settings: Settings;
	/** In the currency of the prices; left out where that is the show's. */
	readonly moneySettings?: Settings;
	/** What each row works out; where not all is worked out yet, it is done when this is read. */
	readonly results: readonly RowResult[];
	readonly isWorkedOut: boolean;
	/** What the row at a place works out. */
	readonly resultAt: (place: number) => RowResult | undefined;
	/** The bench steps of each row. */
	readonly bench: { readonly stepsOfRows: readonly (readonly number[])[] };
	readonly views: Views;
	/** What each print costs; it may lag behind what is typed. */
	readonly costs?: { readonly costOfRow: (row: Row) => CostOfRow | undefined };
}

/** What a row costs, as its cells are made from it. */
export function costIn({ costs, moneySettings }: Pick<ArrangedSource, 'costs' | 'moneySettings'>, row: Row) {
	const cost = costs?.costOfRow(row);
	return { cost: cost?.minorUnits, isCostPartial: cost?.isPartial, moneySettings };
}

const texts = new Intl.Collator(undefined, { numeric: true, sensitivity: 'base' });

/** What was asked for when the rows were last arranged. */
interface Asked {
	readonly filter: Filter;
	readonly sort: Sort | undefined;
	readonly turn: number;
	readonly also: { readonly id: RowId } | undefined;
}

/**
 * The rows that are seen: sorted as the show's views say, and filtered. They are arranged when that is asked for; what
 * is typed later neither moves nor hides a row, until they are arranged again.
 */
export class ArrangedRows {
	readonly #source: ArrangedSource;
	/** What the rows are asked for. It is not kept: a show that is opened again shows every print. */
	filter = $state.raw<Filter>(noFilter);
	#turn = $state.raw(0);
	#also = $state.raw<{ readonly id: RowId }>();
	/** The row that is being typed into, which stays whatever is asked. */
	kept: RowId | undefined;
	/** Results only where rows are sorted or filtered. */
	#last: { readonly asked: Asked; readonly shown: ShownRows; readonly results?: readonly RowResult[] } | undefined;

	readonly shown: ShownRows = $derived.by(() => {
		const { rows } = this.#source.show;
		const asked: Asked = { filter: this.filter, sort: this.#sort, turn: this.#turn, also: this.#also };
		const last = this.#last;
		const isAsBefore = last && isSameAsked(last.asked, asked);
		let shown = isAsBefore ? keepShown(last.shown, rows) : untrack(() => this.#arrange(rows, asked));
		if (asked.also !== undefined && asked.also !== last?.asked.also) shown = alsoShown(shown, asked.also.id);
		if (isAsBefore) this.#last = { ...last, asked, shown };
		else this.#last = { asked, shown, ...(shown.places && { results: untrack(() => this.#source.results) }) };
		return shown;
	});
	/** The same object while the sort stays the same, so that an edit of other views does not rearrange the rows. */
	readonly #sort = $derived.by(() => {
		const { sort } = this.#source.views;
		const known = this.#knownSort;
		if (known?.column === sort?.column && known?.way === sort?.way) return known;
		return (this.#knownSort = sort);
	});
	#knownSort: Sort | undefined;

	constructor(source: ArrangedSource) {
		this.#source = source;
	}

	/** Whether rows are left out. */
	get isFiltered(): boolean {
		return !isNoFilter(this.filter);
	}

	/** Whether something has changed since the rows were arranged. */
	get isLate(): boolean {
		const { shown } = this;
		return shown.places !== undefined && this.#source.isWorkedOut && this.#source.results !== this.#last?.results;
	}

	/** Arranges the rows by what they are now. */
	anew(): void {
		this.#turn++;
	}

	/** Has a row seen, whatever is left out. @returns whether it had been left out */
	reveal(id: RowId): boolean {
		if (this.shown.rows.some((row) => row.id === id)) return false;
		if (!this.#source.show.rows.some((row) => row.id === id)) return false;
		this.#also = { id };
		return true;
	}

	#arrange(rows: readonly Row[], { filter, sort }: Asked): ShownRows {
		if (sort === undefined && isNoFilter(filter)) return showAll(rows);
		const { results, settings, moneySettings, show, costs } = this.#source;
		const ticks = ticksByRow(filter.cut === '' ? [] : (show.ticks ?? []));
		const isAll = isNoFilter(filter);
		const places = rows.flatMap((row, place) => {
			if (isAll) return place;
			const result = results[place]!;
			const cut = filter.cut === '' ? 'not cut' : cutStateOf(row, result, settings, ticks.get(row.id) ?? []);
			const cost = costs?.costOfRow(row);
			return row.id === this.kept || answers(filter, { row, result, settings, moneySettings, cut, cost }) ? place : [];
		});
		if (sort === undefined) return showAt(rows, places, false);
		const steps = sort.column === 'steps' ? this.#source.bench.stepsOfRows : [];
		const keys = places.map((place) =>
			sortKeyOf(sort.column, {
				row: rows[place]!,
				result: results[place]!,
				steps: steps[place] ?? [],
				cost: costs?.costOfRow(rows[place]!),
				settings,
				moneySettings,
			}),
		);
		return showAt(
			rows,
			sortedPlaces(keys, sort.way, texts.compare).map((at) => places[at]!),
			true,
		);
	}
}

const isSameAsked = (a: Asked, b: Asked): boolean => a.filter === b.filter && a.sort === b.sort && a.turn === b.turn;
