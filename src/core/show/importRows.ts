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
	// Of rows with the same print id the first is meant; the last to be set stays.
	const byPrintId = new Map(show.rows.toReversed().map((row) => [printId(row), row]));
	const byId = new Map(show.rows.map((row) => [row.id, row]));
	const replaced = new Map<RowId, RowDiff>();
	const added: Row[] = [];
	for (const row of distinctRows(rows, makeId)) {
		const before = [byPrintId.get(printId(row)), byId.get(row.id)].find((found) => found && !replaced.has(found.id));
		if (before) replaced.set(before.id, { before, after: inPlaceOf(before, row) });
		else added.push(byId.has(row.id) ? { ...row, id: makeId() } : row);
	}
	const changed = [...replaced.values()].filter(({ before, after }) => !isSameValue(before, after));
	const replacing = { label, rows: changed };
	const rest = apply(show, replacing).rows;
	return compose(replacing, { label, rows: placeRows(rest, rest, added, rest.length) });
}

/** A row of the file where the row of the same print stands. A name that only the file gave as a print id is not typed. */
function inPlaceOf(before: Row, row: Row): Row {
	const { 'print id': named, ...others } = row.typed;
	const isGiven = before.typed['print id'] === undefined && named === before.id;
	return { ...row, id: before.id, order: before.order, typed: isGiven ? others : row.typed };
}
