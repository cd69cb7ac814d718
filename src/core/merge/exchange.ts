import type { Unit } from '../length/reading.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Row } from '../show/row.ts';

/** The rows that a file held which came in or went out: what both sides had then, so that edits since can be told apart. */
export interface Exchange {
	readonly id: string;
	// Stored under these words since the first version: given is exported, taken is imported.
	readonly direction: 'given' | 'taken';
	readonly fileName: string;
	/** When, in milliseconds since 1970. */
	readonly at: number;
	/** The unit of bare numbers then. */
	readonly unit: Unit;
	/** The columns that the file had; it says nothing of others. Undefined: all. */
	readonly columns?: readonly ColumnName[];
	/** The rows as typed, by the names that they have in the show. */
	readonly rows: readonly Row[];
}

/** How many exchanges of a show are kept. */
export const mostExchanges = 6;
/** How many rows of them are kept, all together; the newest exchange is kept whatever it holds. */
export const mostExchangedRows = 60_000;

/** The exchanges to keep, newest first: files may cross, so the last one alone would not do. @param exchanges when, and of how many rows */
export function worthKeeping<Kept extends { readonly at: number; readonly rows: number }>(
	exchanges: readonly Kept[],
): readonly Kept[] {
	const newestFirst = exchanges.toSorted((a, b) => b.at - a.at).slice(0, mostExchanges);
	let rows = 0;
	return newestFirst.filter((exchange, index) => {
		rows += exchange.rows;
		return index === 0 || rows <= mostExchangedRows;
	});
}
