import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readClipboard, writeClipboard } from '../../../../src/core/grid/clipboardText.ts';

test.each([
	{ text: '', cells: [['']] },
	{ text: '456', cells: [['456']] },
	{ text: '456\n', cells: [['456']] },
	{
		text: 'a\tb\r\nc\td\r\n',
		cells: [
			['a', 'b'],
			['c', 'd'],
		],
	},
	{ text: 'a\rb', cells: [['a'], ['b']] },
	{ text: 'a\n\nb', cells: [['a'], [''], ['b']] },
	{ text: 'a\n\n', cells: [['a'], ['']] },
	{ text: '\t', cells: [['', '']] },
	{ text: 'a\tb\nc', cells: [['a', 'b'], ['c']] },
	{ text: '"a\tb"\tc', cells: [['a\tb', 'c']] },
	{ text: '"two\r\nlines"\nc', cells: [['two\r\nlines'], ['c']] },
	{ text: '"say ""so"""', cells: [['say "so"']] },
	{ text: '2 5/8"\t12"', cells: [['2 5/8"', '12"']] }, // inch marks
	{ text: '"Pier" at dusk\tb', cells: [['"Pier" at dusk', 'b']] },
	{ text: '"open\tb', cells: [['"open', 'b']] },
	{ text: '""\tb', cells: [['', 'b']] },
])('$text is $cells', ({ text, cells }) => {
	expect(readClipboard(text)).toEqual(cells);
});

test.each([
	{ cells: [['2 5/8"']], text: '"2 5/8"""' },
	{ cells: [['a']], text: 'a' },
	{ cells: [['a', '']], text: 'a\t\n' },
	{ cells: [['a'], ['']], text: 'a\n\n' },
	{ cells: [['two\nlines', 'b']], text: '"two\nlines"\tb\n' },
])('$cells are written $text', ({ cells, text }) => {
	expect(writeClipboard(cells)).toBe(text);
});

test('any table that is written is read again, the same', () => {
	const cell = fc.oneof(fc.string(), fc.constantFrom('', '"', '""', '\t', '\n', '\r\n', '"a"', '2 5/8"', '=1+1', "'"));
	const table = fc
		.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 }))
		.chain(([rows, columns]) =>
			fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
		);
	fc.assert(
		fc.property(table, (cells) => {
			expect(readClipboard(writeClipboard(cells))).toEqual(cells);
		}),
		{ numRuns: 1000 },
	);
});

test('ten thousand lines are read without delay', () => {
	const text = Array.from({ length: 10_000 }, (_, row) => `"${row}\t${'x'.repeat(20)}\n`).join('');
	const start = performance.now();
	expect(readClipboard(text)).toHaveLength(10_000);
	expect(performance.now() - start).toBeLessThan(2000);
});
