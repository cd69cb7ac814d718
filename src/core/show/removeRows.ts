import type { Edit } from './edit.ts';
import type { RowId } from './row.ts';
import type { Show } from './show.ts';

/** Removes rows; those that are not in the show are passed over. */
export function removeRows(show: Show, ids: readonly RowId[], label: string): Edit {
	const isRemoved = new Set(ids);
	return { label, rows: show.rows.filter(({ id }) => isRemoved.has(id)).map((before) => ({ before })) };
}
