import type { Edit } from '../show/edit.ts';
import type { RowId } from '../show/row.ts';
import type { Show } from '../show/show.ts';

/** Removes rows; those that are not in the show are passed over. */
export function removeRows(show: Show, ids: readonly RowId[], label: string): Edit {
	const isRemoved = new Set(ids);
	return { label, rows: show.rows.filter(({ id }) => isRemoved.has(id)).map((before) => ({ before })) };
}
