import Fraction from 'fraction.js';
import Qty from 'js-quantities';
import { describe, expect, test } from 'vitest';
import inch from '../../shared/check-values/inch.json' with { type: 'json' };
import { toMm } from '../../src/core/length/length.ts';
import { parseLength } from '../../src/core/length/parseLength.ts';
import { parseSize } from '../../src/core/length/parseSize.ts';

function millimetres(text: string): number {
	const reading = parseLength(text, { unit: 'mm' });
	if ('problem' in reading) throw new Error(reading.problem);
	return toMm(reading.value.length);
}

describe(inch.source, () => {
	test.each(inch.cases)('$typed is $mm mm', ({ typed, mm }) => expect(millimetres(typed)).toBe(mm));
});

test('16 x 20 in is 406.4 x 508 mm, no size of 400 x 500 mm', () => {
	expect(parseSize('16x20 in', { unit: 'mm' })).toMatchObject({
		value: { width: 4_064_000_000, height: 5_080_000_000 },
	});
});

describe('the package js-quantities', () => {
	test.each(['16 in', '2.625 in', '7.5 cm', '0.6 m', '3 ft', '70 mm'])('agrees on %s', (text) => {
		expect(millimetres(text)).toBeCloseTo(Qty(text).to('mm').scalar, 9);
	});
});

describe('the package fraction.js', () => {
	test.each(['2 5/8', '16 5/16', '1/64', '10 63/64'])('agrees on %s in', (text) => {
		expect(millimetres(`${text} in`)).toBe(new Fraction(text).mul('25.4').valueOf());
	});
});
