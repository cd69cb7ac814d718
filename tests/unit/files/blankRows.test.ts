import { expect, test } from 'vitest';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { countPrints, isBlankRow } from '../../../src/core/show/blankRow.ts';
import { writeRows } from '../../../src/files/writeRows.ts';

const { settings } = readSettings({});
const rows = [
	{ id: 'a', order: 1, typed: { title: 'Low water' } },
	{ id: 'b', order: 2, typed: {} },
	{ id: 'c', order: 3, typed: {}, extra: { lender: 'Ilse Tarnow' } },
	{ id: 'd', order: 4, typed: {}, extra: {} },
];

test('a row in which nothing is typed, and with which nothing came, is no print', () => {
	expect(rows.map(isBlankRow)).toEqual([false, true, false, true]);
	expect(countPrints(rows)).toBe(2);
});

test.each([true, false])('it is not written, with ids %s; those after it keep their results', (hasIds) => {
	const results = rows.map((row) => judgeRow(row, settings));
	const text = writeRows({ rows, results, settings, bench: orderBench(rows, results, settings) }, { hasIds });
	const [, first, second, ...others] = text.trim().split('\r\n');
	expect([first, second?.endsWith('Ilse Tarnow'), others]).toEqual([expect.stringContaining('Low water'), true, []]);
});
