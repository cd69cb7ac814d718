import { expect, test } from 'vitest';
import { mm, zero } from '../../../../src/core/length/length.ts';
import type { Layout } from '../../../../src/core/sheets/layout.ts';
import { purchasesOf, stillToBuy } from '../../../../src/core/sheets/purchases.ts';
import type { Stock } from '../../../../src/core/stock/stock.ts';

const sheet: Stock = {
	...({ board: 'Chalk', kind: 'sheet', width: mm(1200), height: mm(900), trim: zero, grain: undefined } as const),
	...{ price: 8600, pack: 5, count: undefined },
};
const offcut: Stock = { ...sheet, kind: 'offcut', width: mm(560), height: mm(430), price: 0, pack: 1, count: 2 };
const layouts = (stock: Stock, count: number): readonly Layout[] =>
	Array.from({ length: count }, () => ({ stock, pattern: 1, blanks: [], cuts: [], offcuts: [], isCut: false }));
const stock = [sheet, offcut];
const plan = [...layouts(sheet, 14), ...layouts(offcut, 2)];

test('fourteen sheets in packs of five are three packs; what is there is not bought', () =>
	expect(purchasesOf(plan, stock)).toEqual([{ stock: sheet, pieces: 14, packs: 3, cost: 25_800 }]));

test.each([
	{ begun: 1, packs: 2, pieces: 9, cost: 17_200 },
	{ begun: 5, packs: 2, pieces: 9, cost: 17_200 },
	{ begun: 6, packs: 1, pieces: 4, cost: 8600 },
])('with $begun of them cut or spoilt, $packs packs are still to buy', ({ begun, ...left }) =>
	expect(stillToBuy(plan, layouts(sheet, begun), stock)).toEqual([{ stock: sheet, ...left }]),
);

test('nothing is, once every pack is begun', () => expect(stillToBuy(plan, layouts(sheet, 11), stock)).toEqual([]));

test('an offcut that is cut buys nothing', () =>
	expect(stillToBuy(plan, layouts(offcut, 1), stock)).toEqual(purchasesOf(plan, stock)));
