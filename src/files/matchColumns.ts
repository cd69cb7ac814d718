import { parseSize, splitSizeText } from '../core/length/parseSize.ts';
import { isProblem } from '../core/length/reading.ts';
import { type ColumnMatching, saidColumn, sizeColumns } from '../core/imports/columnMatching.ts';
import type { ColumnName } from '../core/show/columns.ts';
import { dimensionsIn } from './dimensions.ts';
import { guessesOf, type Header, headerSaidToBe, isOwnName, isSizeName, readHeader, wordsOfHeader } from './headers.ts';

/** A column of a file, as it was understood. */
export interface MatchedColumn {
	readonly header: Header;
	/** The columns that it may mean where that is not sure, the likeliest first; none where it is. */
	readonly guesses: readonly ColumnName[];
}

/**
 * What the columns of a file mean. A column's own name stands before another word for it. Where two have the same
 * meaning the second is in doubt, but for a size beside its own width or height, which is left as it is.
 * @param cells the headers
 * @param samples cells of each column
 * @param matching what a person has said of them, by their names as `distinctHeaders` gives them, in whatever case
 * @param guessByContents what a column may mean by what stands in it
 */
export function matchColumns(
	cells: readonly string[],
	samples: readonly (readonly string[])[],
	matching: ColumnMatching = {},
	guessByContents: (header: string, at: number, taken: ReadonlySet<string>) => readonly ColumnName[] = () => [],
): readonly MatchedColumn[] {
	const said = new Map(Object.entries(matching).map(([name, meaning]) => [name.toLowerCase(), meaning]));
	const names = distinctHeaders(cells);
	const saidOf = (at: number) => (said.size === 0 ? undefined : said.get(names[at]!.toLowerCase()));
	const taken = new Set<string>();
	const read = cells.map((cell, at): Header => {
		const asked = saidOf(at);
		if (asked === 'none') return { kind: 'unknown', name: cell };
		const column = asked === undefined ? undefined : saidColumn(asked);
		if (column) return headerSaidToBe(cell, column);
		const header = readHeader(cell);
		return header.kind === 'unknown' ? (sizesUnder(cell, samples[at] ?? []) ?? header) : header;
	});
	const isOwn = (at: number) => saidOf(at) !== undefined || isOwnName(cells[at]!, read[at]!.name);
	read.forEach((header, at) => {
		if (header.kind !== 'unknown' && isOwn(at)) taken.add(header.name);
	});
	const isSized = read.some(({ kind, name }) => kind === 'typed' && sizeColumns.some((column) => column === name));
	const mayBeSizes = (at: number) => !isSized && areSizes(samples[at] ?? []);
	return read.map((header, at): MatchedColumn => {
		const cell = cells[at]!;
		if (header.kind === 'units') return { header, guesses: [] };
		if (header.kind === 'unknown' || isOwn(at)) {
			if (header.kind !== 'unknown' || saidOf(at) !== undefined) return { header, guesses: [] };
			const guesses = guessesOf(cell).filter((name) => !taken.has(name));
			if (guesses.length > 0) return { header, guesses };
			const byContents = guessByContents(cell, at, taken);
			return { header, guesses: byContents.length === 0 && mayBeSizes(at) ? sizeColumns : byContents };
		}
		if (!taken.has(header.name)) {
			taken.add(header.name);
			return { header, guesses: [] };
		}
		if (header.kind === 'typed' && isSizeName(cell)) return { header: { kind: 'unknown', name: cell }, guesses: [] };
		return { header, guesses: header.kind === 'typed' ? [header.name] : [] };
	});
}

/** The headers, trimmed, with a number behind those that stand there before: `width`, `width (2)`. */
export function distinctHeaders(cells: readonly string[]): readonly string[] {
	const copies = new Map<string, number>();
	return cells.map((cell) => {
		const name = cell.trim();
		const key = name.toLowerCase();
		const copy = (copies.get(key) ?? 0) + 1;
		copies.set(key, copy);
		return copy === 1 ? name : `${name} (${copy})`;
	});
}

/** `picture` or `window` alone, over cells that are sizes. */
function sizesUnder(cell: string, samples: readonly string[]): Header | undefined {
	const [word, ...more] = wordsOfHeader(cell);
	if (more.length > 0 || (word !== 'picture' && word !== 'window')) return undefined;
	const isSize = (text: string) => !isProblem(parseSize(text, { unit: 'mm', sizes: [] }));
	return mostAre(samples, isSize)
		? headerSaidToBe(cell, { name: `${word} width`, isHeightFirst: undefined })
		: undefined;
}

/** Whether half and more of the cells that are not blank are such. */
function mostAre(samples: readonly string[], isSuch: (text: string) => boolean): boolean {
	const filled = samples.filter((text) => text.trim() !== '');
	return filled.length > 0 && filled.filter(isSuch).length * 2 >= filled.length;
}

/** Two numbers with something between: without them a text is no size, which is quicker to see than to read it. */
const twoNumbers = /[\d¼-¾⅐-⅞][^\d]+[\d¼-¾⅐-⅞]/;

const isSize = (text: string) =>
	(twoNumbers.test(text) && splitSizeText(text) !== undefined) || dimensionsIn(text).length > 0;

/** Whether cells hold sizes, width and height in one. */
export const areSizes = (cells: readonly string[]): boolean => mostAre(cells, isSize);
