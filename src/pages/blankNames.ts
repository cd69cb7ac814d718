import type { RowResult } from '../core/row/rowResult.ts';
import type { PlacedBlank } from '../core/sheets/layout.ts';
import type { Row } from '../core/show/row.ts';
import { nameOfPrint } from '../ui/findings/nameOfPrint.ts';

/** Names blanks by the prints that they are for, and by which copy where a print has several. */
export function blankNames(rows: readonly Row[], results: readonly RowResult[]): (blank: PlacedBlank) => string {
	const places = new Map(rows.map(({ id }, index) => [id, index]));
	return ({ rowId, copy }) => {
		if (rowId === undefined) return 'spare';
		const index = places.get(rowId);
		if (index === undefined) return 'left over';
		const isOneOfSeveral = (results[index]?.copies ?? 1) > 1;
		return nameOfPrint(rows[index]!, index) + (isOneOfSeveral ? ` (${copy})` : '');
	};
}
