import type { ViewColumn } from './columnView.ts';

/** What rows are sorted by: `up` from the least, `down` from the greatest. */
export interface Sort {
	readonly column: ViewColumn;
	readonly way: 'up' | 'down';
}

/** What a row is sorted by: a number (a size in units of 0.1 nm), a text, or nothing. */
export type SortKey = number | string | undefined;

/**
 * The places of rows when they are sorted. Numbers stand before texts, and rows with nothing last, whichever the way;
 * texts that begin with a number before others, by that number; rows that are alike keep their sequence.
 * @param compareTexts as the reader's language has it, figures in texts by their number
 */
export function sortedPlaces(
	keys: readonly SortKey[],
	way: Sort['way'],
	compareTexts: (a: string, b: string) => number,
): readonly number[] {
	const turn = way === 'up' ? 1 : -1;
	// Read once of each text: asked at every comparison, it took as long as the sorting.
	const first = keys.map((key) => (typeof key === 'string' ? leading(key) : 0));
	const compare = (one: number, other: number): number => {
		const [a, b] = [keys[one], keys[other]];
		if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
		if (typeof a === 'number' && typeof b === 'number') return turn * (a - b);
		if (typeof a === 'string' && typeof b === 'string')
			return turn * (compareNumbers(first[one]!, first[other]!) || compareTexts(a, b));
		return turn * (typeof a === 'number' ? -1 : 1);
	};
	return keys.map((_, place) => place).sort(compare);
}

const compareNumbers = (a: number, b: number): number => (a === b ? 0 : a < b ? -1 : 1);

/** The number that a text begins with: 9 of "9a", 9.5 of "9,5"; beyond all numbers where it begins with none. */
function leading(text: string): number {
	const number = /^-?\d{1,15}(?:[.,]\d{1,9})?/.exec(text)?.[0];
	return number === undefined ? Infinity : Number(number.replace(',', '.'));
}
