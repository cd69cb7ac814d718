import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { jobsOf } from '../../../../src/core/sheets/jobsOf.ts';
import { placeInStock } from '../../../../src/core/stock/stock.ts';
import { stockOf } from '../../../../src/core/stock/stockOf.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';

const read = (typed: Record<string, unknown>) => readSettings(typed).settings;
const chalk = { name: 'Chalk', width: 1200, height: 900 };

test('offcuts are stock of the board that they name, at no price, and there is one where no count is typed', () => {
	const offcuts = [
		{ board: ' chalk', width: 620, height: 410, grain: 'width' },
		{ board: 'Slate', width: 620, height: 410 },
	];
	expect(stockOf('CHALK', read({ boards: [chalk], offcuts }))).toMatchObject([
		{ board: 'Chalk', kind: 'sheet', price: undefined, count: undefined },
		{ board: 'Chalk', kind: 'offcut', width: mm(620), height: mm(410), price: 0, count: 1, grain: 'width' },
	]);
});

test('what is there is not bought: it has no price of its own, and a piece of it is known from one that was bought', () => {
	const stock = stockOf(
		'Chalk',
		read({
			boards: [
				{ ...chalk, price: 900, count: 3 },
				{ ...chalk, price: 900, pack: 5 },
			],
		}),
	);
	expect(stock).toMatchObject([
		{ price: 0, count: 3 },
		{ price: 900, count: undefined },
	]);
	expect(stock.map((piece) => placeInStock(piece, stock))).toEqual([0, 1]);
	// One that was begun when what is there still had its price; one of an entry that has been counted since.
	expect(placeInStock({ ...stock[0]!, price: 900 }, stock)).toBe(0);
	expect(placeInStock(stock[1]!, stock.slice(0, 1))).toBe(0);
});

test('a factory edge is taken off a sheet, never off a blank bought ready cut', () => {
	const trims = (kind: string) =>
		stockOf('Chalk', read({ boards: [{ ...chalk, kind, trim: 10 }] })).map(({ trim }) => trim);
	expect(trims('sheet')).toEqual([mm(10)]);
	expect(trims('blank')).toEqual([0]);
});

test('drop-outs are stock only where the show says so', () => {
	const rows = [{ id: 'a', order: 1, typed: { 'picture width': '300', 'picture height': '200' } }];
	const kinds = (typed: Record<string, unknown>) => {
		const settings = read({ boards: [chalk], ...typed });
		const [job] = jobsOf(
			rows,
			rows.map((row) => judgeRow(row, settings)),
			settings,
		).jobs;
		return job!.stock.map(({ kind }) => kind);
	};
	expect(kinds({})).toEqual(['sheet']);
	expect(kinds({ dropOuts: 'yes' })).toEqual(['sheet', 'drop-out']);
});
