import { expect, test } from 'vitest';
import { noPlan, type BenchPlan } from '../../../src/core/bench/benchPlan.ts';
import { orderWords } from '../../../src/pages/orderWords.ts';

const step = { start: undefined, end: undefined, border: 0, thickness: undefined, isTaped: false, cuts: [] };
const stepAt = (guide: number, more = {}) => ({ ...step, guide, ...more }) as unknown as BenchPlan['steps'][number];
const plan = (more: Partial<BenchPlan>): BenchPlan => ({
	...noPlan,
	steps: Array.from({ length: 21 }, (_, guide) => stepAt(guide)),
	changes: 21,
	leastChanges: 21,
	changesOfWays: { 'fewest settings': 21, 'mount by mount': 52 },
	...more,
});
const guide = { kind: 'guide' } as const;

test('an order that is proven is called the fewest possible, beside what the other way would need', () =>
	expect(orderWords(plan({}), guide, false)).toBe(
		'21 steps. 21 guide settings, the fewest possible; 52 if cut mount by mount.',
	));

test('an order that is not proven is not: what none can beat is said, or that it is looked for', () => {
	const open = plan({ proven: false, leastChanges: 19 });
	expect(orderWords(open, { kind: 'guide and stops' }, false)).toBe(
		'21 steps. 21 settings; 52 if cut mount by mount. No order can have fewer than 19.',
	);
	expect(orderWords(open, guide, true)).toBe(
		'21 steps. 21 guide settings; 52 if cut mount by mount. Looking for an order with fewer…',
	);
});

test('mount by mount, the order with fewer is named; where it is the fewest too, only that', () => {
	const way = { kind: 'guide', way: 'mount by mount' } as const;
	expect(orderWords(plan({ changes: 52, proven: false }), way, false)).toBe(
		'21 steps. 52 guide settings; 21 if ordered for fewest settings. No order can have fewer than 21.',
	);
	expect(orderWords(plan({ steps: plan({}).steps.slice(1, 2), changes: 1, leastChanges: 1 }), way, false)).toBe(
		'1 step. 1 guide setting, the fewest possible.',
	);
});

test('more steps than guide settings have their reason', () => {
	const { steps } = plan({});
	const words = (...more: BenchPlan['steps']) => orderWords(plan({ steps: [...steps, ...more] }), guide, false);
	const fewest = '21 guide settings, the fewest possible; 52 if cut mount by mount.';
	const [thick, taped] = [stepAt(20, { thickness: 3 }), stepAt(20, { isTaped: true })];
	expect(words(thick)).toBe(`22 steps. ${fewest} The guide stays as it was for 1 step.`);
	expect(words(taped)).toBe(`22 steps. ${fewest} The guide stays as it was for 1 step with inner mounts.`);
	expect(words(thick, taped)).toBe(`23 steps. ${fewest} The guide stays as it was for 2 steps.`);
	const stops = { kind: 'guide and stops' } as const;
	expect(orderWords(plan({ steps: [...steps, taped] }), stops, false)).not.toContain('stays');
});
