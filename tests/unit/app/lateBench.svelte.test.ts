import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { LateBench } from '../../../src/app/lateBench.svelte.ts';
import { type BenchPlan, noPlan } from '../../../src/core/bench/benchPlan.ts';
import type { Row } from '../../../src/core/show/row.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('the plan is made when typing pauses, the steps of its rows in a task after that, and those that come later instead', () => {
	const row: Row = { id: 'a', order: 1, typed: {} };
	const made: string[] = [];
	let steps = [1];
	const bench = new LateBench(() => {
		made.push('plan');
		const own = steps;
		const plan: BenchPlan = {
			...noPlan,
			get stepsOfRows() {
				made.push(`rows ${own.join(' ')}`);
				return [own];
			},
		};
		return { rows: [row], plan };
	});
	bench.later();
	bench.later();
	expect(made).toEqual([]);
	vi.advanceTimersToNextTimer();
	expect([made, bench.stepsOf(row)]).toEqual([['plan'], []]);
	vi.advanceTimersToNextTimer();
	expect([made, bench.stepsOf(row)]).toEqual([['plan', 'rows 1'], [1]]);
	steps = [2];
	bench.later();
	vi.advanceTimersToNextTimer();
	steps = [3];
	bench.later();
	vi.runAllTimers();
	expect([made.slice(2), bench.stepsOf(row)]).toEqual([['plan', 'plan', 'rows 3'], [3]]);
	bench.later();
	vi.advanceTimersToNextTimer();
	bench.stop();
	expect(vi.getTimerCount()).toBe(0);
});
