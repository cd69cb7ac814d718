import fc from 'fast-check';
import { expect, test } from 'vitest';
import { orderNumbers } from '../../../../src/core/show/orderNumbers.ts';

test.each([
	{ sequence: [], numbers: [] },
	{ sequence: [undefined, undefined], numbers: [1, 2] },
	{ sequence: [1, undefined, 2], numbers: [1, 1.5, 2] },
	{ sequence: [1, undefined, undefined, undefined, 2], numbers: [1, 1.25, 1.5, 1.75, 2] },
	{ sequence: [undefined, undefined, 1], numbers: [-1, 0, 1] },
	{ sequence: [3, undefined, undefined], numbers: [3, 4, 5] },
	{ sequence: [1, undefined, 1 + Number.EPSILON], numbers: [1, 2, 3] }, // no number lies between
	{ sequence: [2, 1], numbers: [1, 2] },
	{ sequence: [1, 1, 5], numbers: [1, 2, 3] }, // two tabs have put a row into one place
	{ sequence: [Number.MAX_VALUE, undefined], numbers: [1, 2] },
	{ sequence: [Number.NaN, 4], numbers: [1, 2] },
])('$sequence are numbered $numbers', ({ sequence, numbers }) => {
	expect(orderNumbers(sequence)).toEqual(numbers);
});

test('numbers ascend, and those that did already are kept unless a gap is too small', () =>
	fc.assert(
		fc.property(fc.array(fc.option(fc.integer({ min: -50, max: 50 }), { nil: undefined })), (sequence) => {
			const numbers = orderNumbers(sequence);
			expect(numbers).toHaveLength(sequence.length);
			for (const [place, number] of numbers.entries())
				if (place > 0) expect(number).toBeGreaterThan(numbers[place - 1]!);
			const given = sequence.filter((number) => number !== undefined);
			const ascends = given.every((number, place) => place === 0 || number > given[place - 1]!);
			if (ascends)
				for (const [place, number] of sequence.entries()) if (number !== undefined) expect(numbers[place]).toBe(number);
		}),
	));

test('a thousand rows put into one place, one after the other, still ascend', () => {
	let numbers: readonly number[] = [1, 2];
	for (let count = 0; count < 1000; count++) numbers = orderNumbers([numbers[0], undefined, ...numbers.slice(1)]);
	expect(new Set(numbers).size).toBe(1002);
	expect(numbers.toSorted((a, b) => a - b)).toEqual(numbers);
});
