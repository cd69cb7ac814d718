import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toMm } from '../../../../src/core/length/length.ts';
import { planSticks } from '../../../../src/core/sticks/planSticks.ts';
import { openHighs } from '../../../../src/solver/openHighs.ts';
import { checkSticks, fewestByTrying, jobOf, smallJobs, takenOf } from './madeUpSticks.ts';
import { runs } from '../../../soak.ts';

/** Tools with so many seconds from now on. */
function tools(seconds = 10) {
	const start = performance.now();
	return { secondsLeft: () => seconds - (performance.now() - start) / 1000 };
}

test.each([
	{ stick: 3000, saw: 5, legs: [] as number[], count: 0 },
	{ stick: 3000, saw: 5, legs: [2995], count: 1 },
	{ stick: 3000, saw: 5, legs: [745, 745, 745, 745], count: 1 },
	{ stick: 3000, saw: 6, legs: [745, 745, 745, 745], count: 2 }, // the saw alone
	{ stick: 3000, saw: 0, legs: Array.from({ length: 6 }, () => 1050), count: 3 }, // two a stick, by parts
	{ stick: 1000, saw: 0, legs: [600, 600, 600, 300, 300, 300, 100, 100, 100], count: 3 },
	// Filled in the order of their lengths they take one stick more.
	{ stick: 100, saw: 0, legs: [44, 24, 24, 22, 21, 17, 8, 8, 6, 6, 10, 10], count: 2 },
])('$legs from $stick with a saw of $saw: $count', ({ stick, saw, legs, count }) => {
	const job = jobOf(stick, saw, legs);
	const plan = planSticks(job, tools());
	checkSticks(job, plan);
	expect(plan.sticks).toHaveLength(count);
	expect(plan.proven).toBe(true);
});

test('a leg that no stick gives with its saw is named, and the others are sawn', () => {
	const job = jobOf(3000, 5, [2996, 2995, 100]);
	const plan = planSticks(job, tools());
	checkSticks(job, plan);
	expect(plan.tooLong.map(({ length }) => toMm(length))).toEqual([2996]);
	expect(plan.sticks).toHaveLength(2);
});

test('as few as by trying every stick for every leg, and proven', () =>
	fc.assert(
		fc.property(smallJobs, (job) => {
			const plan = planSticks(job, tools());
			checkSticks(job, plan);
			expect(plan.sticks.length).toBe(fewestByTrying(job.stick, takenOf(job)));
			expect(plan.proven).toBe(true);
		}),
		{ numRuns: runs(150, 20_000) },
	));

describe('shows of thirty frames', () => {
	const frames = fc.array(fc.tuple(fc.integer({ min: 200, max: 900 }), fc.integer({ min: 200, max: 700 })), {
		minLength: 30,
		maxLength: 30,
	});
	const shows = runs(2, 20);
	test(`are proven with the solver, in the soak nearly all of ${shows}`, async () => {
		const openProgram = await openHighs();
		let proven = 0;
		fc.assert(
			fc.property(frames, fc.constantFrom(2400, 3000), (sides, stick) => {
				const job = jobOf(
					stick,
					5,
					sides.flatMap(([width, height]) => [width, width, height, height]),
				);
				const plan = planSticks(job, { ...tools(), openProgram });
				checkSticks(job, plan);
				if (plan.proven) proven++;
			}),
			{ numRuns: shows },
		);
		expect(proven).toBeGreaterThanOrEqual(runs(2, 18));
	});
	test('have a plan at once where there is no time', () => {
		const job = jobOf(
			3000,
			5,
			fc.sample(frames, { numRuns: 1, seed: 1 })[0]!.flatMap(([width, height]) => [width, width, height, height]),
		);
		const plan = planSticks(job, { secondsLeft: () => 0 });
		checkSticks(job, plan);
	});
});
