import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, toMm } from '../../../../src/core/length/length.ts';
import { parseLength } from '../../../../src/core/length/parseLength.ts';
import { parseSize, type SizeContext, splitSizeText } from '../../../../src/core/length/parseSize.ts';

const inMm: SizeContext = { unit: 'mm' };

function sizeMm(text: string, context = inMm): readonly [number, number] | string {
	const reading = parseSize(text, context);
	return 'value' in reading ? [toMm(reading.value.width), toMm(reading.value.height)] : reading.problem;
}

describe('two lengths', () => {
	test.each<[string, number, number]>([
		['600 x 450', 600, 450],
		['600X450', 600, 450],
		['600×450', 600, 450],
		['600*450', 600, 450],
		['600 by 450', 600, 450],
		['60 x 45 cm', 600, 450],
		['60 cm x 45', 600, 450],
		['60 cm x 450 mm', 600, 450],
		['60,5 x 45,5 cm', 605, 455],
		['24 by 18 in', 609.6, 457.2],
		['24" x 18"', 609.6, 457.2],
		['24 x 18"', 609.6, 457.2],
		['24 in x 30 cm', 609.6, 300],
		['16x20 in', 406.4, 508],
		['16½ x 11', 419.1, 279.4],
		['16 x 11½', 406.4, 292.1],
		['16½ x 11 in', 419.1, 279.4],
		['16½ x 11 cm', 165, 110], // the unit serves both, so the fraction is not bare
		["1'4\" x 2'", 406.4, 609.6],
		['1 m x 80 cm', 1000, 800],
		['60cmx45cm', 600, 450],
		['24inx18in', 609.6, 457.2],
		['24in.X18in.', 609.6, 457.2],
		['600mmby450mm', 600, 450],
		['600. x 450.', 600, 450],
		['600.x450', 600, 450],
	])('%s', (text, width, height) => expect(sizeMm(text)).toEqual([width, height]));

	test.each<[string, RegExp]>([
		['60', /is one length; a size has two/],
		['60 x 45 x 3', /more than two lengths/],
		['60 x', /is not a size/],
		['x', /is not a size/],
		['large', /is not a size/],
		['60 x forty', /is not a size/],
		['60mmxx45', /is not a size/],
		['60mmxl', /is not a size/],
		['0 x 45', /not above zero/],
		['60 x -45', /below zero/],
		['11 m x 45', /more than 10 m/],
		['1/0 x 45', /divides by zero/],
		['1,500 x 45', /more than one way/],
		['', /is not a size/],
	])('%s is not read', (text, sentence) => expect(sizeMm(text)).toMatch(sentence));

	test('both readings of both lengths are offered', () => {
		expect(parseSize('1,500 x 1,200', inMm)).toMatchObject({ readings: ['1500 x 1200', '1.500 x 1.200'] });
		expect(parseSize('21/8 x 25/16', inMm)).toMatchObject({ readings: ['2 1/8 x 2 5/16', '2 5/8 x 1 9/16'] });
		expect(parseSize('21/8 x 3 in', inMm)).toMatchObject({ readings: ['2 1/8 x 3 in', '2 5/8 x 3 in'] });
		expect(parseSize('21/8 x 3 cm', inMm)).toHaveProperty('value');
	});

	test('a bare fraction under a metric header is not read; both readings are offered', () => {
		const reading = parseSize('16½ x 11', { unit: 'cm', isUnitStated: true });
		expect(reading).toMatchObject({ readings: ['16 1/2 x 11 in', '16 1/2 x 11 cm'] });
	});
});

describe('names', () => {
	const sizes = [
		{ name: 'Small frame', width: mm(333), height: mm(222) },
		{ name: 'A4', width: mm(200), height: mm(300) },
		{ name: '16x20', width: mm(400), height: mm(500) },
	];
	test.each<[string, number, number]>([
		['A3', 297, 420],
		['a3', 297, 420],
		['A 3', 297, 420],
		['B2', 500, 707],
		['ANSI B', 279.4, 431.8],
		['ansi b', 279.4, 431.8],
		['A3 landscape', 420, 297],
		['A3 portrait', 297, 420],
		['small FRAME', 333, 222],
		['smallframe', 333, 222],
		['Small frame portrait', 222, 333],
		['A4', 200, 300], // the show's own comes first
		['16x20', 400, 500], // the show's own, though it looks like two lengths
		['16x20 in', 406.4, 508], // no name: two lengths
	])('%s', (text, width, height) => expect(sizeMm(text, { unit: 'mm', sizes })).toEqual([width, height]));

	test.each(['A11', 'B', 'ANSI F', 'C4', 'Landscape'])('%s is none', (text) => {
		expect(sizeMm(text)).toMatch(/is not a size/);
	});
});

describe('a size split into two cells', () => {
	test.each<[string, string, string]>([
		['24 by 18 in', '24 in', '18 in'],
		['60 cm x 45', '60 cm', '45 cm'],
		['600x450', '600', '450'],
		['24 in x 30 cm', '24 in', '30 cm'],
		['16½ x 11', '16 1/2', '11'],
	])('%s', (text, width, height) => expect(splitSizeText(text)).toEqual({ width, height }));

	test.each(['60', 'A3', '60 x', '1 x 2 x 3'])('%s is none', (text) => expect(splitSizeText(text)).toBeUndefined());

	test('the halves mean what the whole means', () =>
		fc.assert(
			fc.property(
				fc.integer({ min: 1, max: 300 }),
				fc.integer({ min: 1, max: 300 }),
				fc.constantFrom('', 'mm', 'cm', 'in', '"'),
				fc.constantFrom('', 'mm', 'cm', 'in', '"'),
				fc.constantFrom(' x ', '×', ' by '),
				fc.constantFrom('mm' as const, 'in' as const),
				(width, height, widthUnit, heightUnit, between, unit) => {
					const text = `${width}${widthUnit}${between}${height}${heightUnit}`;
					const halves = splitSizeText(text)!;
					const whole = parseSize(text, { unit });
					if ('problem' in whole) throw new Error(whole.problem);
					expect(parseLength(halves.width, { unit })).toMatchObject({ value: { length: whole.value.width } });
					expect(parseLength(halves.height, { unit })).toMatchObject({ value: { length: whole.value.height } });
				},
			),
			{ numRuns: 500 },
		));
});
