import { formatExact, parseExact } from '../core/length/formatLength.ts';
import { isSame } from '../core/length/length.ts';
import type { Unit } from '../core/length/reading.ts';
import { madeBySpreadsheet } from '../core/imports/madeBySpreadsheet.ts';
import type { RowResult } from '../core/findings/rowResult.ts';
import { resultLengths } from './headers.ts';
import type { ResultCell } from './readRows.ts';
import { resultLength } from './resultTexts.ts';

/** A result as it may be: the row as it stands here, as the file has it, as it was when it went out. */
export interface PossibleResult {
	readonly result: RowResult;
	/** The unit of the show that it was worked out in. */
	readonly unit: Unit;
}

/** What the results that came with a row say. */
export interface ComparedResults {
	/** Whether some of them are not what is worked out here. */
	readonly isOther: boolean;
	/** Those that nothing works out so: somebody has typed over them. */
	readonly edited: readonly EditedResult[];
}

/** A result that somebody has typed over; it is never imported. */
export interface EditedResult {
	/** `window width`. */
	readonly name: string;
	/** What stands in the file. */
	readonly text: string;
}

/**
 * Compares the worked-out lengths that came with a row of a file with what is worked out: other ones come of other
 * settings, or of edits since; those that come of none of them were typed. A blank result is compared only where the row
 * has some.
 *
 * @param fromFile the results that came with the row
 * @param here the row as it is worked out here
 * @param others the row as it may have been worked out where the file was made
 */
export function compareResults(
	fromFile: readonly ResultCell[],
	here: PossibleResult,
	others: () => readonly PossibleResult[],
): ComparedResults {
	if (fromFile.every(({ text }) => text.trim() === '')) return { isOther: false, edited: [] };
	const differing = fromFile.filter((cell) => !isResultOf(cell, here));
	if (differing.length === 0) return { isOther: false, edited: [] };
	const possible = others();
	const edited = differing.filter((cell) => possible.every((each) => !isResultOf(cell, each)));
	return {
		isOther: edited.length < differing.length,
		edited: edited.map(({ name, text }) => ({ name: name.replace(/^result /, ''), text: text.trim() })),
	};
}

/** Whether a cell is what is worked out, or what a spreadsheet makes of it; one that is no length is not looked at. */
function isResultOf({ name, text, unit }: ResultCell, { result, unit: byDefault }: PossibleResult): boolean {
	const key = resultLengths.find((column) => column.name === name)?.key;
	if (key === undefined) return true;
	const value = resultLength(result, key);
	if (text.trim() === '') return value === undefined;
	if (value === undefined) return false;
	const headerUnit = unit === 'mm' || unit === 'cm' || unit === 'in' ? unit : byDefault;
	const there = parseExact(text.trim().replace(',', '.'), headerUnit);
	if (there !== undefined && isSame(there, value)) return true;
	return madeBySpreadsheet(formatExact(value, headerUnit), text) !== undefined;
}
