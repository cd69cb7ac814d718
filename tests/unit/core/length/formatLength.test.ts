import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	formatExact,
	formatFiner,
	formatOnTape,
	formatLength,
	formatSize,
	formatTypeable,
	formatWithUnit,
	parseExact,
	type Scale,
} from '../../../../src/core/length/formatLength.ts';
import {
	greatestLength,
	inches,
	isSame,
	type Length,
	length,
	mm,
	unitsPerInch,
} from '../../../../src/core/length/length.ts';
import { parseLength } from '../../../../src/core/length/parseLength.ts';
import type { Unit } from '../../../../src/core/length/reading.ts';

const units: readonly Unit[] = ['mm', 'cm', 'in'];
const anyLength = fc.integer({ min: 0, max: greatestLength }).map(length);
const anyUnit = fc.constantFrom(...units);

function read(text: string, unit: Unit): Length {
	const reading = parseLength(text, { unit, allowZero: true });
	if ('problem' in reading) throw new Error(reading.problem);
	return reading.value.length;
}

const scaleOf = (unit: Unit, ruler: Length = unit === 'in' ? inches(1 / 16) : mm(1)): Scale => ({ unit, ruler });

describe('shown', () => {
	test.each<[number, string, string]>([
		[0, '0', '0'],
		[70, '70', '7'],
		[71.5, '71.5', '7.15'],
		[100, '100', '10'],
		[1000, '1000', '100'],
		[0.25, '0.3', '0.03'],
		[257.333, '257.3', '25.73'],
		[421.333333, '421.3', '42.13'],
		[99.96, '100', '10'],
		[0.0004, '0', '0'],
		[-3, '−3', '−0.3'],
		[-3.04, '−3', '−0.3'],
		[-0.0004, '0', '0'],
	])('%d mm is %s mm, %s cm', (value, inMm, inCm) => {
		expect(formatLength(mm(value), scaleOf('mm'))).toBe(inMm);
		expect(formatLength(mm(value), scaleOf('cm'))).toBe(inCm);
	});

	test.each<[number, string]>([
		[0, '0'],
		[2, '2'],
		[2.625, '2 5/8'],
		[0.5, '1/2'],
		[16.3125, '16 5/16'],
		[0.015625, '1/64'],
		[10 + 63 / 64, '10 63/64'],
		[2.1, '2 3/32'],
		[1 / 3, '21/64'],
		[0.197, '13/64'],
		[1.999, '2'],
		[0.001, '0'],
		[-0.125, '−1/8'],
		[-0.001, '0'],
	])('%d in is %s', (value, shown) => expect(formatLength(inches(value), scaleOf('in'))).toBe(shown));

	test.each<[Length, Unit, Length, string]>([
		[inches(11 / 16), 'mm', inches(1 / 16), '17.4625'],
		[inches(3 / 32), 'mm', inches(1 / 32), '2.38125'],
		[inches(3 / 32), 'cm', inches(1 / 32), '0.238125'],
		[inches(3 / 32), 'mm', mm(1), '2.4'],
		[mm(70.25), 'mm', mm(0.25), '70.25'],
		[length(mm(70) + 9000), 'mm', mm(1), '70'],
		[mm(70), 'in', mm(1), '2 3/4'],
	])('%d units in %s on a ruler of %d are %s', (value, unit, ruler, shown) =>
		expect(formatLength(value, { unit, ruler })).toBe(shown),
	);

	test('with its unit, and as a size', () => {
		expect(formatWithUnit(mm(70), scaleOf('mm'))).toBe('70 mm');
		expect(formatWithUnit(mm(70), scaleOf('cm'))).toBe('7 cm');
		expect(formatWithUnit(inches(2.625), scaleOf('in'))).toBe('2 5/8 in');
		expect(formatSize(mm(600), mm(450), scaleOf('cm'))).toBe('60 × 45 cm');
	});

	test('read again it is the same to what is shown', () =>
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 0.99 * greatestLength }).map(length), anyUnit, (value, unit) => {
				const within = unit === 'in' ? unitsPerInch / 128 + 5 : mm(0.05) + 5;
				expect(Math.abs(read(formatLength(value, scaleOf(unit)), unit) - value)).toBeLessThanOrEqual(within);
			}),
			{ numRuns: 2000 },
		));

	test('what lies on the ruler is read again as it is, whatever ruler and unit', () =>
		fc.assert(
			fc.property(
				fc.integer({ min: 0, max: 3000 }),
				fc.constantFrom<Unit>('mm', 'cm'),
				fc.constantFrom(mm(1), mm(0.5), inches(1 / 8), inches(1 / 16), inches(1 / 32)),
				(count, unit, ruler) => {
					expect(read(formatLength(length(count * ruler), { unit, ruler }), unit)).toBe(count * ruler);
				},
			),
			{ numRuns: 2000 },
		));

	test('64ths of an inch read again are exact', () =>
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 393 * 64 }), (count) => {
				const value = inches(count / 64);
				expect(read(formatLength(value, scaleOf('in')), 'in')).toBe(value);
			}),
			{ numRuns: 2000 },
		));

	test.each<[Length, Unit, number, string]>([
		[mm(39.96), 'mm', 1, '39.96'],
		[mm(39.9604), 'cm', 1, '3.996'],
		[mm(39.996), 'mm', 2, '39.996'],
		[inches(2.505), 'in', 1, '2 65/128'],
		[inches(2.5), 'in', 8, '2 1/2'],
	])('%d units in %s, %d steps finer, are %s', (value, unit, steps, shown) =>
		expect(formatFiner(value, scaleOf(unit), steps)).toBe(shown),
	);
});

