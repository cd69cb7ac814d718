import type { Row } from './row.ts';

/** Sorts rows into the order of the show; rows that two tabs have put into one place stand by their id. */
export const byOrder = (a: Row, b: Row): number => a.order - b.order || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/**
 * Order numbers for rows that stand in a given sequence. Numbers that are there are kept and the missing ones share
 * out the gap they stand in, so that putting a row anywhere touches that row alone. Where a gap has become too small
 * to hold them, or the numbers given do not ascend, all are numbered afresh from 1.
 * @param sequence the number of each row, in the sequence wanted; undefined for a row that needs one
 * @returns as many numbers, ascending, no two alike
 */
export function orderNumbers(sequence: readonly (number | undefined)[]): readonly number[] {
	const numbers: number[] = [];
	for (let start = 0; start < sequence.length;) {
		const known = sequence[start];
		if (known !== undefined) {
			numbers.push(known);
			start++;
			continue;
		}
		let end = start;
		while (end < sequence.length && sequence[end] === undefined) end++;
		numbers.push(...shareOut(numbers[start - 1], sequence[end], end - start));
		start = end;
	}
	const ascends = numbers.every((number, index) => index === 0 || number > numbers[index - 1]!);
	return ascends ? numbers : sequence.map((_, index) => index + 1);
}

/** `count` numbers between two, evenly; one apart where there is no number on one side. */
function shareOut(low: number | undefined, high: number | undefined, count: number): number[] {
	const step = low !== undefined && high !== undefined ? (high - low) / (count + 1) : 1;
	const first = low !== undefined ? low + step : high !== undefined ? high - count : 1;
	return Array.from({ length: count }, (_, index) => first + index * step);
}
