import type { RowResult } from '../core/findings/rowResult.ts';
import { columnOfFindingCell, type GridColumn } from '../ui/grid/gridColumns.ts';

/** A cell that something is said about. */
export interface FindingPlace {
	/** Place of the row, from 0. */
	readonly index: number;
	readonly key: GridColumn['key'];
}

/** What a finding is looked for among. */
export interface FindingPlaces {
	/** What the rows work out, in the sequence in which they are seen. */
	readonly results: readonly RowResult[];
	/** Place of a column among those shown, from 0; -1 where it is hidden. */
	readonly columnOf: (key: string) => number;
}

/**
 * The next or the former cell that something is said about, from the left and from the top; past the last, the first.
 * @returns undefined if nothing is said about any row
 */
export function nextFinding(
	{ results, columnOf }: FindingPlaces,
	index: number,
	key: GridColumn['key'],
	by: 1 | -1,
): FindingPlace | undefined {
	const places = results.flatMap(({ findings }, place) => {
		// What is said of a hidden column is found at the words; where those are hidden too, at the title.
		const shown = (key: GridColumn['key']) => [key, 'findings' as const].find((each) => columnOf(each) >= 0) ?? 'title';
		const keys = new Set(findings.map(({ cells }) => shown(columnOfFindingCell(cells[0] ?? '') ?? 'findings')));
		return [...keys].sort((one, other) => columnOf(one) - columnOf(other)).map((each) => ({ index: place, key: each }));
	});
	const column = columnOf(key);
	const isAfter = (place: FindingPlace) =>
		place.index > index || (place.index === index && columnOf(place.key) > column);
	const isBefore = (place: FindingPlace) =>
		place.index < index || (place.index === index && columnOf(place.key) < column);
	return by > 0 ? (places.find(isAfter) ?? places[0]) : (places.findLast(isBefore) ?? places.at(-1));
}
