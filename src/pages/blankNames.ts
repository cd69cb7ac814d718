import type { RowResult } from '../core/row/rowResult.ts';
import type { PlacedBlank } from '../core/sheets/layout.ts';
import { partsOf } from '../core/sheets/partsOf.ts';
import type { Row } from '../core/show/row.ts';
import type { Settings } from '../core/show/settings.ts';
import { nameOfPrint } from '../ui/findings/nameOfPrint.ts';

/**
 * Names blanks by the prints that they are for, and by which copy where a print has several. A blank that its print wants
 * no more, or in another size, is left over.
 */
export function blankNames(
	rows: readonly Row[],
	results: readonly RowResult[],
	settings: Settings,
): (blank: PlacedBlank) => string {
	const places = new Map(rows.map(({ id }, index) => [id, index]));
	return (blank) => {
		const { rowId, copy } = blank;
		if (rowId === undefined) return 'spare';
		const index = places.get(rowId);
		if (index === undefined) return 'left over';
		const [row, result] = [rows[index]!, results[index]];
		const isOneOfSeveral = (result?.copies ?? 1) > 1;
		const name = nameOfPrint(row, index) + (isOneOfSeveral ? ` (${copy})` : '');
		return result && isWanted(blank, row, result, settings) ? name : `${name}, left over`;
	};
}

/** Whether a row still wants a blank of this size, either way round. */
function isWanted(
	{ part, copy, width, height }: PlacedBlank,
	row: Row,
	result: RowResult,
	settings: Settings,
): boolean {
	const { mountWidth, mountHeight } = result.solved;
	// What is not known now may come out as it was: only another size is one that the blank is not for.
	if (mountWidth === undefined || mountHeight === undefined) return true;
	if (copy > result.copies) return false;
	return partsOf(row, result, settings).some(
		(wanted) =>
			wanted.part === part &&
			((wanted.width === width && wanted.height === height) || (wanted.width === height && wanted.height === width)),
	);
}
