import type { RowResult } from '../core/findings/rowResult.ts';
import type { NameOfBlank } from '../core/sheets/layout.ts';
import { isBlankWanted } from '../core/sheets/wantedBlanks.ts';
import type { Row } from '../core/show/row.ts';
import type { Settings } from '../core/settings/settings.ts';
import { nameOfPrint } from '../core/show/nameOfPrint.ts';

/**
 * Names blanks by the prints that they are for, and by which copy where a print has several. A blank that its print wants
 * no more, or in another size or board, is left over.
 */
export function blankNames(rows: readonly Row[], results: readonly RowResult[], settings: Settings): NameOfBlank {
	const places = new Map(rows.map(({ id }, index) => [id, index]));
	return (blank, { stock }) => {
		const { rowId, copy } = blank;
		if (rowId === undefined) return 'spare';
		const index = places.get(rowId);
		if (index === undefined) return 'left over';
		const [row, result] = [rows[index]!, results[index]];
		const isOneOfSeveral = (result?.copies ?? 1) > 1;
		const name = nameOfPrint(row, index) + (isOneOfSeveral ? ` (${copy})` : '');
		return result && isBlankWanted(blank, stock, result, settings) ? name : `${name}, left over`;
	};
}
