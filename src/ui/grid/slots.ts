/** Height of a row, in pixels: a finger's width, and the line under it. */
export const rowHeight = 45;

/** Rows of the head: the groups, and the columns under them. */
export const headRows = 2;

/** Height of both rows of the head, in pixels. */
export const headHeight = 56;

/** Room for a print drawn beside its title, in pixels. */
export const mountRoom = { width: 40, height: 36 } as const;

/**
 * Columns that are kept ready on each side of what is seen. Where more than `manyColumns` are seen, each of them is so
 * narrow that the next one is drawn before a hand has scrolled to it, and none is.
 */
const spareColumns = 1;
const manyColumns = 16;

/** A row that is in the page, and the element that it is shown in. */
export interface Slot {
	/** Names the element; elements are used again for other rows as the grid is scrolled. */
	readonly slot: number;
	readonly index: number;
}

/**
 * The rows that have to be in the page: those in view, one or two over, and the active one wherever it is, so that it
 * keeps the focus.
 * @param height room for rows, in pixels
 * @param active place of the active row, from 0; -1 where there is none
 * @param most so many at most, but for the active one
 */
export function rowsInPage(
	scrollTop: number,
	height: number,
	rowCount: number,
	active: number,
	most = Infinity,
): readonly number[] {
	// One more than can be seen, parts of two included, half a row of it above.
	const count = Math.min(rowCount, Math.ceil(height / rowHeight) + 2, most);
	const first = Math.max(0, Math.min(Math.floor(scrollTop / rowHeight - 0.5), rowCount - count));
	const rows = Array.from({ length: count }, (_, place) => first + place);
	const isActiveElsewhere = active >= 0 && active < rowCount && (active < first || active >= first + count);
	return isActiveElsewhere ? [...rows, active] : rows;
}

/**
 * The columns that have to be in the page, from the left: those that stay, those in view, and one over on each side.
 * @param edges where each column begins, and the last one ends, in pixels
 * @param frozen how many columns stay where they are
 * @param width what is seen of the grid, in pixels, with the columns that stay
 */
export function columnsInPage(
	edges: readonly number[],
	frozen: number,
	scrollLeft: number,
	width: number,
): readonly number[] {
	const count = edges.length - 1;
	const isSeen = (place: number) =>
		edges[place + 1]! > edges[frozen]! + scrollLeft && edges[place]! < scrollLeft + width;
	const seen = Array.from({ length: count - frozen }, (_, place) => frozen + place).filter(isSeen);
	const spare = seen.length > manyColumns ? 0 : spareColumns;
	const isInPage = (place: number) =>
		place < frozen || (seen.length > 0 && place >= seen[0]! - spare && place <= seen.at(-1)! + spare);
	return Array.from({ length: count }, (_, place) => place).filter(isInPage);
}

/** Places with one more, in their order; the same object where it is among them. */
export const withPlace = (places: readonly number[], place: number): readonly number[] =>
	places.includes(place) ? places : [...places, place].sort((one, other) => one - other);

/** Whether these are the same places. */
export const isSamePlaces = (some: readonly number[], others: readonly number[]): boolean =>
	some.length === others.length && some.every((place, at) => place === others[at]);

/**
 * Gives each row an element. A row that has one keeps it (the active one would lose the focus otherwise); the others
 * get those that have become free.
 */
export function shareSlots(former: readonly Slot[], rows: readonly number[]): readonly Slot[] {
	const wanted = new Set(rows);
	const kept = new Map(former.filter(({ index }) => wanted.has(index)).map(({ slot, index }) => [index, slot]));
	const used = new Set(kept.values());
	let next = 0;
	const free = () => {
		while (used.has(next)) next++;
		used.add(next);
		return next;
	};
	return rows.map((index) => ({ slot: kept.get(index) ?? free(), index })).sort((one, other) => one.slot - other.slot);
}
