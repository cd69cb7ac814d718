import { distinctRows } from '../show/distinctRows.ts';
import { difference, type Edit } from '../show/edit.ts';
import type { RowId } from '../show/row.ts';
import type { Show } from '../show/show.ts';

/**
 * Puts another show in the place of all that is there: a show file, the example. What is there already, and the same,
 * is not touched.
 * @param makeId names a row whose name is taken by one before it
 */
export const replaceShow = (show: Show, next: Omit<Show, 'id'>, makeId: () => RowId, label: string): Edit =>
	difference(show, { ...next, rows: distinctRows(next.rows, makeId) }, label);
