import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Choice, chooseSizes, type Option, type Options } from '../../../../src/core/harmonise/chooseSizes.ts';
import { runs } from '../../../soak.ts';

/** Every assignment of every set of sizes, tried one by one: what the choice must equal. */
function exhaustive(options: Options, sizeCount: number, most: number): Omit<Choice, 'sizes' | 'isProven'> {
	let best: { taken: number; difference: number; borders: number; area: number } | undefined;
	const assign = (place: number, sizes: number[]) => {
		if (place < options.length) {
			for (let size = -1; size < sizeCount; size++)
				if (size < 0 || options[place]![size]) assign(place + 1, [...sizes, size]);
			return;
		}
		if (new Set(sizes.filter((size) => size >= 0)).size > most) return;
		const taken = sizes.flatMap((size, row) => (size < 0 ? [] : [options[row]![size]!]));
		const now = {
			taken: taken.length,
			difference: taken.reduce((sum, { difference }) => sum + difference, 0),
			borders: new Set(taken.flatMap(({ borders }) => borders)).size,
			area: taken.reduce((sum, { area }) => sum + area, 0),
		};
		const order =
			best &&
			(best.taken - now.taken ||
				now.difference - best.difference ||
				now.borders - best.borders ||
				now.area - best.area);
		if (order === undefined || order < 0) best = now;
	};
	assign(0, []);
	const { difference, borders, area } = best!;
	return { difference, borders, area };
}

const option: fc.Arbitrary<Option> = fc.record({
	difference: fc.integer({ min: 0, max: 3 }),
	borders: fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 3, maxLength: 3 }),
	area: fc.integer({ min: 1, max: 4 }),
});

const cases = fc.integer({ min: 1, max: 4 }).chain((sizeCount) =>
	fc.record({
		sizeCount: fc.constant(sizeCount),
		most: fc.integer({ min: 1, max: 3 }),
		options: fc.array(
			fc.array(fc.option(option, { nil: undefined, freq: 5 }), { minLength: sizeCount, maxLength: sizeCount }),
			{
				minLength: 1,
				maxLength: 5,
			},
		),
	}),
);

test('equals exhaustive search on 200 small cases', () =>
	fc.assert(
		fc.property(cases, ({ options, sizeCount, most }) => {
			const { sizes, isProven, ...figures } = chooseSizes(options, sizeCount, most);
			expect(isProven).toBe(true);
			expect(figures).toEqual(exhaustive(options, sizeCount, most));
			expect(new Set(sizes.filter((size) => size >= 0)).size).toBeLessThanOrEqual(most);
			const taken = sizes.flatMap((size, row) => (size < 0 ? [] : [options[row]![size]!]));
			expect(taken.reduce((sum, { difference }) => sum + difference, 0)).toBe(figures.difference);
		}),
		{ numRuns: 200 },
	));

test('ties without end are settled as well as can be, and not called proven', () => {
	const options = Array.from({ length: 60 }, (_, row) =>
		Array.from({ length: 6 }, (_, size): Option => ({
			difference: 0,
			borders: [(row * 7 + size * 13) % 41, (row * 11 + size * 17) % 43, (row * 3 + size * 5) % 47],
			area: 1 + ((row + size) % 5),
		})),
	);
	const { isProven, sizes, difference } = chooseSizes(options, 6, 6, runs(100_000, 3_000_000));
	expect(isProven).toBe(false);
	expect(difference).toBe(0);
	expect(sizes.every((size) => size >= 0)).toBe(true);
});
