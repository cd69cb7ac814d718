import { isSameValue } from './isSameValue.ts';
import type { Show } from './show.ts';

/** The show as read anew, with the objects of the old one wherever they hold the same: what was worked out holds. */
export function takeIn(old: Show, read: Show): Show {
	const known = new Map(old.rows.map((row) => [row.id, row]));
	const rows = read.rows.map((row) => {
		const before = known.get(row.id);
		return before && isSameValue(before, row) ? before : row;
	});
	const isSameSheets = isSameValue(old.cutSheets, read.cutSheets);
	const isSameTicks = isSameValue(old.ticks, read.ticks);
	return {
		...read,
		...(isSameTicks && old.ticks && { ticks: old.ticks }),
		...(isSameSheets && old.cutSheets && { cutSheets: old.cutSheets }),
		rows,
		settings: isSameValue(old.settings, read.settings) ? old.settings : read.settings,
	};
}
