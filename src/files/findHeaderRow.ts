import { headerName, readHeader } from './headers.ts';
import { guessColumns } from './headerWords.ts';

/** How many lines may stand above the column names: the name of the show, a date, who made the list. */
const mostTitleLines = 30;

/**
 * The row that names the columns: the first with two or more that are known; else the first row, if it names one; else the
 * first with two or more that are known or likely; else the first.
 * @param rows the rows that are not blank
 * @returns its place, from 0
 */
export function findHeaderRow(rows: readonly (readonly string[])[]): number {
	const known = rows.slice(0, mostTitleLines).map(knownIn);
	const sure = known.findIndex((each) => each.sure >= 2);
	if (sure >= 0 || (known[0]?.sure ?? 0) > 0) return Math.max(sure, 0);
	return Math.max(
		known.findIndex((each) => each.sure + each.likely >= 2),
		0,
	);
}

function knownIn(cells: readonly string[]): { readonly sure: number; readonly likely: number } {
	const filled = cells.filter((cell) => cell.trim() !== '');
	const unknown = filled.filter((cell) => readHeader(cell).kind === 'unknown');
	return {
		sure: filled.length - unknown.length,
		likely: unknown.filter((cell) => guessColumns(headerName(cell)).length > 0).length,
	};
}
