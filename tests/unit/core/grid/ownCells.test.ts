import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readOwnCells, writeOwnCells } from '../../../../src/core/grid/ownCells.ts';

test('any cells that are written are read again, the same', () => {
	const table = fc.array(fc.array(fc.string(), { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 4 });
	fc.assert(
		fc.property(table, (cells) => {
			expect(readOwnCells(writeOwnCells(cells))).toEqual(cells);
		}),
	);
});

test.each(['', 'a\tb', '{', '[]', '[[]]', '[[1]]', '"a"', 'null', '[["a"],2]'])('%s is none of it', (text) => {
	expect(readOwnCells(text)).toBeUndefined();
});
