import { guessesOf, readHeader } from './headers.ts';

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
	const surest = first.findIndex((cells) => hasAtLeast(2, cells, isSure));
	if (surest >= 0 || hasAtLeast(1, first[0] ?? [], isSure)) return Math.max(surest, 0);
	return Math.max(
		first.findIndex((cells) => hasAtLeast(2, cells, (cell) => isSure(cell) || isLikely(cell))),
		0,
	);
}

/** Whether so many cells are such; no more of them are looked at than it takes. */
function hasAtLeast(wanted: number, cells: readonly string[], isSuch: (cell: string) => boolean): boolean {
	let found = 0;
	return cells.some((cell) => cell.trim() !== '' && isSuch(cell) && ++found >= wanted);
}

const isSure = (cell: string): boolean => readHeader(cell).kind !== 'unknown';

const isLikely = (cell: string): boolean => guessesOf(cell).length > 0;
