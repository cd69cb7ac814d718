import { tickDiffs } from '../bench/ticks.ts';
import { cutSheetDiffs } from '../sheets/markSheets.ts';
import { distinctRows } from './distinctRows.ts';
import type { Edit, RowDiff } from './edit.ts';
import type { RowId } from './row.ts';
import { isSameValue } from './isSameValue.ts';
import { settingDiffs } from './settingDiffs.ts';
import type { Show } from './show.ts';

/**
 * Puts another show in the place of all that is there: a show file, the example. Rows that are there already, and the
 * same, are not touched.
 * @param makeId names a row whose name is taken by one before it
 */
export function replaceShow(show: Show, next: Omit<Show, 'id'>, makeId: () => RowId, label: string): Edit {
	const after = new Map(distinctRows(next.rows, makeId).map((row) => [row.id, row]));
	const kept = show.rows.flatMap((before): RowDiff[] => {
		const row = after.get(before.id);
		after.delete(before.id);
		if (!row) return [{ before }];
		return isSameValue(before, row) ? [] : [{ before, after: row }];
	});
	const ticks = tickDiffs(show.ticks ?? [], next.ticks ?? []);
	const cutSheets = cutSheetDiffs(show.cutSheets ?? [], next.cutSheets ?? []);
	return {
		label,
		rows: [...kept, ...[...after.values()].map((row) => ({ after: row }))],
		settings: settingDiffs(show.settings, next.settings),
		...(ticks.length > 0 && { ticks }),
		...(cutSheets.length > 0 && { cutSheets }),
		...(next.name !== show.name && { name: { before: show.name, after: next.name } }),
	};
}
