import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BenchPlan } from '../../../../src/core/bench/benchPlan.ts';
import { benchWays } from '../../../../src/core/settings/bench.ts';
import { orderBench } from '../../../../src/core/bench/orderBench.ts';
import { orderJob } from '../../../../src/core/bench/orderJob.ts';
import { stationsOf } from '../../../../src/core/bench/stations.ts';
import { toMm } from '../../../../src/core/length/length.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { jobsOf } from '../../../../src/core/sheets/jobsOf.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import { runs } from '../../../soak.ts';

const kinds = ['straight edge', 'guide', 'guide and stops'] as const;
const board = { kind: 'sheet', width: 1200, height: 900 };

function benchOf(typed: readonly Row['typed'][], bench: object, more: object = {}) {
	const { settings, problems } = readSettings({
		...{ mountSize: '600 x 450 mm', border: 70, bottomWeight: '12%' },
		boards: [
			{ ...board, name: 'A', thickness: 1.4 },
			{ ...board, name: 'B', thickness: 2.2 },
		],
		bench,
		...more,
	});
	expect(problems).toEqual([]);
	const rows = typed.map((each, index): Row => ({ id: `${index}`, order: index + 1, typed: each }));
	const results = rows.map((row) => judgeRow(row, settings));
	return { rows, results, settings, plan: orderBench(rows, results, settings) };
}

const typedRow = fc.record(
	{
		shape: fc.constantFrom('3:2', '1:1'),
		'picture width': fc.constantFrom('300', '320', '332'),
		copies: fc.constantFrom('1', '2'),
		board: fc.constantFrom('A', 'B'),
		'inner mount': fc.constantFrom('', '6', '5', '10'),
		'inner board': fc.constantFrom('', 'A', 'B'),
	},
	{ requiredKeys: ['shape', 'board'] },
);

/** Steps in which a mount's cuts come. */
const placesOf = ({ steps }: BenchPlan, row: number, copy: number, part: string) =>
	steps.flatMap(({ cuts }, place) =>
		cuts.some((cut) => cut.row === row && cut.copy === copy && cut.part === part) ? [place] : [],
	);

/**
 * The fewest changes of any order in which each inner window comes after its own outer one and thicknesses are visited as
 * seldom as can be: by going through the cuts themselves, all that can be made at a setting when it is set.
 */
function fewestAfterOuter(plan: BenchPlan): number {
	const cuts = plan.steps.flatMap((step) =>
		step.cuts.map((cut) => ({ ...cut, set: [step.guide, step.start, step.end], thickness: step.thickness })),
	);
	const nameOf = ({ row, copy }: (typeof cuts)[number]) => `${row} ${copy}`;
	const visit = 1000;
	let fewest = Infinity;
	const seen = new Map<string, number>();
	const go = (last: (typeof cuts)[number] | undefined, left: typeof cuts, cost: number) => {
		if (cost >= fewest) return;
		if (left.length === 0) {
			fewest = cost;
			return;
		}
		const state = `${last?.set.join(' ')}|${last?.thickness}|${left.map((cut) => cuts.indexOf(cut)).join()}`;
		if ((seen.get(state) ?? Infinity) <= cost) return;
		seen.set(state, cost);
		const isSameSetting = (a: (typeof cuts)[number], b: (typeof cuts)[number]) =>
			a.thickness === b.thickness && a.set.every((value, device) => value === b.set[device]);
		const isReady = (cut: (typeof cuts)[number], among: typeof cuts) =>
			cut.part === 'mount' || !among.some((other) => other.part === 'mount' && nameOf(other) === nameOf(cut));
		const ready = left.filter((cut) => isReady(cut, left));
		for (const cut of ready.filter((each, at) => ready.findIndex((other) => isSameSetting(other, each)) === at)) {
			const afterOuter = left.filter((other) => other.part !== 'mount' || !isSameSetting(other, cut));
			const rest = afterOuter.filter((other) => !isSameSetting(other, cut) || !isReady(other, afterOuter));
			const set = cut.set.filter((value, device) => value !== undefined && value !== last?.set[device]).length;
			go(cut, rest, cost + set + (last && last.thickness !== cut.thickness ? visit : 0));
		}
	};
	go(undefined, cuts, 0);
	return fewest % visit;
}

