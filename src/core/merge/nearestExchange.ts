import { type ColumnName, columns } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import { isSameCell, type Meaning, type MergeColumn, spreadsheetChangeOf } from './cells.ts';
import type { Exchange } from './exchange.ts';

/** A row that one side lacks counts as much as this many cells. */
const missingRow = 3;

/**
 * The exchange that a file comes from: the one from which it differs least, of several the newest. Files may cross: one
 * that comes in may have been made before the other side saw the one that went out last, and compared with that one, all
 * that was changed here would look as if it had been changed back there.
 *
 * @param exchanges newest first
 * @param rows the rows of the file, by the names that they have in the show
 */
export function nearestExchange(
	exchanges: readonly Exchange[],
	rows: readonly Row[],
	inFile: readonly ColumnName[],
	meaning: Meaning,
): Exchange | undefined {
	let nearest: { readonly exchange: Exchange; readonly distance: number } | undefined;
	for (const exchange of exchanges) {
		const distance = distanceTo(exchange, rows, inFile, meaning, nearest?.distance ?? Infinity);
		if (distance < (nearest?.distance ?? Infinity)) nearest = { exchange, distance };
	}
	return nearest?.exchange;
}

/** How many cells differ; it may stop counting at `most`. */
function distanceTo(
	exchange: Exchange,
	rows: readonly Row[],
	inFile: readonly ColumnName[],
	meaning: Meaning,
	most: number,
): number {
	const before = new Map(exchange.rows.map((row) => [row.id, row]));
	const isSaid = new Set<string>(exchange.columns ?? columns.map(({ name }) => name));
	const shared = inFile.filter((name) => isSaid.has(name)).map((name): MergeColumn => ({ name, isExtra: false }));
	const unsaid = inFile.filter((name) => !isSaid.has(name));
	const meaningThen = { ...meaning, unit: exchange.unit };
	let [distance, found] = [0, 0];
	for (const row of rows) {
		if (distance >= most) return distance;
		const old = before.get(row.id);
		if (!old) distance += missingRow;
		else {
			found++;
			// What a spreadsheet has made of a cell is as near as the cell.
			distance += shared.filter(
				(column) =>
					!isSameCell(row, old, column, meaning, meaningThen) && spreadsheetChangeOf(old, row, column) === undefined,
			).length;
			// A list of prices is near in prices alone: what it does not say is no likeness.
			distance += unsaid.filter((name) => row.typed[name] !== undefined).length;
		}
	}
	return distance + missingRow * (before.size - found);
}
