import Papa from 'papaparse';
import { firstLines } from './firstLines.ts';
import { findHeaderRow } from './findHeaderRow.ts';
import { unguardCell } from './formulaGuard.ts';
import { readHeader } from './headers.ts';
import { scanRecords } from './scanRecords.ts';

/** What may stand between cells, the usual one first. */
export const delimiters = [',', ';', '\t', '|'] as const;

/** What may stand between cells. */
export type Delimiter = (typeof delimiters)[number];

/**
 * Finds what stands between the cells: that with which most headers are known, then most cells found. A file of one
 * column has none between its headers; then it is one that the file has nowhere, so that `45,6` stays one cell.
 * A first line `sep=;`, which some spreadsheets write, says it outright.
 */
export function findDelimiter(text: string): { readonly delimiter: Delimiter; readonly skippedLines: number } {
	const stated = /^sep=([,;\t|])(?:\r\n|\r|\n)/i.exec(text)?.[1];
	if (stated !== undefined) return { delimiter: stated as Delimiter, skippedLines: 1 };
	const [best] = delimiters
		.map((delimiter) => {
			const headers = headersOf(text, delimiter);
			const known = headers.filter((header) => readHeader(header).kind !== 'unknown').length;
			return { delimiter, known, cells: headers.length, isAbsent: !text.includes(delimiter) };
		})
		.sort((a, b) => b.known - a.known || b.cells - a.cells || Number(b.isAbsent) - Number(a.isAbsent));
	return { delimiter: best!.delimiter, skippedLines: 0 };
}

/** The cells of the line that names the columns. */
function headersOf(text: string, delimiter: Delimiter): readonly string[] {
	const { text: records } = scanRecords(firstLines(text, enough), delimiter);
	const { data } = Papa.parse<string[]>(records, { delimiter, newline: '\n' });
	const filled = data
		.filter((cells) => cells.some((cell) => cell.trim() !== ''))
		.map((cells) => cells.map(unguardCell));
	return filled[findHeaderRow(filled)] ?? [];
}

/** How many characters of a text are enough for its headers. */
const enough = 100_000;
