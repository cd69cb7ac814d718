import fc from 'fast-check';
import { expect, test } from 'vitest';
import { length } from '../../../../src/core/length/length.ts';
import { fewestSettings } from '../../../../src/core/bench/fewestSettings.ts';
import { orderSoFar } from '../../../../src/core/bench/orderSoFar.ts';
import type { OrderJob } from '../../../../src/core/bench/orderJob.ts';
import { type BoardSetUp, changesAlong, setUpKey } from '../../../../src/core/bench/setUps.ts';

const value = (greatest: number) => fc.integer({ min: 1, max: greatest }).map(length);
const setUp = fc.tuple(value(4), value(3), value(3), value(2)).map(([guide, start, end, thickness]): BoardSetUp => ({
	guide,
	start,
	end,
	border: guide,
	thickness,
	isTaped: false,
}));
const setUps = (maxLength: number) => fc.uniqueArray(setUp, { selector: setUpKey, maxLength });
const jobOf = (some: readonly BoardSetUp[]): OrderJob => ({ setUps: some, later: some.map(() => []) });
const keys = (order: readonly BoardSetUp[]) => order.map(setUpKey);

test('the order at hand has each set-up once, thicknesses together, none moved that were there, no bound too high', () =>
	fc.assert(
		fc.property(setUps(20), setUps(8), (before, asked) => {
			const { order: known } = fewestSettings(jobOf(before));
			const { order, leastChanges } = orderSoFar(jobOf(asked), known);
			expect(keys(order).sort()).toEqual(keys(asked).sort());
			const stayed = keys(known).filter((key) => keys(asked).includes(key));
			expect(keys(order).filter((key) => stayed.includes(key))).toEqual(stayed);
			const thicknesses = order.map(({ thickness }) => thickness);
			const runs = thicknesses.filter((thickness, place) => thickness !== thicknesses[place - 1]).length;
			expect(runs).toBe(new Set(thicknesses).size);
			expect(leastChanges).toBeLessThanOrEqual(fewestSettings(jobOf(asked)).leastChanges);
			expect(changesAlong(order)).toBeGreaterThanOrEqual(fewestSettings(jobOf(asked)).leastChanges);
		}),
	));
