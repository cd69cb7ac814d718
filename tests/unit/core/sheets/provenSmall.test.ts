import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import type { LinearSolver } from '../../../../src/core/values/linearSolver.ts';
import { packBoard } from '../../../../src/core/sheets/packBoard.ts';
import type { Stock } from '../../../../src/core/stock/stock.ts';
import { openHighs } from '../../../../src/solver/openHighs.ts';
import { checkPlan } from './checkLayout.ts';
import { bestByLookingAtAll } from './exhaustive.ts';
import { jobOf, sheetOf, workClock } from './packingOf.ts';
import { runs } from '../../../soak.ts';

let openProgram: LinearSolver;
beforeAll(async () => {
	openProgram = await openHighs();
});

const side = fc.integer({ min: 1, max: 7 });
const entry = fc.record({
	width: fc.integer({ min: 5, max: 10 }),
	height: fc.integer({ min: 4, max: 9 }),
	price: fc.integer({ min: 0, max: 9 }),
	pack: fc.integer({ min: 1, max: 3 }),
	count: fc.option(fc.integer({ min: 0, max: 3 }), { nil: undefined }),
	grain: fc.constantFrom<Stock['grain']>(undefined, undefined, 'width', 'height'),
	kind: fc.constantFrom<Stock['kind']>('sheet', 'sheet', 'sheet', 'blank', 'offcut'),
	trim: fc.constantFrom(0, 0, 0, 1),
});
const stockOf = ({ width, height, trim, ...rest }: typeof entry extends fc.Arbitrary<infer Entry> ? Entry : never) =>
	sheetOf(width, height, {
		...rest,
		trim: mm(rest.kind === 'sheet' ? trim : 0),
		...(rest.kind === 'offcut' && { price: 0 }),
	});

test('what is proven is what looking at every plan finds, small jobs of one to three entries of stock', () => {
	let proven = 0;
	let jobs = 0;
	fc.assert(
		fc.property(
			fc.array(entry, { minLength: 1, maxLength: 3 }),
			fc.array(fc.tuple(side, side, fc.integer({ min: 1, max: 2 })), { minLength: 1, maxLength: 4 }),
			(entries, sizes) => {
				const all = jobOf(entries.map(stockOf), sizes);
				const job = { ...all, blanks: all.blanks.slice(0, 6) };
				const plan = packBoard(job, { openProgram, secondsLeft: workClock(300) });
				checkPlan(plan, job);
				const best = bestByLookingAtAll(job);
				expect(plan.unplaced.length > 0).toBe(best === undefined);
				if (best === undefined) return;
				jobs++;
				if (plan.proven) {
					proven++;
					expect({ cost: plan.cost, count: plan.count }).toEqual(best);
				}
				expect(plan.leastCost).toBeLessThanOrEqual(best.cost);
				if (best.cost === plan.cost) expect(plan.leastCount).toBeLessThanOrEqual(best.count);
			},
		),
		{ numRuns: runs(30, 5000) },
	);
	expect(proven).toBeGreaterThanOrEqual(0.97 * jobs);
	expect(jobs).toBeGreaterThanOrEqual(runs(15, 2500));
});
