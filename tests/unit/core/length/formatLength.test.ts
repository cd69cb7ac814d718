import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	formatExact,
	formatLength,
	formatLarge,
	formatTypeable,
	formatWithUnit,
	parseExact,
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

describe('shown', () => {
	test.each<[number, string, string]>([
		[0, '0', '0'],
		[70, '70', '7'],
		[71.5, '71.5', '7.15'],
		[100, '100', '10'],
		[1000, '1000', '100'],
		[0.25, '0.25', '0.025'],
		[421.333333, '421.333', '42.1333'],
		[0.0004, '0', '0'],
		[-3, '−3', '−0.3'],
		[-0.0004, '0', '0'],
	])('%d mm is %s mm, %s cm', (value, inMm, inCm) => {
		expect(formatLength(mm(value), 'mm')).toBe(inMm);
		expect(formatLength(mm(value), 'cm')).toBe(inCm);
	});

	test.each<[number, string]>([
		[0, '0'],
		[2, '2'],
		[2.625, '2⅝'],
		[0.5, '½'],
		[16.3125, '16 5/16'],
		[0.015625, '1/64'],
		[10 + 63 / 64, '10 63/64'],
		[2.1, '2.1'],
		[1 / 3, '0.333'],
		[-0.125, '−⅛'],
	])('%d in is %s', (value, shown) => expect(formatLength(inches(value), 'in')).toBe(shown));

	test('with its unit', () => {
		expect(formatWithUnit(mm(70), 'mm')).toBe('70 mm');
		expect(formatWithUnit(mm(70), 'cm')).toBe('7 cm');
		expect(formatWithUnit(inches(2.625), 'in')).toBe('2⅝ in');
	});

	test('read again it is the same to what is shown', () =>
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 0.99 * greatestLength }).map(length), anyUnit, (value, unit) => {
				const within = unit === 'in' ? unitsPerInch / 2000 + 5 : 5005;
				expect(Math.abs(read(formatLength(value, unit), unit) - value)).toBeLessThanOrEqual(within);
			}),
			{ numRuns: 2000 },
		));

	test('64ths of an inch read again are exact', () =>
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 393 * 64 }), (count) => {
				const value = inches(count / 64);
				expect(read(formatLength(value, 'in'), 'in')).toBe(value);
			}),
			{ numRuns: 2000 },
		));
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
	[inches(2.625), 'in', '2 5/8'],
	[inches(0.5), 'in', '1/2'],
	[mm(71.5), 'in', '2.815'],
	[mm(71.5), 'mm', '71.5'],
] as const)('%d units in %s are %s, to be read from afar', (value, unit, text) =>
	expect(formatLarge(value, unit)).toBe(text),
);