describe('for a file', () => {
	test.each<[number, Unit, string]>([
		[mm(70), 'mm', '70'],
		[mm(71.5), 'cm', '7.15'],
		[1, 'mm', '0.0000001'],
		[1, 'cm', '0.00000001'],
		[inches(2.625), 'in', '2.625'],
		[mm(1), 'in', '0.03937008'],
		[1, 'in', '0.000000004'],
		[-mm(6), 'mm', '-6'],
		[length(4_213_333_333), 'mm', '421.3333333'],
	])('%d units in %s are %s', (units, unit, text) => expect(formatExact(length(units), unit)).toBe(text));

	test('exact to the unit, in every unit, on both sides of zero', () =>
		fc.assert(
			fc.property(anyLength, anyUnit, fc.boolean(), (value, unit, isNegative) => {
				const signed = length(isNegative ? -value : value);
				expect(parseExact(formatExact(signed, unit), unit)).toBe(signed);
			}),
			{ numRuns: 3000 },
		));

	test('a whole number of nanometres is read as typed, too', () =>
		fc.assert(
			fc.property(fc.integer({ min: 0, max: greatestLength / 10 }), anyUnit, (nm, unit) => {
				expect(read(formatExact(length(nm * 10), unit), unit)).toBe(nm * 10);
			}),
			{ numRuns: 2000 },
		));

	test.each(['', 'x', '1,5', '1e5', '--1', '.5', '1.', '9999999999999'])('%s is no exact length', (text) =>
		expect(parseExact(text, 'mm')).toBeUndefined(),
	);
});

describe('to be typed again', () => {
	test.each<[Length, Unit, string]>([
		[mm(65), 'mm', '65 mm'],
		[inches(2.5), 'in', '2 1/2 in'],
		[inches(0.0625), 'in', '1/16 in'],
		[mm(1), 'in', '0.03937008 in'],
	])('%d units in %s are %s', (value, unit, text) => expect(formatTypeable(value, unit)).toBe(text));

	test('it is the same length in a show of any unit', () =>
		fc.assert(
			fc.property(fc.integer({ min: 0, max: greatestLength / 10 }), anyUnit, anyUnit, (nm, unit, show) => {
				expect(isSame(read(formatTypeable(length(nm * 10), unit), show), nm * 10)).toBe(true);
			}),
			{ numRuns: 2000 },
		));
});

test.each([
	[mm(65), 'in', '2 9/16'],
	[mm(66.675), 'in', '2 5/8'],
	[inches(2.5625), 'mm', '65'],
	[inches(2.625), 'mm', '66.5'],
	[inches(2.625), 'cm', '6.65'],
] as const)('%d units on a tape in %s are %s', (value, unit, text) => expect(formatOnTape(value, unit)).toBe(text));
