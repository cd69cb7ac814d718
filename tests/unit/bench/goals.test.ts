import { expect, test } from 'vitest';
import { type Measured, measures, median, reached, shareOf, tableOf } from '../../bench/goals.ts';

test.each<[Measured, 'yes' | 'no']>([
	[{ measure: 'first paint', rows: 30, ours: 100, other: 100 }, 'yes'],
	[{ measure: 'first paint', rows: 30, ours: 101, other: 100 }, 'no'],
	[{ measure: 'first paint', rows: 10_000, ours: 50, other: 100 }, 'yes'],
	[{ measure: 'first paint', rows: 10_000, ours: 51, other: 100 }, 'no'],
	[{ measure: 'work of a key', rows: 30, ours: 16, other: 32 }, 'yes'],
	[{ measure: 'work of a key', rows: 30, ours: 17, other: 40 }, 'no'],
	[{ measure: 'work of a key', rows: 1000, ours: 15, other: 29 }, 'no'],
	[{ measure: 'work of a key', rows: 10_000, ours: 40, other: 80 }, 'yes'],
	[{ measure: 'key to painted row', rows: 30, ours: 71, other: 100 }, 'no'],
	[{ measure: 'default changed to painted', rows: 10_000, ours: 40, other: 100 }, 'yes'],
	[{ measure: 'default changed to painted', rows: 10_000, ours: 41, other: 100 }, 'no'],
	[{ measure: 'p95 frame, scrolling', rows: 10_000, ours: 35, other: 217 }, 'no'],
	[{ measure: 'p95 frame, scrolling', rows: 10_000, ours: 34, other: 20 }, 'yes'],
	[{ measure: 'memory, MB', rows: 30, ours: 9, other: 8 }, 'no'],
	[{ measure: 'offline cold start to typing', rows: 30, ours: 150, other: 100 }, 'yes'],
	[{ measure: 'offline cold start to typing', rows: 30, ours: 151, other: 100 }, 'no'],
])('%o is as good as its goal: %s', (measured, word) => {
	expect(reached(measured)).toBe(word);
});

test('the table has a line for each figure, with the ratio, the goal and whether it is reached, few rows before many', () => {
	expect(
		tableOf([
			{ measure: 'memory, MB', rows: 10_000, ours: 42, other: 56 },
			{ measure: 'work of a key', rows: 10_000, ours: 50, other: 20 },
			{ measure: 'work of a key', rows: 30, ours: 10, other: 20 },
		]),
	).toEqual([
		'measure          rows  ours  other  ratio  goal               reached',
		'work of a key      30  10.0   20.0   0.50  ≤ 0.50 ×, ≤ 16 ms  yes',
		'work of a key  10,000  50.0   20.0   2.50  ≤ 0.50 ×           no',
		'memory, MB     10,000  42.0   56.0   0.75  ≤ 1.00 ×           yes',
	]);
});

test('every measure has a goal at every length', () => {
	for (const measure of measures)
		for (const rows of [30, 1000, 10_000]) expect(reached({ measure, rows, ours: 1, other: 1e9 })).toBe('yes');
});

test('the middle of five, and what 95 of 100 do not pass; of nothing there is neither', () => {
	expect(median([5, 1, 400, 3, 2])).toBe(3);
	const hundred = Array.from({ length: 100 }, (_, place) => 100 - place);
	expect(shareOf(hundred, 0.95)).toBe(96);
	expect(shareOf([7], 0.95)).toBe(7);
	expect(() => median([])).toThrow(RangeError);
});