test('taped inner windows come after their outer ones with the fewest changes, on every bench and either way', () => {
	let counted = 0;
	fc.assert(
		fc.property(
			fc.array(typedRow, { minLength: 1, maxLength: 3 }),
			fc.constantFrom(...kinds),
			fc.constantFrom(...benchWays),
			(typed, kind, way) => {
				const { results, plan } = benchOf(typed, { kind, way });
				results.forEach(({ read, copies, isStopped }, index) => {
					if (!read.cells.innerMount || isStopped) return;
					for (let copy = 1; copy <= copies; copy++) {
						const outer = placesOf(plan, index + 1, copy, 'mount');
						const inner = placesOf(plan, index + 1, copy, 'inner mount');
						expect(Math.min(...inner)).toBeGreaterThan(Math.max(...outer));
					}
				});
				if (orderJob(plan.steps).setUps.length > 10 || !plan.steps.some(({ isTaped }) => isTaped)) return;
				counted++;
				const fewest = fewestAfterOuter(plan);
				expect(plan.leastChanges).toBe(fewest);
				if (way === 'fewest settings') expect(plan.changes).toBe(fewest);
				else expect(plan.changes).toBeGreaterThanOrEqual(fewest);
			},
		),
		{ numRuns: runs(15, 4000) },
	);
	expect(counted).toBeGreaterThan(runs(4, 1200));
});

describe('what is set for an inner mount', () => {
	const sums = ({ steps }: BenchPlan, part: string) =>
		steps.filter(({ cuts }) => cuts.some((cut) => cut.part === part)).map(({ guide }) => toMm(guide));

	test('taped: the border of the outer one and what shows; on its own blank less what that is smaller', () => {
		const row = { shape: '3:2', 'inner mount': '8' };
		expect(sums(benchOf([row], { kind: 'guide' }).plan, 'inner mount')).toEqual([78, 86, 84]);
		expect(sums(benchOf([row], { kind: 'guide', inner: 'own blank' }).plan, 'inner mount')).toEqual([83, 81, 75]);
	});

	test('taped with end stops, the edges are those of the outer mount', () => {
		const bench = { kind: 'guide and stops', overcut: 2, endStop: 'from the start' };
		const of = (inner: string) => {
			const { plan } = benchOf([{ shape: '3:2', 'inner mount': '8' }], { ...bench, inner });
			const { guide, start, end } = plan.steps.find(({ cuts }) =>
				cuts.some(({ part, side }) => part === 'inner mount' && side === 'left'),
			)!;
			return [guide, start!, end!].map(toMm);
		};
		// side 76, top 70, bottom 78 of the outer one of 450; the own blank is 3 mm smaller a side
		expect(of('taped')).toEqual([84, 76, 450 - 86 + 2]);
		expect(of('own blank')).toEqual([81, 73, 444 - 83 + 2]);
	});

	test('its board gives the thickness, with a test cut, and the blank is cut from it', () => {
		const { rows, results, settings, plan } = benchOf([{ shape: '3:2', 'inner mount': '8', 'inner board': 'b' }], {
			kind: 'guide',
		});
		expect(plan.steps.map(({ thickness }) => toMm(thickness!))).toEqual([1.4, 1.4, 1.4, 2.2, 2.2, 2.2]);
		const { jobs } = jobsOf(rows, results, settings);
		expect(jobs.map((job) => [job.board, job.blanks.map(({ part }) => part)])).toEqual([
			['A', ['mount']],
			['B', ['inner mount']],
		]);
		const keys = stationsOf(plan.steps, settings.bench).map(({ key }) => key);
		expect(new Set(keys).size).toBe(keys.length);
	});

	test('thicknesses that wait for each other: one is visited again, with a test cut of its own name', () => {
		const rows = [
			{ shape: '3:2', board: 'A', 'inner mount': '8', 'inner board': 'B' },
			{ shape: '3:2', board: 'B', 'inner mount': '8', 'inner board': 'A' },
		];
		const { plan, settings } = benchOf(rows, { kind: 'guide' });
		const stations = stationsOf(plan.steps, settings.bench);
		const thicknesses = stations.flatMap((each) => (each.kind === 'test cut' ? [toMm(each.thickness!)] : []));
		expect(thicknesses).toEqual([1.4, 2.2, 1.4]);
		expect(new Set(stations.map(({ key }) => key)).size).toBe(stations.length);
	});

	test('board of one thickness, outer and taped, comes together where nothing stands in the way', () => {
		const rows = ['A', 'B'].map((board) => ({ shape: '3:2', board, 'inner mount': '8' }));
		const { plan, settings } = benchOf(rows, { kind: 'guide' });
		expect(stationsOf(plan.steps, settings.bench).filter(({ kind }) => kind === 'test cut')).toHaveLength(2);
	});
});

test('the drop-outs of a taped double mount stick to each other, and are no stock', () => {
	const dropOuts = (inner: string) => {
		const row = { 'window width': '400', 'window height': '300', 'inner mount': '8' };
		const { rows, results, settings } = benchOf([row], { inner }, { dropOuts: 'yes' });
		return jobsOf(rows, results, settings).jobs[0]!.stock.filter(({ kind }) => kind === 'drop-out').length;
	};
	expect([dropOuts('taped'), dropOuts('own blank')]).toEqual([0, 2]);
});
