/** Height of a row, in pixels: a finger's width, and the line under it. */
export const rowHeight = 45;

/** Rows of the head: the groups, and the columns under them. */
export const headRows = 2;

/** Height of both rows of the head, in pixels. */
export const headHeight = 78;

/** Rows that are kept ready above and below what is seen. */
const spareRows = 8;

/** A row that is in the page, and the element that it is shown in. */
export interface Slot {
	/** Names the element; elements are used again for other rows as the grid is scrolled. */
	readonly slot: number;
	readonly index: number;
}

/**
 * The rows that have to be in the page: those in view with some to spare, and the active one wherever it is, so that
 * it keeps the focus.
 * @param active place of the active row, from 0; -1 where there is none
 */
export function rowsInPage(scrollTop: number, height: number, rowCount: number, active: number): readonly number[] {
	const count = Math.min(rowCount, Math.ceil(height / rowHeight) + 1 + 2 * spareRows);
	const first = Math.max(0, Math.min(Math.floor(scrollTop / rowHeight) - spareRows, rowCount - count));
	const rows = Array.from({ length: count }, (_, place) => first + place);
	const isActiveElsewhere = active >= 0 && active < rowCount && (active < first || active >= first + count);
	return isActiveElsewhere ? [...rows, active] : rows;
}

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
