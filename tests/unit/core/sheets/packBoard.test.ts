import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import type { BoardPlan } from '../../../../src/core/sheets/boardPlan.ts';
import type { LinearSolver } from '../../../../src/core/values/linearSolver.ts';
import { packBoard } from '../../../../src/core/sheets/packBoard.ts';
import { packBoards } from '../../../../src/core/sheets/packBoards.ts';
import type { PackingJob } from '../../../../src/core/sheets/packingJob.ts';
import { proofWords, unplacedWords } from '../../../../src/core/sheets/planWords.ts';
import { openHighs } from '../../../../src/solver/openHighs.ts';
import { checkPlan, problemsOfLayout } from './checkLayout.ts';
import { madeUpPricedShow, madeUpShow, wasteless } from './madeUpJobs.ts';
import { jobOf, sheetOf, type SizeMm, workClock } from './packingOf.ts';
import { runs } from '../../../soak.ts';

let openProgram: LinearSolver;
beforeAll(async () => {
	openProgram = await openHighs();
});

const sheet = sheetOf(1120, 815);

/** Plans with a clock that counts work, and checks the plan. */
function plan(job: PackingJob, askings = 2000): BoardPlan {
	const made = packBoard(job, { openProgram, secondsLeft: workClock(askings) });
	checkPlan(made, job);
	return made;
}

describe('known counts', () => {
	test.each<{ sizes: SizeMm[]; count: number; because: string }>([
		{ sizes: [[500, 400, 30]], count: 8, because: 'four to a sheet' },
		{ sizes: [[600, 500, 32]], count: 16, because: 'two to a sheet' },
		{
			sizes: [
				[700, 500, 12],
				[350, 280, 10],
				[250, 200, 14],
			],
			count: 8,
			because: 'two large ones leave no room',
		},
		{
			sizes: [
				[500, 400, 12],
				[400, 300, 10],
				[600, 500, 8],
			],
			count: 8,
			because: 'three sizes',
		},
		{ sizes: [[1120, 815, 2]], count: 2, because: 'a whole sheet each' },
	])('$sizes on 1120 × 815 takes $count: $because', ({ sizes, count }) => {
		expect(plan(jobOf([sheet], sizes))).toMatchObject({ count, leastCount: count, proven: true, unplaced: [] });
	});

	test('sheets cut without waste are found again, and no proof says otherwise', () => {
		const seeds = Array.from({ length: runs(1, 100) }, (_, index) => index + 1);
		const found = seeds.filter((seed) => {
			const { job, count } = wasteless(seed);
			const made = plan(job, 4000);
			expect(made.leastCount).toBeLessThanOrEqual(count);
			expect(made.count).toBeGreaterThanOrEqual(count);
			return made.count === count;
		});
		expect(found.length).toBeGreaterThanOrEqual(runs(1, 80));
	});

	test('made-up shows of 30 blanks in one to eight sizes are nearly all proven', () => {
		const seeds = Array.from({ length: runs(1, 40) }, (_, index) => index + 1);
		const proven = (make: (seed: number) => PackingJob) => seeds.filter((seed) => plan(make(seed)).proven).length;
		expect(proven(madeUpShow)).toBeGreaterThanOrEqual(runs(1, 36));
		expect(proven(madeUpPricedShow)).toBeGreaterThanOrEqual(runs(1, 32));
	});
});

