import { expect, test } from 'vitest';
import { mm } from '../../../src/core/length/length.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import type { Stock } from '../../../src/core/stock/stock.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { dropOutWords } from '../../../src/pages/dropOutWords.ts';

const stock: Stock = {
	...{ board: 'Chalk', kind: 'drop-out', width: mm(400), height: mm(260), trim: mm(1) },
	...{ grain: undefined, price: 0, pack: 1, count: 1 },
};
const { settings } = readSettings({
	mountSize: '600 x 450 mm',
	boards: [{ name: 'Chalk', width: 1200, height: 900 }],
});
const rows = [{ id: 'r1', order: 1, typed: { title: 'Ebb', 'window width': '400', 'window height': '260' } }];
const results = rows.map((row) => judgeRow(row, settings));
const words = (piece: Stock) => dropOutWords(piece, rows, results, settings);

test('of a drop-out it is said where it falls out and that it is squared first; of another piece nothing', () => {
	expect(words(stock)).toMatch(/^from the window of Ebb; bevelled.* square it first: 1 mm off each of its four sides$/);
	expect(words({ ...stock, trim: mm(1.5875) })).toMatch(/four sides$/);
	expect(words({ ...stock, kind: 'sheet' })).toBe('');
});

test('one that was begun before drop-outs were squared stays as it was planned, and nothing is said of squaring', () =>
	expect(words({ ...stock, trim: mm(0) })).toBe('from the window of Ebb'));
