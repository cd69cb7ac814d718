import { parseSize } from '../core/length/parseSize.ts';
import { isProblem } from '../core/length/reading.ts';
import type { ColumnMatching } from '../core/show/columnMatching.ts';
import { type ColumnName, isColumnName } from '../core/show/columns.ts';
import { type Header, isOwnName, isSizeName, mayCarry, readHeader, unitIn } from './headers.ts';
import { guessColumns, headerWords, inOurWords } from './headerWords.ts';

/** A column of a file, as it was understood. */
export interface MatchedColumn {
	readonly header: Header;
	/** The columns that it may mean where that is not sure, the likeliest first; none where it is. */
	readonly guesses: readonly ColumnName[];
}

/**
 * What the columns of a file mean. A column's own name stands before another word for it. Where two have the same
 * meaning the second is in doubt, but for a size beside its own width or height, which is kept as it is.
 * @param cells the headers
 * @param samples cells of each column
 * @param matching what a person has said of them
 */
export function matchColumns(
	cells: readonly string[],
	samples: readonly (readonly string[])[],
	matching: ColumnMatching = {},
): readonly MatchedColumn[] {
	const said = new Map(Object.entries(matching));
	const taken = new Set<string>();
	const read = cells.map((cell, at): Header => {
		const asked = said.get(cell.trim());
		if (asked === 'none') return { kind: 'unknown', name: cell };
		if (asked !== undefined && isColumnName(asked)) return withUnit(cell, asked);
		const header = readHeader(cell);
		return header.kind === 'unknown' ? (sizesUnder(cell, samples[at] ?? []) ?? header) : header;
	});
	const isOwn = (at: number) => said.has(cells[at]!.trim()) || isOwnName(cells[at]!, read[at]!.name);
	read.forEach((header, at) => {
		if (header.kind !== 'unknown' && isOwn(at)) taken.add(header.name);
	});
	return read.map((header, at): MatchedColumn => {
		const cell = cells[at]!;
		if (header.kind === 'unknown' || isOwn(at)) {
			const isAsked = header.kind === 'unknown' && !said.has(cell.trim());
			return { header, guesses: isAsked ? guessColumns(cell).filter((name) => !taken.has(name)) : [] };
		}
		if (!taken.has(header.name)) {
			taken.add(header.name);
			return { header, guesses: [] };
		}
		if (header.kind === 'typed' && isSizeName(cell)) return { header: { kind: 'unknown', name: cell }, guesses: [] };
		return { header, guesses: header.kind === 'typed' ? [header.name] : [] };
	});
}

function withUnit(cell: string, name: ColumnName): Header {
	const unit = unitIn(cell);
	return { kind: 'typed', name, unit: mayCarry(name, unit) ? unit : undefined };
}

/** `picture` or `window` alone, over cells that are sizes. */
function sizesUnder(cell: string, samples: readonly string[]): Header | undefined {
	const [word, ...more] = inOurWords(headerWords(cell.replace(/[([][^()[\]]*[)\]]\s*$/, '')));
	if (more.length > 0 || (word !== 'picture' && word !== 'window')) return undefined;
	const filled = samples.filter((text) => text.trim() !== '');
	const sizes = filled.filter((text) => !isProblem(parseSize(text, { unit: 'mm', sizes: [] })));
	return filled.length > 0 && sizes.length * 2 >= filled.length ? withUnit(cell, `${word} width`) : undefined;
}