describe('stock', () => {
	test('the cheaper mix is bought, in whole packs', () => {
		const small = sheetOf(500, 400, { price: 500 });
		const packed = sheetOf(1000, 400, { price: 1700, pack: 2 }); // two to a sheet, four to a pack
		const made = plan(jobOf([small, packed], [[500, 400, 5]]));
		expect(made).toMatchObject({ cost: 2200, leastCost: 2200, count: 3, leastCount: 3, proven: true });
	});

	test('offcuts go before sheets, whether or not a price is known', () => {
		const offcut = sheetOf(520, 420, { kind: 'offcut', price: 0, count: 2 });
		for (const price of [undefined, 900]) {
			const made = plan(jobOf([sheetOf(1000, 400, { price }), offcut], [[500, 400, 4]]));
			expect(made.layouts.filter(({ stock }) => stock.kind === 'offcut')).toHaveLength(2);
			expect(made).toMatchObject({ count: 3, leastCount: 3, proven: true });
		}
	});

	test('dozens of different offcuts are made use of, though nothing is proven', () => {
		const offcuts = Array.from({ length: 30 }, (_, place) =>
			sheetOf(410 + 3 * place, 305 + 2 * place, { kind: 'offcut', price: 0, count: 1 }),
		);
		const bought = (job: PackingJob) => plan(job, 300).layouts.filter(({ stock }) => stock.kind === 'sheet').length;
		const sizes: SizeMm[] = [
			[400, 300, 30],
			[500, 400, 4],
		];
		expect(bought(jobOf([sheet, ...offcuts], sizes))).toBe(1);
		expect(bought(jobOf([sheet], sizes))).toBeGreaterThan(4);
	});

	test('a ready-cut blank is used as it is, and gives nothing smaller', () => {
		const ready = sheetOf(500, 400, { kind: 'blank', price: 100, count: 2 });
		const made = plan(jobOf([sheetOf(1120, 815, { price: 900 }), ready], [[400, 500, 2]]));
		expect(made).toMatchObject({ cost: 200, proven: true });
		expect(made.layouts.filter(({ stock }) => stock === ready).map(({ cuts }) => cuts)).toEqual([[], []]);
		expect(plan(jobOf([ready], [[300, 200, 1]])).unplaced).toMatchObject([{ reason: 'too-large' }]);
	});

	test('along the grain a blank is turned or has no place', () => {
		const grained = sheetOf(600, 450, { grain: 'height' });
		expect(plan(jobOf([grained], [[400, 300, 1]])).layouts[0]!.blanks[0]).toMatchObject({ turned: true });
		expect(plan(jobOf([grained], [[500, 300, 1]])).unplaced).toMatchObject([{ reason: 'too-large' }]);
	});

	test('the factory edge is taken off first', () => {
		const trimmed = sheetOf(1010, 410, { trim: mm(5) });
		const made = plan(jobOf([trimmed], [[500, 400, 2]]));
		expect(made.layouts[0]!.cuts.slice(0, 4).map(({ at }) => at)).toEqual([mm(5), mm(1000), mm(5), mm(400)]);
	});

	test('sheets that are cut stay, their packs are open and their cost counts', () => {
		const packed = sheetOf(1000, 400, { price: 1700, pack: 3 });
		const [cut] = plan(jobOf([packed], [[500, 400, 2]])).layouts;
		const job = { ...jobOf([packed], [[500, 400, 4]]), cutSheets: [{ ...cut!, isCut: true }] };
		const made = packBoard(job, { openProgram, secondsLeft: workClock(500) });
		expect(made.layouts[0]).toEqual({ ...cut, isCut: true });
		expect(made).toMatchObject({ cost: 1700, leastCost: 1700, count: 3, leastCount: 3, proven: true });
	});
});

describe('what cannot be done is said in a sentence', () => {
	const words = (job: PackingJob) => {
		const made = plan(job, 500);
		return [proofWords(made), ...unplacedWords(made, { unit: 'mm', ruler: mm(1) }).map(({ sentence }) => sentence)];
	};
	test('no stock', () => {
		expect(words(jobOf([], [[500, 400, 2]]))).toEqual([
			'Nothing can be cut.',
			'2 blanks of 500 × 400 mm: there is no “Chalk” in stock. Add it to the boards.',
		]);
	});
	test('a blank larger than every sheet; the others are planned', () => {
		const job = jobOf(
			[sheet],
			[
				[1200, 400, 1],
				[500, 400, 4],
			],
		);
		expect(words(job)[1]).toBe(
			'One blank of 1200 × 400 mm: no sheet or ready-cut blank of “Chalk” gives this size. Add a larger one, or another board.',
		);
		expect(plan(job)).toMatchObject({ count: 1, proven: true });
	});
	test('stock too small', () => {
		const job = jobOf([sheetOf(1120, 815, { count: 2 })], [[500, 400, 11]]);
		expect(words(job)[1]).toBe(
			'3 blanks of 500 × 400 mm: the “Chalk” in stock is used up. To buy more, add it to the list once more, with “In stock” left blank.',
		);
	});
	test('nothing to cut', () => {
		expect(words(jobOf([sheet], [[500, 400, 0]]))).toEqual(['There is nothing to cut.']);
	});
});

