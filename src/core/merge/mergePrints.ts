import { printsOf } from '../show/blankRow.ts';
import type { Row, RowId } from '../show/row.ts';
import type { Meaning } from './cells.ts';
import type { Exchange } from './exchange.ts';
import { type Merge, mergeRows, type RowsThere } from './mergeRows.ts';

/**
 * Compares the prints of a file with those of the show. A blank row is no print on either side: one that the file lacks
 * has not been removed there, and one that it has is not added here.
 */
export const mergePrints = (
	here: readonly Row[],
	there: RowsThere,
	exchanges: readonly Exchange[],
	meaning: Meaning,
	makeId: () => RowId,
): Merge =>
	mergeRows(
		here,
		{ ...there, rows: printsOf(there.rows) },
		exchanges.map((exchange) => ({ ...exchange, rows: printsOf(exchange.rows) })),
		meaning,
		makeId,
	);
