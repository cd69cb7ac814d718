import type { Edit } from '../show/edit.ts';
import type { Row, RowId } from '../show/row.ts';
import type { Show } from '../show/show.ts';
import { placeRows } from './placeRows.ts';

/**
 * Copies rows, with all that was typed but the print id, which names one print alone. The copies stand together behind
 * the last of the rows copied.
 * @param newIds names for the copies, as many as rows are copied
 */
export function duplicateRows(show: Show, ids: readonly RowId[], newIds: readonly RowId[], label: string): Edit {
	const isCopied = new Set(ids);
	const copied = show.rows.filter(({ id }) => isCopied.has(id));
	const copies = copied.map((row, index) => copyOf(row, newIds[index]!));
	const at = show.rows.findLastIndex(({ id }) => isCopied.has(id)) + 1;
	return { label, rows: placeRows(show.rows, show.rows, copies, at) };
}

function copyOf(row: Row, id: RowId): Row {
	const { 'print id': _, ...typed } = row.typed;
	return { ...row, id, typed };
}
