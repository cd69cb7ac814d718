import { distinctRows } from './distinctRows.ts';
import { difference, type Edit } from './edit.ts';
import type { RowId } from './row.ts';
import type { Show } from './show.ts';

/**
 * Puts another show in the place of all that is there: a show file, the example. What is there already, and the same,
 * is not touched.
 * @param makeId names a row whose name is taken by one before it
 */
export const replaceShow = (show: Show, next: Omit<Show, 'id'>, makeId: () => RowId, label: string): Edit =>
	difference(show, { ...next, rows: distinctRows(next.rows, makeId) }, label);
