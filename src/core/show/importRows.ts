import type { ColumnName } from './columns.ts';
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
 * @param columns the columns that the file has: a row of the show keeps what was typed into its others
 * @param makeId names a row whose name is taken
 */
export function importRows(
	show: Show,
	rows: readonly Row[],
	columns: readonly ColumnName[],
	makeId: () => RowId,
	label: string,
): Edit {
	const isInFile = new Set<string>(columns);
	// Of rows with the same print id the first is meant; the last to be set stays.
	const byPrintId = new Map(show.rows.toReversed().map((row) => [printId(row), row]));
	const byId = new Map(show.rows.map((row) => [row.id, row]));
	const replaced = new Map<RowId, RowDiff>();
	const added: Row[] = [];
	for (const row of distinctRows(rows, makeId)) {
		const before = [byPrintId.get(printId(row)), byId.get(row.id)].find((found) => found && !replaced.has(found.id));
		if (before) replaced.set(before.id, { before, after: inPlaceOf(before, row, isInFile) });
		else added.push(byId.has(row.id) ? { ...row, id: makeId() } : row);
	}
	const changed = [...replaced.values()].filter(({ before, after }) => !isSameValue(before, after));
	const replacing = { label, rows: changed };
	const rest = apply(show, replacing).rows;
	return compose(replacing, { label, rows: placeRows(rest, rest, added, rest.length) });
}

/** A row of the file where the row of the same print stands. A name that only the file gave as a print id is not typed. */
function inPlaceOf(before: Row, row: Row, isInFile: ReadonlySet<string>): Row {
	const isGiven = before.typed['print id'] === undefined && row.typed['print id'] === before.id;
	const { 'print id': named, ...others } = row.typed;
	const kept = <Value>(record: Readonly<Record<string, Value>> = {}) =>
		Object.fromEntries(Object.entries(record).filter(([column]) => !isInFile.has(column)));
	const units = { ...kept(before.units), ...row.units };
	const extra = { ...before.extra, ...row.extra };
	return {
		id: before.id,
		order: before.order,
		typed: { ...kept(before.typed), ...(named !== undefined && !isGiven && { 'print id': named }), ...others },
		...(Object.keys(units).length > 0 && { units }),
		...(Object.keys(extra).length > 0 && { extra }),
	};
}
