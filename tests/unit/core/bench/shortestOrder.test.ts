import fc from 'fast-check';
import { expect, test } from 'vitest';
import { length } from '../../../../src/core/length/length.ts';
import { leastByTrees } from '../../../../src/core/bench/leastByTrees.ts';
import { anneal } from '../../../../src/core/bench/anneal.ts';
import { fewestSettings } from '../../../../src/core/bench/fewestSettings.ts';
import type { OrderJob } from '../../../../src/core/bench/orderJob.ts';
import { type BoardSetUp, changesAlong } from '../../../../src/core/bench/setUps.ts';
import { costAlong, type Costs } from '../../../../src/core/bench/costs.ts';
import { shortestOrder } from '../../../../src/core/bench/shortestOrder.ts';
import { runs } from '../../../soak.ts';

const setUp = ([guide, start, end, thickness]: readonly number[]): BoardSetUp => ({
	border: length(guide!),
	guide: length(guide!),
	start: length(start!),
	end: length(end!),
	thickness: thickness === undefined ? undefined : length(thickness),
	isTaped: false,
});

/** Set-ups that wait for nothing. */
const jobOf = (some: readonly (readonly number[])[]): OrderJob => ({
	setUps: some.map(setUp),
	later: some.map(() => []),
});

/** Devices that differ, counted apart from the code under test. */
const differing = (a: readonly number[], b: readonly number[]) =>
	[0, 1, 2].filter((device) => a[device] !== b[device]).length;

/** The fewest changes over all orders that keep boards of one thickness together, by going through every one. */
function bruteForce(cuts: readonly (readonly number[])[]): number {
	let fewest = Infinity;
	const go = (last: readonly number[] | undefined, left: readonly (readonly number[])[], changes: number) => {
		if (changes >= fewest) return;
		if (left.length === 0) fewest = changes;
		const isGroupOpen = last !== undefined && left.some((cut) => cut[3] === last[3]);
		for (const cut of left) {
			if (isGroupOpen && cut[3] !== last[3]) continue;
			go(
				cut,
				left.filter((other) => other !== cut),
				changes + (last ? differing(last, cut) : 3),
			);
		}
	};
	go(undefined, cuts, 0);
	return fewest;
}

const cut = (thicknesses: number) =>
	fc.tuple(
		fc.integer({ min: 1, max: 4 }),
		fc.integer({ min: 1, max: 3 }),
		fc.integer({ min: 1, max: 3 }),
		fc.integer({ min: 1, max: thicknesses }),
	);
const cuts = (minLength: number, maxLength: number, thicknesses = 2) =>
	fc.uniqueArray(cut(thicknesses), { selector: (each) => each.join(' '), minLength, maxLength });

test('with up to 8 set-ups on a bench with end stops no order has fewer changes', () =>
	fc.assert(
		fc.property(cuts(1, 8), (some) => {
			const { order, leastChanges } = fewestSettings(jobOf(some));
			const thicknesses = order.map(({ thickness }) => thickness);
			const runs = thicknesses.filter((thickness, place) => thickness !== thicknesses[place - 1]).length;
			expect(runs, 'boards of one thickness together').toBe(new Set(thicknesses).size);
			expect(new Set(order).size).toBe(some.length);
			expect(changesAlong(order)).toBe(bruteForce(some));
			expect(leastChanges).toBe(bruteForce(some));
		}),
		{ numRuns: 500 },
	));

const costsOf = (some: readonly (readonly number[])[]): Costs => ({
	count: some.length,
	between: Int32Array.from(some.flatMap((a) => some.map((b) => differing(a, b)))),
});

test('the bound is under what any order costs, and the search that goes beyond 12 finds the cheapest of 8 too', () =>
	fc.assert(
		fc.property(cuts(3, 8, 1), (some) => {
			const costs = costsOf(some);
			const cheapest = bruteForce(some) - 3;
			expect(leastByTrees(costs, 99)).toBeLessThanOrEqual(cheapest);
			const found = anneal([...some.keys()], costs, 0);
			expect([...found].sort((a, b) => a - b)).toEqual([...some.keys()]);
			expect(costAlong(found, costs)).toBe(cheapest);
		}),
		{ numRuns: runs(8, 600) },
	));

test('of many set-ups each comes once, and no order is said to be under the bound', () =>
	fc.assert(
		fc.property(cuts(13, 40), (some) => {
			const { order, cost, least } = shortestOrder(costsOf(some));
			expect([...order].sort((a, b) => a - b)).toEqual([...some.keys()]);
			expect(cost).toBe(costAlong(order, costsOf(some)));
			expect(least).toBeLessThanOrEqual(cost);
			expect(cost - least).toBeLessThanOrEqual(2);
		}),
		{ numRuns: 30 },
	));

test('the same set-ups give the same order, whatever was asked before', () => {
	const some = Array.from({ length: 30 }, (_, index) => [70 + (index % 7), 60 + (index % 5), 60 + (index % 3)]);
	const first = fewestSettings(jobOf(some));
	fewestSettings(jobOf(some.slice(0, 5)));
	expect(fewestSettings(jobOf(some))).toEqual(first);
});
