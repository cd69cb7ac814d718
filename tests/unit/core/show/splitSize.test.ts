import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { parseLength } from '../../../../src/core/length/parseLength.ts';
import { parseSize } from '../../../../src/core/length/parseSize.ts';
import type { Unit } from '../../../../src/core/length/reading.ts';
import { splitSize } from '../../../../src/core/show/splitSize.ts';

const sizes = [{ name: 'small frame', width: mm(300), height: mm(240) }];

test.each<{ text: string; unit?: Unit; width: string; height: string }>([
	{ text: '456 x 306', width: '456', height: '306' },
	{ text: ' 456×306 ', width: '456', height: '306' },
	{ text: '60 x 45 cm', width: '60 cm', height: '45 cm' },
	{ text: '60 cm x 45', width: '60 cm', height: '45 cm' },
	{ text: '60 x 45 cm', unit: 'cm', width: '60', height: '45 cm' },
	{ text: '24 by 18 in', width: '24 in', height: '18 in' },
	{ text: '24 by 18 in', unit: 'in', width: '24', height: '18 in' },
	{ text: '60 cm x 300 mm', width: '60 cm', height: '300 mm' },
	{ text: '16 1/2 x 11', width: '16 1/2 in', height: '11 in' },
	{ text: '16½ x 11', unit: 'in', width: '16 1/2 in', height: '11' },
	{ text: `1'4" x 12"`, width: `1'4"`, height: '12"' },
	{ text: '7,5 x 10,5 cm', width: '7,5 cm', height: '10,5 cm' },
	{ text: 'A3', width: '297 mm', height: '420 mm' },
	{ text: 'a3 landscape', width: '420 mm', height: '297 mm' },
	{ text: 'ANSI A', width: '8.5 in', height: '11 in' },
	{ text: 'Small Frame', width: '300 mm', height: '240 mm' },
])('$text typed into a show in $unit is $width and $height', ({ text, unit = 'mm', width, height }) => {
	const both = { 'picture width': width, 'picture height': height };
	expect(splitSize('picture width', text, unit, sizes)).toEqual(both);
	expect(splitSize('picture height', text, unit, sizes)).toEqual(both);
});

test.each(['456', '16 1/2', 'long', '456 x', '456 x 306 x 20', '0 x 5', '1,500 x 20', ''])(
	'%s stays in its cell',
	(text) => {
		expect(splitSize('window height', text, 'mm', sizes)).toEqual({ 'window height': text });
	},
);

test.each(['paper', 'mount', 'title', 'side'] as const)('a size typed into %s stays there', (column) => {
	expect(splitSize(column, '456 x 306', 'mm', sizes)).toEqual({ [column]: '456 x 306' });
});

test('the two cells are, to the unit, the size that was typed', () => {
	const unitText = fc.constantFrom('', ' mm', ' cm', ' m', ' in', '"', ' ft');
	const number = fc.oneof(
		fc.integer({ min: 1, max: 9 }).map(String),
		fc.constantFrom('1/2', '2 5/8', '3⅜', '0.001', '1.7', '2,25'),
	);
	const text = fc
		.tuple(number, unitText, fc.constantFrom(' x ', 'x', '×', ' by '), number, unitText)
		.map((parts) => parts.join(''));
	fc.assert(
		fc.property(text, fc.constantFrom<Unit>('mm', 'cm', 'in'), (typed, unit) => {
			const size = parseSize(typed, { unit });
			const cells = splitSize('mount width', typed, unit, []);
			if ('problem' in size) return;
			const [width, height] = [cells['mount width']!, cells['mount height']!].map((half) =>
				parseLength(half, { unit }),
			);
			expect(width).toEqual({ value: { length: size.value.width, isBareFraction: false } });
			expect(height).toEqual({ value: { length: size.value.height, isBareFraction: false } });
		}),
		{ numRuns: 500 },
	);
});
