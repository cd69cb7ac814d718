import { parseExact } from '../core/length/formatLength.ts';
import { isSame } from '../core/length/length.ts';
import type { Unit } from '../core/length/reading.ts';
import type { RowResult } from '../core/findings/rowResult.ts';
import { resultLengths } from './headers.ts';
import type { ResultCell } from './readRows.ts';
import { resultLength } from './resultTexts.ts';

/**
 * Counts the rows whose worked-out lengths in a file are not what they are here: the file was made with other settings,
 * or changed since. A blank result is compared only where the row has some.
 *
 * @param fromFile the results that came with each row
 * @param results what each row works out to here, in the same order
 * @param unit the show's unit, for a column whose header names none
 */
export function compareResults(
	fromFile: readonly (readonly ResultCell[])[],
	results: readonly RowResult[],
	unit: Unit,
): number {
	return fromFile.filter((cells, index) => {
		const result = results[index];
		if (result === undefined || cells.every(({ text }) => text.trim() === '')) return false;
		return cells.some((cell) => {
			const key = resultLengths.find(({ name }) => name === cell.name)?.key;
			return key !== undefined && !agrees(cell, resultLength(result, key), unit);
		});
	}).length;
}

function agrees({ text, unit }: ResultCell, here: number | undefined, byDefault: Unit): boolean {
	if (text.trim() === '') return here === undefined;
	const headerUnit = unit === 'mm' || unit === 'cm' || unit === 'in' ? unit : byDefault;
	const there = parseExact(text.trim().replace(',', '.'), headerUnit);
	return there !== undefined && here !== undefined && isSame(there, here);
}
