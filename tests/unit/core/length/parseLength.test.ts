import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { greatestLength } from '../../../../src/core/length/length.ts';
import { type LengthContext, parseLength } from '../../../../src/core/length/parseLength.ts';
import type { Unit } from '../../../../src/core/length/reading.ts';

const inMm: LengthContext = { unit: 'mm' };

/** Nanometres read, or undefined. */
function nanometres(text: string, context = inMm): number | undefined {
	const reading = parseLength(text, context);
	return 'value' in reading ? reading.value.length / 10 : undefined;
}

function problemOf(text: string, context = inMm) {
	const reading = parseLength(text, context);
	if ('value' in reading) throw new Error(`${text} was read as ${reading.value.length}`);
	return reading;
}

describe('forms in which a length is typed', () => {
	test.each<[string, number]>([
		['70', 70],
		['70 mm', 70],
		['70MM', 70],
		['7cm', 70],
		['7,5 cm', 75],
		['0.6 m', 600],
		['10 m', 10_000],
		['.5 m', 500],
		['0,125', 0.125],
		['00,125', 0.125],
		['1,50', 1.5],
		['1,5000', 1.5],
		['1.500', 1.5],
		['2.625"', 66.675],
		['2.625″', 66.675],
		['2.625”', 66.675],
		["2.625''", 66.675],
		['2 5/8 in', 66.675],
		['2 5/8 inch', 66.675],
		['2 5/8 Inches', 66.675],
		['2-5/8"', 66.675],
		['2‑5/8"', 66.675],
		['2⅝', 66.675],
		['2 ⅝', 66.675],
		['2 5⁄8', 66.675],
		['2\u00a05/8\u202fin', 66.675],
		['2\u20095/8\u2009in', 66.675],
		['9/8 in', 28.575],
		['10/8 in', 31.75],
		['16/32 in', 12.7],
		['33/2"', 419.1],
		['21/8 cm', 26.25],
		['5/8', 15.875],
		['⅛', 3.175],
		['½ cm', 5],
		['1/2 mm', 0.5],
		['1\'4"', 406.4],
		["1' 4", 406.4],
		['1′4″', 406.4],
		['1’4”', 406.4],
		['1 ft 4 in', 406.4],
		['1 foot 4 inches', 406.4],
		['2 feet', 609.6],
		["2'", 609.6],
		['½ ft', 152.4],
		['1\'4 1/2"', 419.1],
		['1 ft 4½ in', 419.1],
		['1\'-4"', 406.4],
		['1′–4½″', 419.1],
		['16 in.', 406.4],
		['+70', 70],
		['  70  ', 70],
		['250.', 250],
		['250,', 250],
		['25. cm', 250],
		['25.cm', 250],
		['7.5. ', 7.5],
		['1.\'4."', 406.4],
	])('%s is %d mm', (text, mm) => expect(nanometres(text)).toBe(mm * 1e6));

	test.each<[string, Unit, number]>([
		['7.5', 'cm', 75],
		['7.5', 'in', 190.5],
		['2 5/8', 'in', 66.675],
		['2 5/8', 'cm', 66.675], // a bare fraction is inches in every show
		['70 mm', 'in', 70],
	])('%s in a show of %s is %d mm', (text, unit, mm) => expect(nanometres(text, { unit })).toBe(mm * 1e6));

	test.each<[string, number]>([
		['1/3 mm', 333_333],
		['2/3 mm', 666_667],
		['0.0000005', 1], // half a nanometre goes up
		['0.00000149', 1],
		['1/3 in', 8_466_667],
		['2.675 in', 67_945_000],
		['0.1', 100_000],
		['1.005 cm', 10_050_000],
		['8.3333333333333333333333333333 mm', 8_333_333],
	])('%s is %d nm, rounded once', (text, nm) => expect(nanometres(text)).toBe(nm));
});

