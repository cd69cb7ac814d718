import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { parseShape } from '../../../../src/core/length/parseShape.ts';

test.each<[string, number, number]>([
	['3:2', 3, 2],
	['3/2', 3, 2],
	['1.5', 3, 2],
	['1,5', 3, 2],
	['3x2', 3, 2],
	['3 × 2', 3, 2],
	['6:4', 3, 2],
	['1½', 3, 2],
	['16:9', 16, 9],
	['2.39:1', 239, 100],
	['3:4', 3, 4],
	['1', 1, 1],
	['0.8', 4, 5],
	['1.41421356', 35_355_339, 25_000_000],
])('%s is %d over %d', (text, numerator, denominator) =>
	expect(parseShape(text)).toEqual({ value: { numerator, denominator } }),
);

test.each<[string, RegExp]>([
	['square', /is not a shape. Type width to height/],
	['3:2:1', /is not a shape/],
	['3:', /is not a shape/],
	['', /is not a shape/],
	['3:2 mm', /is not a shape/],
	['0', /above zero/],
	['0:2', /above zero/],
	['3:0', /above zero/],
	['3/0', /above zero/],
	['-3:2', /above zero/],
	['1,500', /more than one way/],
	[`1.${'1'.repeat(30)}`, /too many digits/],
])('%s is not read', (text, sentence) => {
	const reading = parseShape(text);
	expect('problem' in reading && reading.problem).toMatch(sentence);
});

test('agrees with an independent library of fractions', () =>
	fc.assert(
		fc.property(
			fc.integer({ min: 1, max: 99_999 }),
			fc.integer({ min: 1, max: 99_999 }),
			fc.nat(3),
			fc.constantFrom(':', '/', 'x'),
			(width, height, places, between) => {
				const isDecimal = between !== '/'; // a fraction's parts are whole
				const text = isDecimal ? (width / 10 ** places).toFixed(places) : `${width}`;
				const { n, d } = new Fraction(text).div(height);
				expect(parseShape(`${text}${between}${height}`)).toEqual({
					value: { numerator: Number(n), denominator: Number(d) },
				});
			},
		),
		{ numRuns: 1000 },
	));
