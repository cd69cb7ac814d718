import { bench, describe } from 'vitest';
import { orderBench } from '../../src/core/bench/orderBench.ts';
import { judgeRow } from '../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../src/core/settings/readSettings.ts';
import type { Row, Typed } from '../../src/core/show/row.ts';

const { settings } = readSettings({ mountSize: '600 x 450 mm', border: '70 mm' });

/** What people type, in turn: sizes, shapes, borders, inches, and now and then a slip. */
const typings: readonly Typed[] = [
	{ 'picture width': '456', 'picture height': '306' },
	{ shape: '3:2' },
	{ 'picture width': '300', 'picture height': '200', mount: 'fit' },
	{ 'picture width': '16 1/2 in', 'picture height': '11 in' },
	{ 'picture width': '420', 'picture height': '280', reveal: '6', 'signing space': '10' },
	{ 'window width': '400', 'window height': '260', 'bottom weight': 'optical centre' },
	{ 'picture width': '45.6', 'picture height': '30.6' },
];

const showOf = (count: number): readonly Row[] =>
	Array.from({ length: count }, (_, order) => ({ id: `row ${order}`, order, typed: typings[order % typings.length]! }));

describe('a row', () => {
	typings.forEach((typed, order) => {
		bench(Object.entries(typed).flat().join(' '), () => {
			judgeRow({ id: 'row', order, typed }, settings);
		});
	});
});

describe.each([30, 300])('a show of %i prints', (count) => {
	const rows = showOf(count);
	const results = rows.map((row) => judgeRow(row, settings));

	bench('every row', () => {
		for (const row of rows) judgeRow(row, settings);
	});

	bench('the cutting order', () => {
		orderBench(rows, results, settings);
	});
});