describe('what is not read', () => {
	test.each<[string, RegExp]>([
		['seventy', /^“seventy” is not a length. Type a number/],
		['7o', /^“7o” is not a length/],
		['', /is not a length/],
		['-', /is not a length/],
		['mm', /is not a length/],
		['1e3', /is not a length/],
		['0x10', /is not a length/],
		['70 mm 3', /is not a length/],
		['250..', /is not a length/],
		['250.,', /is not a length/],
		['2. 5/8', /is not a length/],
		['250. deep', /is not a length/],
		['70 mm cm', /is not a length/],
		['2 9/8', /is not a length/],
		['2.5 1/8', /is not a length/],
		['5/8/2', /is not a length/],
		['2.5/8', /is not a length/],
		['1 2', /is not a length/],
		['4 in 1 ft', /is not a length/],
		["1'--4", /is not a length/],
		["1'+4", /is not a length/],
		["1'-", /is not a length/],
		['70 %', /is not a length/],
		['60 x 45', /is not a length/],
		['Infinity', /is not a length/],
		['-5', /^“-5” is below zero/],
		['−5 mm', /^“−5 mm” is below zero/],
		['-2 5/8 in', /below zero/],
		['0', /^“0” is not above zero/],
		['0,000 in', /not above zero/],
		['0.0000001', /not above zero/],
		['11 m', /^“11 m” is more than 10 m/],
		['10.0000001 m', /more than 10 m/],
		['9'.repeat(300), /more than 10 m/],
		['1/0', /^1\/0 divides by zero/],
		['2 1/0 in', /1\/0 divides by zero/],
	])('%s', (text, sentence) => expect(problemOf(text).problem).toMatch(sentence));

	test('a long text is cut short in the sentence', () => {
		expect(problemOf('x'.repeat(5000)).problem.length).toBeLessThan(200);
	});

	test('zero is read where zero is allowed, and no less', () => {
		expect(nanometres('0', { unit: 'mm', allowZero: true })).toBe(0);
		expect(nanometres('0 in', { unit: 'mm', allowZero: true })).toBe(0);
		expect(nanometres('-0', { unit: 'mm', allowZero: true })).toBe(0);
		expect(problemOf('-1', { unit: 'mm', allowZero: true }).problem).toMatch(/below zero/);
	});
});

describe('what is not guessed', () => {
	test.each<[string, Unit, string[]]>([
		['1,500', 'mm', ['1500', '1.500']],
		['1,500', 'in', ['1.500']], // 1500 in is more than 10 m
		['2,500 mm', 'mm', ['2500 mm', '2.500 mm']],
		['12,125"', 'mm', ['12125"', '12.125"'].slice(1)],
		['1.500,25', 'mm', ['1500.25']],
		['1,500,000', 'mm', []],
		['21/8', 'mm', ['2 1/8', '2 5/8']],
		['21/8"', 'mm', ['2 1/8"', '2 5/8"']],
		['25/16 in', 'in', ['2 5/16 in', '1 9/16 in']],
		['115/16', 'in', ['1 15/16', '11 5/16', '7 3/16']],
		['16/8', 'in', ['1 6/8', '2']],
		["1' 21/8", 'in', ["1' 2 1/8", "1' 2 5/8"]],
		['1 500 mm', 'mm', ['1500 mm']],
		['1\u202f500', 'mm', ['1500']],
	])('%s in a show of %s may be %j', (text, unit, readings) => {
		const { readings: offered, problem } = problemOf(text, { unit });
		expect(offered).toEqual(readings);
		expect(problem).toMatch(/^“/);
	});

	test.each([
		['1,500', '“1,500” can be read in more than one way: 1500 or 1.500?'],
		['21/8"', '“21/8” can be read in more than one way: 2 1/8 (a space is missing) or 2 5/8?'],
		['1.500,25', '“1.500,25” has a mark between thousands: 1500.25?'],
		['1,2,3', '“1,2,3” has more than one decimal mark'],
	])('%s is told what it may be', (text, sentence) => expect(problemOf(text).problem).toBe(sentence));

	test.each(['16½', '2 5/8', '5/8', '2-5/8'])('%s under a metric header is not read; both readings are', (text) => {
		for (const unit of ['mm', 'cm'] as const) {
			const { readings = [] } = problemOf(text, { unit, isUnitStated: true });
			expect(readings).toHaveLength(2);
			const [inch, metric] = readings.map((reading) => nanometres(reading, { unit, isUnitStated: true }));
			expect(inch! / metric!).toBeCloseTo(unit === 'mm' ? 25.4 : 2.54, 6);
		}
	});

	test('a decimal under a metric header, and a fraction under an inch one, are read', () => {
		expect(nanometres('16,5', { unit: 'cm', isUnitStated: true })).toBe(165e6);
		expect(nanometres('16½', { unit: 'in', isUnitStated: true })).toBe(419.1e6);
		expect(nanometres('16½ in', { unit: 'mm', isUnitStated: true })).toBe(419.1e6);
	});
});

