import type { Row, RowId } from '../show/row.ts';
import { changedRange } from '../values/changedRange.ts';

/**
 * The rows that are seen, in the sequence in which they are seen. Typing does not move or hide a row: what is seen is
 * arranged when it is asked for, and stays until it is asked for again.
 */
export interface ShownRows {
	readonly rows: readonly Row[];
	/** The place of each in the show, from 0; undefined where the rows of the show are seen as they stand. */
	readonly places: readonly number[] | undefined;
	/** The rows of the show that these were chosen from. */
	readonly of: readonly Row[];
	/** Whether they stand in another sequence than the show's own. */
	readonly isSorted: boolean;
	/** Their names in that sequence with those of rows that have gone since, so that they come back where they were. */
	readonly sequence?: readonly RowId[];
}

/** All rows of a show as they stand. */
export const showAll = (rows: readonly Row[]): ShownRows => ({ rows, places: undefined, of: rows, isSorted: false });

/** Some rows of a show, by their places in it, in a sequence. */
export const showAt = (of: readonly Row[], places: readonly number[], isSorted: boolean): ShownRows => ({
	rows: places.map((place) => of[place]!),
	places,
	of,
	isSorted,
});

/** The place in the show of a row that is seen; -1 where none is. */
export const placeInShow = ({ places, rows }: ShownRows, shown: number): number =>
	places === undefined ? (shown < rows.length ? shown : -1) : (places[shown] ?? -1);

/**
 * Where rows go that are put before the row seen at a place, and have to stand behind the one seen above it.
 * @returns a place in the show, from 0
 */
export const placeBehind = (shown: ShownRows, place: number): number =>
	place <= 0 ? 0 : placeInShow(shown, Math.min(place, shown.rows.length) - 1) + 1;

/**
 * The same rows after the show has changed. Those that are gone are left out; those that have come are seen, behind the
 * row that they stand behind in the show.
 */
export function keepShown(shown: ShownRows, rows: readonly Row[]): ShownRows {
	if (shown.of === rows) return shown;
	const { places, isSorted, sequence: before } = shown;
	if (places === undefined) return showAll(rows);
	if (isSameSequence(shown.of, rows)) return { ...showAt(rows, places, isSorted), ...(before && { sequence: before }) };
	const known = new Set(shown.of.map(idOf));
	const seen = new Set(shown.rows.map(idOf));
	const isShown = ({ id }: Row) => seen.has(id) || !known.has(id);
	if (!isSorted) return showAt(rows, placesWhere(rows, isShown), false);
	const former = before ?? shown.rows.map(idOf);
	const isIn = new Set(former);
	const followers = new Map<RowId | undefined, RowId[]>();
	const placeOf = new Map<RowId, number>();
	let last: RowId | undefined;
	for (const [place, { id }] of rows.entries()) {
		if (isIn.has(id)) placeOf.set((last = id), place);
		else if (!known.has(id)) {
			placeOf.set(id, place);
			const own = followers.get(last);
			if (own) own.push(id);
			else followers.set(last, [id]);
		}
	}
	const sequence = [undefined, ...former].flatMap((id) => [
		...(id === undefined ? [] : [id]),
		...(followers.get(id) ?? []),
	]);
	return {
		...showAt(
			rows,
			sequence.flatMap((id) => placeOf.get(id) ?? []),
			true,
		),
		sequence,
	};
}

/** The same rows and one more, where it would be seen if nothing were left out; in a sorted sequence at the end. */
export function alsoShown(shown: ShownRows, id: RowId): ShownRows {
	const place = shown.of.findIndex((row) => row.id === id);
	if (shown.places === undefined || place < 0 || shown.places.includes(place)) return shown;
	const places = [...shown.places, place];
	if (shown.isSorted && shown.sequence)
		return { ...showAt(shown.of, places, true), sequence: [...shown.sequence.filter((each) => each !== id), id] };
	return showAt(shown.of, shown.isSorted ? places : places.sort((a, b) => a - b), shown.isSorted);
}

const placesWhere = (rows: readonly Row[], isShown: (row: Row) => boolean): readonly number[] =>
	rows.flatMap((row, place) => (isShown(row) ? place : []));

/** Whether the same rows stand in the same sequence, whatever was typed into them. */
export function isSameSequence(a: readonly Row[], b: readonly Row[]): boolean {
	const { from, to, shift } = changedRange(a, b);
	return shift === 0 && b.slice(from, to).every(({ id }, at) => id === a[from + at]!.id);
}

const idOf = ({ id }: Row): RowId => id;
