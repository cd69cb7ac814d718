import type { RowResult } from '../findings/rowResult.ts';
import type { Row, RowId } from '../show/row.ts';

/** A row for which nothing is got: it has a `stop`, or no size yet. */
export interface LeftOutOfOrder {
	/** Place of the row in the show, from 1. */
	readonly row: number;
	readonly rowId: RowId;
	readonly reason: 'stop' | 'no-size';
}

/** The rows for which things are got and printed. */
export interface CountedRows {
	/** By their place in the show, from 0. */
	readonly counted: ReadonlyMap<number, RowResult>;
	readonly leftOut: readonly LeftOutOfOrder[];
}

/** Parts the rows that count from those that are left out. Rows without copies are neither. */
export function countedRows(rows: readonly Row[], results: readonly RowResult[]): CountedRows {
	const counted = new Map<number, RowResult>();
	const leftOut: LeftOutOfOrder[] = [];
	rows.forEach(({ id: rowId }, place) => {
		const result = results[place];
		if (!result || result.copies === 0) return;
		if (!result.isStopped && result.frame.inside) counted.set(place, result);
		else leftOut.push({ row: place + 1, rowId, reason: result.isStopped ? 'stop' : 'no-size' });
	});
	return { counted, leftOut };
}
