import { expect, test } from 'vitest';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import { stepMounts } from '../../../src/core/bench/stations.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { tickKey } from '../../../src/core/show/tick.ts';
import { stepPrints } from '../../../src/pages/stepPrints.ts';

const { settings } = readSettings({ mountSize: '600 x 450 mm', border: 70, bottomWeight: 12 });
const rows = [{ shape: '3:2', copies: '2' }, { shape: '3:2' }].map((typed, index): Row => ({
	id: `r${index}`,
	order: index + 1,
	typed,
}));
const results = rows.map((row) => judgeRow(row, settings));
const sides = orderBench(rows, results, settings).steps.find(({ cuts }) => cuts.some(({ side }) => side === 'left'))!;
const said = (ticks: Parameters<typeof stepPrints>[4]) =>
	stepPrints(sides, rows, results, settings, ticks).map(({ index, sides: words, copies, made }) => [
		index,
		words,
		copies,
		made,
	]);

test('a step names each print once, with its sides in words and its copies', () =>
	expect(said(new Map())).toEqual([
		[0, 'both sides', 2, 0],
		[1, 'both sides', 1, 0],
	]));

test('a print is named with the blank that it is cut in', () =>
	expect(stepPrints(sides, rows, results, settings, new Map()).map(({ blank }) => blank)).toEqual([
		'Blank 600 × 450 mm',
		'Blank 600 × 450 mm',
	]));

test('a copy counts as made when all its cuts of the step are', () => {
	const mounts = stepMounts(sides, rows, results, settings, new Map());
	const second = mounts.find(({ index, copy }) => index === 0 && copy === 2)!;
	const whole = new Map(second.cuts.map((cut) => [tickKey(cut), cut]));
	expect(said(whole)).toEqual([
		[0, 'both sides', 2, 1],
		[1, 'both sides', 1, 0],
	]);
	const half = new Map([...whole].slice(0, 1));
	expect(said(half)[0]).toEqual([0, 'both sides', 2, 0]);
});