describe('bare fractions', () => {
	test.each<[string, LengthContext, boolean]>([
		['16½', { unit: 'mm' }, true],
		['16 1/2', { unit: 'in' }, true],
		['16½ in', { unit: 'mm' }, false],
		["1'4 1/2", { unit: 'mm' }, false],
		['16.5', { unit: 'in' }, false],
		['16½', { unit: 'in', isUnitStated: true }, false],
	])('%s in %j: %s', (text, context, isBareFraction) => {
		expect(parseLength(text, context)).toMatchObject({ value: { isBareFraction } });
	});
});

/** Exact nanometres by a library of fractions, rounded half up. */
const expected = (value: Fraction, nmPerUnit: number) => Number(value.mul(nmPerUnit).add(1, 2).floor().toString());

describe('against an independent library of fractions', () => {
	const nmPerUnit = { mm: 1_000_000, cm: 10_000_000, m: 1_000_000_000, in: 25_400_000, ft: 304_800_000 };
	const unit = fc.constantFrom(...(Object.keys(nmPerUnit) as (keyof typeof nmPerUnit)[]));

	test('decimals in every unit', () =>
		fc.assert(
			fc.property(fc.bigInt({ min: 1n, max: 10n ** 12n }), fc.nat(12), unit, (digits, places, unit) => {
				const all = digits.toString().padStart(places + 1, '0');
				const text = `${all.slice(0, all.length - places)}.${all.slice(all.length - places)}`.replace(/\.$/, '');
				const nm = expected(new Fraction(digits).div(10n ** BigInt(places)), nmPerUnit[unit]);
				const isReadable = nm > 0 && nm * 10 <= greatestLength;
				expect(nanometres(`${text} ${unit}`)).toBe(isReadable ? nm : undefined);
			}),
			{ numRuns: 2000 },
		));

	test('mixed numbers in every unit', () =>
		fc.assert(
			fc.property(fc.nat(30), fc.integer({ min: 2, max: 999 }), fc.nat(998), unit, (whole, under, part, unit) => {
				const over = (part % (under - 1)) + 1;
				const nm = expected(new Fraction(over, under).add(whole), nmPerUnit[unit]);
				const isReadable = nm * 10 <= greatestLength;
				expect(nanometres(`${whole} ${over}/${under} ${unit}`)).toBe(isReadable ? nm : undefined);
			}),
			{ numRuns: 2000 },
		));
});

test('no text makes it throw, and what is refused offers only what can be read', () =>
	fc.assert(
		fc.property(
			fc.oneof(
				fc.string({ unit: 'binary' }),
				fc
					.array(fc.constantFrom('1', '25', '0', '/', ',500', '.', '-', '−', ' ', 'mm', 'in', "'", '"', '½', '%', 'x'))
					.map((parts) => parts.join('')),
			),
			fc.constantFrom<Unit>('mm', 'cm', 'in'),
			fc.boolean(),
			(text, unit, isUnitStated) => {
				const reading = parseLength(text, { unit, isUnitStated });
				if ('value' in reading) {
					expect(reading.value.length).toBeGreaterThan(0);
					expect(reading.value.length % 10).toBe(0);
				} else {
					expect(reading.problem.length).toBeGreaterThan(10);
					for (const offered of reading.readings ?? [])
						expect(parseLength(offered, { unit, isUnitStated })).toHaveProperty('value');
				}
			},
		),
		{ numRuns: 3000 },
	));
