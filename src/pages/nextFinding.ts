import type { RowResult } from '../core/row/rowResult.ts';
import { columnIndexOf, columnOfFindingCell, type GridColumn } from '../ui/grid/gridColumns.ts';

/** A cell that something is said about. */
export interface FindingPlace {
	/** Place of the row, from 0. */
	readonly index: number;
	readonly key: GridColumn['key'];
}

/**
 * The next or the former cell that something is said about, from the left and from the top; past the last, the first.
 * @returns undefined if nothing is said about any row
 */
export function nextFinding(
	results: readonly RowResult[],
	index: number,
	key: GridColumn['key'],
	by: 1 | -1,
): FindingPlace | undefined {
	const places = results.flatMap(({ findings }, place) => {
		const keys = new Set(findings.map(({ cells }) => columnOfFindingCell(cells[0] ?? '') ?? 'findings'));
		return [...keys]
			.sort((one, other) => columnIndexOf(one) - columnIndexOf(other))
			.map((each) => ({ index: place, key: each }));
	});
	const column = columnIndexOf(key);
	const isAfter = (place: FindingPlace) =>
		place.index > index || (place.index === index && columnIndexOf(place.key) > column);
	const isBefore = (place: FindingPlace) =>
		place.index < index || (place.index === index && columnIndexOf(place.key) < column);
	return by > 0 ? (places.find(isAfter) ?? places[0]) : (places.findLast(isBefore) ?? places.at(-1));
}
