import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { parseThickness } from '../../../../src/core/length/parseThickness.ts';

test.each<[string, number]>([
	['1400 micron', 1.4],
	['1400 microns', 1.4],
	['1400 µm', 1.4],
	['1400μm', 1.4],
	['1250 um', 1.25],
	['2200 Micron', 2.2],
	['4-ply', 1.4],
	['4 ply', 1.4],
	['8ply', 2.8],
	['6 Ply', 2.1],
	['1.4', 1.4],
	['1.4 mm', 1.4],
	['0.14 cm', 1.4],
	['1/16 in', 1.5875],
])('a thickness of “%s” is %d mm', (text, value) =>
	expect(parseThickness(text, { unit: 'mm' })).toEqual({ value: mm(value) }),
);

test.each<[string, RegExp, (readonly string[])?]>([
	['1,400 micron', /more than one way: 1400 or 1\.400/, ['1400 micron', '1.400 micron']],
	['0 micron', /not above zero/],
	['0-ply', /not above zero/],
	['-4-ply', /below zero/],
	['ply', /not a length/],
	['99999999 micron', /more than 10 m/],
	['4 plies of', /not a length/],
])('a thickness of “%s” is not read', (text, problem, readings) =>
	expect(parseThickness(text, { unit: 'mm' })).toMatchObject({
		problem: expect.stringMatching(problem) as string,
		...(readings && { readings }),
	}),
);