describe('any job', () => {
	const size = fc.tuple(
		fc.integer({ min: 40, max: 900 }),
		fc.integer({ min: 40, max: 900 }),
		fc.integer({ min: 1, max: 6 }),
	);
	const stock = fc.record({
		width: fc.integer({ min: 300, max: 1600 }),
		height: fc.integer({ min: 300, max: 1200 }),
		price: fc.option(fc.integer({ min: 0, max: 3000 }), { nil: undefined }),
		pack: fc.integer({ min: 1, max: 5 }),
		count: fc.option(fc.integer({ min: 0, max: 9 }), { nil: undefined }),
		grain: fc.constantFrom(undefined, 'width' as const, 'height' as const),
		trim: fc.constantFrom(mm(0), mm(5)),
	});
	test('gets a plan in which nothing overlaps, all lies inside and every cut goes edge to edge', () => {
		fc.assert(
			fc.property(
				fc.array(stock, { minLength: 1, maxLength: 3 }),
				fc.array(size, { maxLength: 8 }),
				(entries, sizes) => {
					plan(
						jobOf(
							entries.map(({ width, height, ...more }) => sheetOf(width, height, more)),
							sizes,
						),
						100,
					);
				},
			),
			{ numRuns: runs(25, 2000) },
		);
	});

	test('of 500 blanks has a plan at once', () => {
		const job = jobOf(
			[sheet],
			Array.from({ length: 50 }, (_, index): SizeMm => [200 + 7 * index, 150 + 5 * index, 10]),
		);
		expect(plan(job, 1).layouts.length).toBeGreaterThan(50);
		expect(plan(job, 20).unplaced).toEqual([]);
	});

	test('tells better plans only, the first before any time is taken', () => {
		const told: BoardPlan[] = [];
		const job = madeUpShow(5);
		packBoard(job, { openProgram, secondsLeft: workClock(1000), onPlan: (made) => told.push(made) });
		for (const [index, next] of told.slice(1).entries()) {
			expect(next.count).toBeLessThanOrEqual(told[index]!.count);
			expect(next.leastCount).toBeGreaterThanOrEqual(told[index]!.leastCount);
		}
		expect(packBoard(job, { openProgram, secondsLeft: () => 0 }).layouts).toEqual(told[0]!.layouts);
	});

	test('is planned beside others, each in its place', () => {
		const jobs = [madeUpShow(1), madeUpShow(2), jobOf([], [[1, 1, 1]])];
		const told = new Set<number>();
		const plans = packBoards(jobs, {
			openProgram,
			secondsLeft: workClock(3000),
			onPlan: (_, place) => told.add(place),
		});
		expect([...told].sort()).toEqual([0, 1, 2]);
		for (const [place, made] of plans.entries()) checkPlan(made, jobs[place]!);
	});
});

test('the checker sees what is wrong', () => {
	const [layout] = plan(jobOf([sheet], [[500, 400, 4]])).layouts;
	const size = { width: sheet.width, height: sheet.height };
	expect(problemsOfLayout(size, layout!)).toEqual([]);
	expect(problemsOfLayout(size, { ...layout!, cuts: layout!.cuts.slice(1) })).not.toEqual([]);
	expect(problemsOfLayout(size, { ...layout!, cuts: layout!.cuts.slice(0, -1) })).not.toEqual([]);
	const [first, ...others] = layout!.blanks;
	expect(problemsOfLayout(size, { ...layout!, blanks: [first!, first!, ...others] })).not.toEqual([]);
	const shifted = { ...first!, x: first!.x + 1 };
	expect(problemsOfLayout(size, { ...layout!, blanks: [shifted, ...others] })).not.toEqual([]);
});
