import type { ViewColumn } from './columnView.ts';

/** What rows are sorted by: `up` from the least, `down` from the greatest. */
export interface Sort {
	readonly column: ViewColumn;
	readonly way: 'up' | 'down';
}

/** What a row is sorted by: a number (a size in units of 0.1 nm), a text, or nothing. */
export type SortKey = number | string | undefined;

/** How many places are sorted between two yields. */
const atATime = 256;

/**
 * The places of rows when they are sorted, worked out with a halt after every few of them. Numbers stand before texts, and rows with nothing last, whichever the way;
 * texts that begin with a number before others, by that number; rows that are alike keep their sequence.
 * @param compareTexts as the reader's language has it, figures in texts by their number
 */
export function* sortingPlaces(
	keys: readonly SortKey[],
	way: Sort['way'],
	compareTexts: (a: string, b: string) => number,
): Generator<void, readonly number[]> {
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
	let parts: (readonly number[])[] = [];
	for (let from = 0; from < keys.length; from += atATime) {
		parts.push(
			keys
				.slice(from, from + atATime)
				.map((_, at) => from + at)
				.sort(compare),
		);
		yield;
	}
	while (parts.length > 1) {
		const joined: (readonly number[])[] = [];
		for (let at = 0; at < parts.length; at += 2) joined.push(yield* join(parts[at]!, parts[at + 1] ?? [], compare));
		parts = joined;
	}
	return parts[0] ?? [];
}

/** Joins two sorted lists; of what is alike the former's comes first. */
function* join(
	former: readonly number[],
	latter: readonly number[],
	compare: (one: number, other: number) => number,
): Generator<void, readonly number[]> {
	const joined: number[] = [];
	for (let [a, b] = [0, 0]; a < former.length || b < latter.length;) {
		const isFormer = b === latter.length || (a < former.length && compare(former[a]!, latter[b]!) <= 0);
		joined.push(isFormer ? former[a++]! : latter[b++]!);
		if (joined.length % atATime === 0) yield;
	}
	return joined;
}

const compareNumbers = (a: number, b: number): number => (a === b ? 0 : a < b ? -1 : 1);

/** The number that a text begins with: 9 of "9a", 9.5 of "9,5"; beyond all numbers where it begins with none. */
function leading(text: string): number {
	const number = /^-?\d{1,15}(?:[.,]\d{1,9})?/.exec(text)?.[0];
	return number === undefined ? Infinity : Number(number.replace(',', '.'));
}
