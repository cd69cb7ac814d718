import { cutStateOf } from '../../core/bench/cutState.ts';
import type { Filter } from '../../core/grid/filter.ts';
import { answers } from '../../core/grid/filterRows.ts';
import { showAt, type ShownRows } from '../../core/grid/shownRows.ts';
import { sortKeyOf } from '../../core/grid/sortKey.ts';
import { type Sort, type SortKey, sortingPlaces } from '../../core/grid/sortRows.ts';
import type { Row } from '../../core/show/row.ts';
import { ticksByRow } from '../../core/show/tick.ts';
import { onceMade } from '../../core/values/onceMade.ts';
import type { ArrangedSource } from './gridSource.ts';

const texts = onceMade(() => new Intl.Collator(undefined, { numeric: true, sensitivity: 'base' }));

/**
 * Filters and sorts rows by what they are as it begins, with a halt after every few of them.
 * @param isKept whether a row is seen whatever is asked
 */
export function* arrangeRows(
	source: ArrangedSource,
	{ filter, sort }: { readonly filter: Filter; readonly sort: Sort | undefined },
	isKept: (row: Row) => boolean,
): Generator<void, ShownRows> {
	const { results, settings, moneySettings, show, costs } = source;
	const { rows, ticks = [] } = show;
	const ticksOf = ticksByRow(filter.cut === '' ? [] : ticks);
	const places: number[] = [];
	for (const [place, row] of rows.entries()) {
		yield;
		const result = results[place]!;
		const cut = filter.cut === '' ? 'not cut' : cutStateOf(row, result, settings, ticksOf.get(row.id) ?? []);
		const cost = costs?.costOfRow(row);
		if (isKept(row) || answers(filter, { row, result, settings, moneySettings, cut, cost })) places.push(place);
	}
	if (sort === undefined) return showAt(rows, places, false);
	const steps = sort.column === 'steps' ? source.bench.stepsOfRows : [];
	const keys: SortKey[] = [];
	for (const place of places) {
		yield;
		const [row, result] = [rows[place]!, results[place]!];
		const cost = costs?.costOfRow(row);
		keys.push(sortKeyOf(sort.column, { row, result, steps: steps[place] ?? [], cost, settings, moneySettings }));
	}
	const sorted = yield* sortingPlaces(keys, sort.way, texts().compare);
	const inSequence = sorted.map((at) => places[at]!);
	return showAt(rows, inSequence, true);
}
