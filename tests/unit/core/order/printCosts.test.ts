import { expect, test } from 'vitest';
import type { GetLine } from '../../../../src/core/order/getLine.ts';
import { costReason, printCosts } from '../../../../src/core/order/printCosts.ts';
import type { ToGet } from '../../../../src/core/order/whatToGet.ts';

const eur = { code: 'EUR', decimals: 2 };

function line(name: string, cost: number | undefined, taken: readonly (readonly [number, bigint])[]): GetLine {
	return { kind: 'board', name, wanted: 1, there: 0, pack: 1, price: cost, packs: 1, cost, taken: new Map(taken) };
}

function toGetOf(lines: readonly GetLine[], costs: readonly number[]): ToGet {
	return {
		...{ lines, costs, shares: [], unplaced: [], sticks: [], tooLong: [], unmeasured: [], leftOut: [] },
		total: costs.reduce((sum, cost) => sum + cost, 0),
		unpriced: lines.filter(({ cost }) => cost === undefined),
	};
}

const three = (a: bigint, b: bigint, c: bigint) => [[0, a] as const, [1, b] as const, [2, c] as const];

test('a print of which nothing has a price has no cost; one whose things are all in stock costs nothing', () => {
	const lines = [line('Chalk', 1000, [[0, 1n]]), line('cord', undefined, [[1, 1n]]), line('Oak', 0, [[2, 1n]])];
	expect(printCosts(toGetOf(lines, [1000, 0, 0]))).toEqual([1000, undefined, 0]);
});

test('why it costs that: its parts, which add up, and what has no price', () => {
	const lines = [
		line('Chalk', 1000, three(1n, 1n, 1n)),
		line('Oak', 500, three(1n, 1n, 1n)),
		line('cord', undefined, three(1n, 1n, 1n)),
		line('tape', undefined, [[1, 5n]]),
	];
	const toGet = toGetOf(lines, [500, 500, 500]);
	expect(costReason(toGet, 0, eur)).toBe(
		'What it needs costs 5.00 EUR: 3.33 for Chalk and 1.67 for Oak. No price yet for cord.',
	);
	expect(costReason(toGet, 1, eur)).toMatch(/No price yet for cord and tape\.$/);
	expect(costReason(toGetOf([line('cord', undefined, [[0, 1n]])], [0]), 0, eur)).toBeUndefined();
});

test('what nobody takes is shared by all, and said so', () => {
	const lines = [line('Chalk', 300, three(1n, 1n, 1n)), line('Spare', 600, [])];
	expect(costReason(toGetOf(lines, [300, 300, 300]), 2, undefined)).toBe(
		'What it needs costs 3.00: 1.00 for Chalk and 2.00 for what all prints share.',
	);
});
