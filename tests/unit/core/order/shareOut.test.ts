import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { shareOut } from '../../../../src/core/order/shareOut.ts';

test.each([
	{ costs: [{ cost: 100, taken: [1n, 1n, 1n] }], shares: [34, 33, 33] }, // a tie goes to the first
	{ costs: [{ cost: 100, taken: [1n, 2n, 3n] }], shares: [17, 33, 50] },
	{ costs: [{ cost: 100, taken: [0n, 1n] }], shares: [0, 100] },
	{ costs: [{ cost: 0, taken: [1n, 1n] }], shares: [0, 0] },
	{ costs: [], shares: [0, 0] },
	// Rounded line by line it would be 2 and 0.
	{
		costs: [
			{ cost: 1, taken: [1n, 1n] },
			{ cost: 1, taken: [1n, 1n] },
		],
		shares: [1, 1],
	},
	{ costs: [{ cost: 5, taken: [0n, 0n] }], shares: [3, 2] }, // nobody's: shared alike
])('$costs: $shares', ({ costs, shares }) => expect(shareOut(costs, shares.length)).toEqual(shares));

test('nobody shares nothing', () => expect(shareOut([{ cost: 5, taken: [] }], 0)).toEqual([]));

const areas = fc.bigInt({ min: 0n, max: 10n ** 22n });
const lines = fc.integer({ min: 1, max: 6 }).chain((count) =>
	fc.record({
		count: fc.constant(count),
		costs: fc.array(
			fc.record({
				cost: fc.nat(1_000_000),
				taken: fc.array(fc.oneof(areas, fc.bigInt({ min: 0n, max: 5n })), { minLength: count, maxLength: count }),
			}),
			{ maxLength: 12 },
		),
	}),
);

test('shares add up to the total, each less than a minor unit from its exact part', () =>
	fc.assert(
		fc.property(lines, ({ count, costs }) => {
			const shares = shareOut(costs, count);
			const total = costs.reduce((sum, { cost }) => sum + cost, 0);
			expect(shares.reduce((sum, share) => sum + share, 0)).toBe(total);
			const exact = shares.map((_, place) =>
				costs.reduce((sum, { cost, taken }) => {
					const all = taken.reduce((whole, own) => whole + own, 0n);
					const part = all === 0n ? new Fraction(1, count) : new Fraction(taken[place]!, all);
					return sum.add(part.mul(cost));
				}, new Fraction(0)),
			);
			const over = shares.map((share, place) => new Fraction(share).sub(exact[place]!));
			for (const difference of over) expect(difference.abs().compare(1)).toBeLessThan(0);
			// Whoever was rounded up had no smaller remainder than whoever was rounded down.
			const remainders = exact.map((part) => part.sub(part.floor()));
			for (const [up, own] of over.entries())
				for (const [down, other] of over.entries())
					if (own.compare(0) > 0 && other.compare(0) < 0) {
						const order = remainders[up]!.compare(remainders[down]!);
						expect(order > 0 || (order === 0 && up < down)).toBe(true);
					}
		}),
	));
