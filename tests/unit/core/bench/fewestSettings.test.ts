import fc from 'fast-check';
import { expect, test } from 'vitest';
import { length } from '../../../../src/core/length/length.ts';
import { fewestSettings } from '../../../../src/core/bench/fewestSettings.ts';
import { orderSoFar } from '../../../../src/core/bench/orderSoFar.ts';
import type { OrderJob } from '../../../../src/core/bench/orderJob.ts';
import { type BoardSetUp, changesAlong, setUpKey } from '../../../../src/core/bench/setUps.ts';
import { runs } from '../../../soak.ts';

/** Jobs in which taped set-ups wait for others, on a guide alone or with end stops. */
const job = (least: number, most: number, values: number): fc.Arbitrary<OrderJob> => {
	const value = fc.integer({ min: 1, max: values }).map(length);
	const set = fc.tuple(value, value, value, fc.integer({ min: 1, max: 3 }).map(length), fc.boolean());
	return fc
		.tuple(fc.boolean(), fc.array(set, { minLength: least, maxLength: most }), fc.infiniteStream(fc.nat(2)))
		.map(([hasStops, sets, chance]) => {
			const each = sets.map(([guide, start, end, thickness, isTaped]): BoardSetUp => ({
				...{ guide, border: guide, thickness, isTaped },
				start: hasStops ? start : undefined,
				end: hasStops ? end : undefined,
			}));
			const setUps = [...new Map(each.map((setUp) => [setUpKey(setUp), setUp])).values()];
			const later = setUps.map(({ isTaped }) =>
				setUps.flatMap((other, place) => (!isTaped && other.isTaped && chance.next().value === 0 ? [place] : [])),
			);
			return { setUps, later };
		});
};

/** Visits of thicknesses, and changes, of the order with the fewest of both: by trying every order that keeps the turn. */
function bruteForce({ setUps, later }: OrderJob): readonly [number, number] {
	let best: readonly [number, number] = [Infinity, Infinity];
	const go = (done: readonly number[]) => {
		const order = done.map((place) => setUps[place]!);
		const [visits, changes] = [visitsOf(order), changesOf(order)];
		if (visits > best[0] || (visits === best[0] && changes >= best[1])) return;
		if (done.length === setUps.length) best = [visits, changes];
		for (const place of setUps.keys()) {
			if (done.includes(place)) continue;
			if (later.every((after, other) => !after.includes(place) || done.includes(other))) go([...done, place]);
		}
	};
	go([]);
	return best;
}

const visitsOf = (order: readonly BoardSetUp[]) =>
	order.filter(({ thickness }, at) => at === 0 || thickness !== order[at - 1]!.thickness).length;

/** Changes, counted apart from the code under test. */
const changesOf = (order: readonly BoardSetUp[]) =>
	order
		.map((setUp, at) => {
			const values = (each: BoardSetUp | undefined) => [each?.guide, each?.start, each?.end];
			return values(setUp).filter((value, device) => value !== values(order[at - 1])[device]).length;
		})
		.reduce((sum, each) => sum + each, 0);

function expectInTurn({ setUps, later }: OrderJob, order: readonly BoardSetUp[]): void {
	expect(order.map(setUpKey).sort()).toEqual(setUps.map(setUpKey).sort());
	const turnOf = (place: number) => order.findIndex((each) => setUpKey(each) === setUpKey(setUps[place]!));
	later.forEach((after, place) => after.forEach((each) => expect(turnOf(each)).toBeGreaterThan(turnOf(place))));
}

test('of up to 7 set-ups that wait for each other no order has fewer changes, and the proof says so', () =>
	fc.assert(
		fc.property(job(1, 7, 3), (some) => {
			const { order, leastChanges } = fewestSettings(some);
			expectInTurn(some, order);
			const isTaped = some.setUps.some((each) => each.isTaped);
			const [visits, changes] = bruteForce(some);
			expect(visitsOf(order)).toBe(visits);
			expect(leastChanges).toBeLessThanOrEqual(changes);
			// With a guide alone and nothing taped the widest come first in each thickness, which may ask one more where two meet.
			if (!isTaped && some.setUps[0]!.start === undefined) return;
			expect([changesAlong(order), leastChanges]).toEqual([changes, changes]);
		}),
		{ numRuns: runs(75, 5000) },
	));

test('of many, too, each comes once and in its turn, found or at hand, and no bound is over an order', () =>
	fc.assert(
		fc.property(job(13, 30, 6), job(13, 30, 6), (some, before) => {
			const found = fewestSettings(some);
			for (const { order, leastChanges } of [
				found,
				orderSoFar(some, []),
				orderSoFar(some, fewestSettings(before).order),
			]) {
				expectInTurn(some, order);
				expect(leastChanges).toBeLessThanOrEqual(changesAlong(found.order));
				expect(visitsOf(order)).toBe(visitsOf(found.order));
			}
			const { order } = orderSoFar(some, found.order);
			if (some.setUps[0]!.start !== undefined) expect(order.map(setUpKey)).toEqual(found.order.map(setUpKey));
		}),
		{ numRuns: runs(2, 400) },
	));
