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
	const first = rows.slice(0, mostTitleLines);
	const sure = first.map((cells) => countOf(cells, isSure));
	const surest = sure.findIndex((count) => count >= 2);
	if (surest >= 0 || (sure[0] ?? 0) > 0) return Math.max(surest, 0);
	return Math.max(
		first.findIndex((cells) => countOf(cells, (cell) => isSure(cell) || isLikely(cell)) >= 2),
		0,
	);
}

const countOf = (cells: readonly string[], isSuch: (cell: string) => boolean): number =>
	cells.filter((cell) => cell.trim() !== '' && isSuch(cell)).length;

const isSure = (cell: string): boolean => readHeader(cell).kind !== 'unknown';

const isLikely = (cell: string): boolean => guessColumns(headerName(cell)).length > 0;
