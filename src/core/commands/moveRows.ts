import type { Edit } from '../show/edit.ts';
import type { RowId } from '../show/row.ts';
import type { Show } from '../show/show.ts';
import { placeRows } from './placeRows.ts';

/**
 * Moves rows, which then stand together in the order that they had.
 * @param to place before which they go, counted in the rows of the show as it is, from 0; past the end: to the end
 */
export function moveRows(show: Show, ids: readonly RowId[], to: number, label: string): Edit {
	const isMoved = new Set(ids);
	const moved = show.rows.filter(({ id }) => isMoved.has(id));
	const others = show.rows.filter(({ id }) => !isMoved.has(id));
	const at = show.rows.slice(0, Math.max(0, to)).filter(({ id }) => !isMoved.has(id)).length;
	const sequence = [...others.slice(0, at), ...moved, ...others.slice(at)];
	const stays = sequence.every((row, index) => row === show.rows[index]);
	return { label, rows: stays ? [] : placeRows(show.rows, others, moved, at) };
}
