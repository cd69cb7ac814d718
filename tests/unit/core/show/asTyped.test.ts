import { expect, test } from 'vitest';
import type { Unit } from '../../../../src/core/length/reading.ts';
import { asTyped } from '../../../../src/core/show/asTyped.ts';
import type { ColumnName } from '../../../../src/core/show/columns.ts';

test.each<{ column: ColumnName; typed: string; unit?: Unit; text: string }>([
	{ column: 'top', typed: '7', text: '7' },
	{ column: 'top', typed: '7', unit: 'cm', text: '7 cm' },
	{ column: 'top', typed: '70 mm', unit: 'cm', text: '70 mm' },
	{ column: 'top', typed: '2 5/8', unit: 'in', text: '2 5/8 in' },
	{ column: 'overlap', typed: '0', unit: 'in', text: '0 in' },
	{ column: 'paper', typed: '24 x 18', unit: 'in', text: '24 x 18 in' },
	{ column: 'paper', typed: '60 cm x 45', unit: 'mm', text: '60 cm x 45' },
	{ column: 'paper', typed: 'A3', unit: 'in', text: 'A3' },
	{ column: 'mount', typed: 'fit', unit: 'in', text: 'fit' },
	{ column: 'bottom weight', typed: '6', unit: 'mm', text: '6 mm' },
	{ column: 'bottom weight', typed: '6 %', unit: 'mm', text: '6 %' },
	{ column: 'top', typed: 'wide', unit: 'mm', text: 'wide' },
	{ column: 'top', typed: '2 5/8', unit: 'mm', text: '2 5/8' }, // not read under a header in mm, so not made readable
])('$typed under $column in $unit is typed elsewhere as $text', ({ column, typed, unit, text }) => {
	expect(asTyped({ typed: { [column]: typed }, ...(unit && { units: { [column]: unit } }) }, column)).toBe(text);
});

test('a blank cell has no text', () => {
	expect(asTyped({ typed: {} }, 'top')).toBe('');
});
