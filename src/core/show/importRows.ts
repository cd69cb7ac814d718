import { distinctRows } from './distinctRows.ts';
import { apply, compose, type Edit, type RowDiff } from './edit.ts';
import { isSameValue } from './isSameValue.ts';
import { placeRows } from './placeRows.ts';
import type { Row, RowId } from './row.ts';
import type { Show } from './show.ts';

/** How a file names the print of a row: the print id that was typed, else the row's own name. */
const printId = ({ id, typed }: Row): string => typed['print id'] ?? id;

/**
 * Takes in rows from a file. A row that names a print of the show takes its place, keeping where it stands; all others
 * are added at the end, in the order of the file.
 * @param makeId names a row whose name is taken
 */
export function importRows(show: Show, rows: readonly Row[], makeId: () => RowId, label: string): Edit {
	const free = new Map(show.rows.toReversed().map((row) => [printId(row), row]));
	const taken = new Set(show.rows.map(({ id }) => id));
	const replaced: RowDiff[] = [];
	const added: Row[] = [];
	for (const row of distinctRows(rows, makeId)) {
		const before = free.get(printId(row));
		free.delete(printId(row));
		if (!before) {
			added.push(taken.has(row.id) ? { ...row, id: makeId() } : row);
			continue;
		}
		const after = { ...row, id: before.id, order: before.order };
		if (!isSameValue(before, after)) replaced.push({ before, after });
	}
	const replacing = { label, rows: replaced };
	const rest = apply(show, replacing).rows;
	return compose(replacing, { label, rows: placeRows(rest, rest, added, rest.length) });
}
