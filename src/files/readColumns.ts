import { type ColumnMatching, saidColumn } from '../core/imports/columnMatching.ts';
import type { GuessByContents } from '../core/imports/guessByContents.ts';
import type { GuessHeightFirst } from '../core/imports/guessHeightFirst.ts';
import type { ColumnName } from '../core/show/columns.ts';
import { saysHeightFirst } from './headers.ts';
import { areSizes } from './matchColumns.ts';
import { readTable } from './readTable.ts';

/** A column of a file, as it was understood. */
export interface ColumnOfFile {
	/** Its header, as it stands. */
	readonly text: string;
	/** The column of ours that it is; `none` where it is left as it is, undefined for a result, which is only compared. */
	readonly meaning: ColumnName | 'none' | undefined;
	/** What it may mean where that is not sure, the likeliest first. */
	readonly guesses: readonly ColumnName[];
	/** What stands in its first cells. */
	readonly samples: readonly string[];
	/** Whether sizes stand in it, width and height in one cell. */
	readonly areSizes: boolean;
	/** Whether they give the height first, as far as that can be seen. */
	readonly isHeightFirst: boolean;
}

/** The columns of a file. */
export interface ColumnsOfFile {
	readonly columns: readonly ColumnOfFile[];
	/** Whether a person has to say what some of them mean. */
	readonly isInDoubt: boolean;
	/** Names this set of headers, so that what was said of it is remembered. */
	readonly key: string;
}

const mostSamples = 3;

/**
 * Looks at the columns of a file without reading all of it.
 * @param beginning its first lines; see `beginningOf`
 * @param matching what a person has said of them
 * @param guessByContents what a column may mean by what stands in it, beside the prints that are here
 * @param isHeightFirst whether sizes look as if they gave the height first, beside the prints that are here
 * @returns undefined where nothing is to be asked because the file cannot be read anyway: it is empty, no list, or has
 * no column that means anything
 */
export function readColumns(
	beginning: string,
	matching?: ColumnMatching,
	guessByContents?: GuessByContents,
	isHeightFirst: GuessHeightFirst = () => false,
): ColumnsOfFile | undefined {
	const table = readTable(beginning, { matching, guessByContents, isAsking: true, isBeginning: true });
	if ('problem' in table) return undefined;
	const said = new Map(
		Object.entries(matching ?? {}).map(([name, meaning]) => [name.toLowerCase(), saidColumn(meaning)]),
	);
	const looked = table.columns.map(({ header, guesses, text: headerText, at }) => {
		const samples = table.records.map((cells) => cells[at] ?? '').filter((cell) => cell.trim() !== '');
		const hasSizes = header.kind !== 'result' && areSizes(samples);
		const order = said.get(headerText.toLowerCase())?.isHeightFirst;
		const byHeader = saysHeightFirst(headerText);
		const isGuessed = order === undefined && !byHeader && hasSizes && isHeightFirst(samples);
		const column: ColumnOfFile = {
			text: headerText,
			meaning: header.kind === 'typed' ? header.name : header.kind === 'unknown' ? 'none' : undefined,
			guesses,
			samples: samples.slice(0, mostSamples),
			areSizes: hasSizes,
			isHeightFirst: order ?? (byHeader || isGuessed),
		};
		return { column, isInDoubt: isGuessed || guesses.length > 0 };
	});
	const columns = looked.map(({ column }) => column);
	const headers = columns.map((column) => column.text);
	return {
		columns,
		isInDoubt: looked.some(({ isInDoubt }) => isInDoubt),
		key: JSON.stringify(headers.map((header) => header.toLowerCase()).sort()),
	};
}
