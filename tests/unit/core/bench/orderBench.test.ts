import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import exampleShow from '../../../../shared/samples/example.evenhang.json?raw';
import type { BenchPlan, Cut } from '../../../../src/core/bench/benchPlan.ts';
import { benchWays } from '../../../../src/core/settings/bench.ts';
import { orderBench } from '../../../../src/core/bench/orderBench.ts';
import { toMm } from '../../../../src/core/length/length.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import { readShowFile } from '../../../../src/files/showFile.ts';
import { runs } from '../../../soak.ts';

const kinds = ['straight edge', 'guide', 'guide and stops'] as const;

/** The bench of some rows, each as typed; boards A of 1.4 mm and B of 2.2 mm are in stock. */
function benchOf(typed: readonly Row['typed'][], bench: unknown, more: Readonly<Record<string, unknown>> = {}) {
	const board = { kind: 'sheet', width: 1200, height: 900 };
	const { settings, problems } = readSettings({
		mountSize: '600 x 450 mm',
		border: 70,
		bottomWeight: '12%',
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

const cutText = ({ row, copy, part, side }: Cut) => `${row} ${copy} ${part} ${side}`;
const cutsOf = ({ steps }: BenchPlan) => steps.flatMap(({ cuts }) => cuts.map(cutText));

/** Changes counted again from the steps. */
const counted = ({ steps }: BenchPlan) =>
	steps.reduce(
		(sum, step, place) =>
			sum +
			[step.guide, step.start, step.end].filter((value, device) => {
				const last = steps[place - 1];
				return value !== undefined && value !== (last && [last.guide, last.start, last.end][device]);
			}).length,
		0,
	);

const typedRow = fc.record(
	{
		shape: fc.constantFrom('3:2', '2:3', '1:1', '4:5'),
		'picture width': fc.integer({ min: 200, max: 520 }).map(String),
		copies: fc.constantFrom('1', '1', '2', '3'),
		board: fc.constantFrom('A', 'B'),
		'inner mount': fc.constantFrom('', '', '6', '2'),
	},
	{ requiredKeys: ['shape', 'board'] },
);

test('every cut of every mount comes exactly once, on every bench and either way', () =>
	fc.assert(
		fc.property(
			fc.array(typedRow, { maxLength: 8 }),
			fc.constantFrom(...kinds),
			fc.constantFrom(...benchWays),
			(typed, kind, way) => {
				const { results, plan } = benchOf(typed, { kind, way });
				const expected = results.flatMap(({ isStopped, copies, read }, index) =>
					isStopped
						? []
						: Array.from({ length: copies }, (_, copy) => copy + 1).flatMap((copy) =>
								['mount', ...(read.cells.innerMount ? ['inner mount'] : [])].flatMap((part) =>
									['top', 'bottom', 'left', 'right'].map((side) => `${index + 1} ${copy} ${part} ${side}`),
								),
							),
				);
				expect(cutsOf(plan).sort()).toEqual(expected.sort());
				expect(plan.changes).toBe(counted(plan));
				expect(plan.changes).toBe(plan.changesOfWays[way]);
				expect(plan.leastChanges).toBeLessThanOrEqual(plan.changes);
				expect(plan.proven).toBe(plan.leastChanges === plan.changes);
				// With a guide alone the widest comes first in each thickness, which may ask one more where two meet.
				const isWidestFirst = plan.steps.every(({ start, isTaped }) => start === undefined && !isTaped);
				const meetings = new Set(plan.steps.map(({ thickness }) => thickness)).size - 1;
				expect(plan.changesOfWays['fewest settings']).toBeLessThanOrEqual(
					plan.changesOfWays['mount by mount'] + (isWidestFirst ? Math.max(0, meetings) : 0),
				);
				plan.stepsOfRows.forEach((own, index) =>
					expect(own).toEqual(
						plan.steps.flatMap(({ cuts }, place) => (cuts.some(({ row }) => row === index + 1) ? [place + 1] : [])),
					),
				);
			},
		),
		{ numRuns: runs(8, 3000) },
	));

test('with a guide each setting of a thickness comes once, widest first', () =>
	fc.assert(
		fc.property(fc.array(typedRow, { maxLength: 12 }), fc.constantFrom('straight edge', 'guide'), (typed, kind) => {
			const { plan } = benchOf(typed, { kind, inner: 'own blank' });
			for (const [place, step] of plan.steps.entries()) {
				const last = plan.steps[place - 1];
				if (last === undefined) continue;
				expect([step.thickness! > last.thickness!, step.guide < last.guide]).toContain(true);
				if (step.thickness === last.thickness) expect(step.guide).toBeLessThan(last.guide);
				else expect(step.thickness).toBeGreaterThan(last.thickness!);
			}
		}),
		{ numRuns: runs(8, 3000) },
	));

test('mount by mount no mount is begun before the last is finished', () =>
	fc.assert(
		fc.property(fc.array(typedRow, { maxLength: 8 }), fc.constantFrom(...kinds), (typed, kind) => {
			const { plan } = benchOf(typed, { kind, way: 'mount by mount' });
			const mounts = cutsOf(plan).map((text) => text.replace(/ \w+$/, ''));
			const runs = mounts.filter((mount, place) => mount !== mounts[place - 1]).length;
			expect(runs).toBe(new Set(mounts).size);
		}),
		{ numRuns: runs(8, 3000) },
	));

describe('what is set', () => {
	const step = (plan: BenchPlan, side: string) => plan.steps.find(({ cuts }) => cuts.some((cut) => cut.side === side))!;
	const lengths = ({ guide, start, end }: BenchPlan['steps'][number]) =>
		[guide, start, end].map((value) => value && toMm(value));

	test('the stops are the borders at the ends of the cut less the overcut; left and right change them about', () => {
		// shape 3:2 in 600 x 450 mm: side 72, top 70, bottom 78
		const { plan } = benchOf([{ shape: '3:2' }], { kind: 'guide and stops', overcut: 2 });
		expect(lengths(step(plan, 'left'))).toEqual([72, 68, 76]);
		expect(lengths(step(plan, 'right'))).toEqual([72, 76, 68]);
		expect(lengths(step(plan, 'top'))).toEqual([70, 70, 70]);
		expect(lengths(step(plan, 'bottom'))).toEqual([78, 70, 70]);
		// by hand: 78/70/70, then 70 (1), then 72/68/76 (3), then 76/68 (2); any other order has no fewer
		expect(plan).toMatchObject({ changes: 9, leastChanges: 9, proven: true });
	});

	test('without an overcut of its own a cut runs over by the thickness of the board', () => {
		const { plan } = benchOf([{ shape: '3:2', board: 'B' }], 'guide and stops');
		expect(lengths(step(plan, 'left'))).toEqual([72, 67.8, 75.8]);
	});

	test('a guide that reads 65 and cuts 64.5 is set wider by what it cuts short', () => {
		const { plan } = benchOf([{ shape: '3:2' }], { kind: 'guide', correction: -0.5 });
		expect(plan.steps.map(({ guide, border }) => [toMm(guide), toMm(border)])).toEqual([
			[78.5, 78],
			[72.5, 72],
			[70.5, 70],
		]);
	});

	test('the pencil line of a straight edge stays where the window is', () => {
		const { plan } = benchOf([{ shape: '3:2' }], { kind: 'straight edge', correction: -0.5 });
		expect(plan.steps.map(({ guide }) => toMm(guide))).toEqual([78, 72, 70]);
	});

	const onOwnBlank = { kind: 'guide', inner: 'own blank' };
	test('an inner mount on its own blank is set by that, and comes behind the outer ones of its step', () => {
		// its blank is 3 mm smaller a side: what shows 3 mm of it is set like the outer mount
		const { plan } = benchOf([{ shape: '3:2', 'inner mount': '3' }, { shape: '3:2' }], onOwnBlank);
		const parts = plan.steps.map(({ guide, cuts }) => [toMm(guide), cuts.map(({ row, part }) => `${row} ${part}`)]);
		expect(parts.find(([guide]) => guide === 78)).toEqual([78, ['1 mount', '2 mount', '1 inner mount']]);
		const { plan: wider } = benchOf([{ shape: '3:2', 'inner mount': '8' }], onOwnBlank);
		const inner = wider.steps.filter(({ cuts }) => cuts.some(({ part }) => part === 'inner mount'));
		const outer = wider.steps.filter(({ cuts }) => cuts.some(({ part }) => part === 'mount'));
		const sums = (steps: typeof inner) => steps.map(({ border }) => toMm(border));
		expect(sums(inner)).toEqual(sums(outer).map((border) => border + 8 - 3));
	});

	test('thinner board first, whatever its settings', () => {
		const { plan } = benchOf(
			[
				{ shape: '3:2', board: 'B' },
				{ shape: '1:1', board: 'A' },
			],
			'guide',
		);
		expect(plan.steps.map(({ thickness, guide }) => [toMm(thickness!), toMm(guide)])).toEqual([
			[1.4, 149],
			[1.4, 78],
			[1.4, 70],
			[2.2, 78],
			[2.2, 72],
			[2.2, 70],
		]);
	});
});

test.each([
	{ bench: { kind: 'straight edge', inner: 'own blank' }, steps: 20, changes: 20, least: 20, mountByMount: 52 },
	{ bench: { kind: 'guide', inner: 'own blank' }, steps: 20, changes: 20, least: 20, mountByMount: 52 },
	{ bench: { kind: 'guide and stops', inner: 'own blank' }, steps: 59, changes: 84, least: 84, mountByMount: 177 },
	// No setting is visited twice for the taping: each is come to when the outer windows that it waits for are cut.
	{ bench: { kind: 'straight edge' }, steps: 23, changes: 21, least: 21, mountByMount: 52 },
	{ bench: { kind: 'guide' }, steps: 23, changes: 21, least: 21, mountByMount: 52 },
	{ bench: { kind: 'guide and stops' }, steps: 60, changes: 88, least: 88, mountByMount: 181 },
])(
	'the example show on the bench $bench: $changes changes, $least at least',
	({ bench, steps, changes, least, mountByMount }) => {
		const file = readShowFile(exampleShow);
		if ('problem' in file) throw new Error(file.problem);
		const { settings } = readSettings({ ...file.value.settings, bench });
		const results = file.value.rows.map((row) => judgeRow(row, settings));
		const plan = orderBench(file.value.rows, results, settings);
		expect(plan.steps).toHaveLength(steps);
		expect(plan).toMatchObject({ changes, leastChanges: least, proven: changes === least });
		expect(plan.changesOfWays['mount by mount']).toBe(mountByMount);
	},
);

test('rows with a stop, without a window or without a mount are left out', () => {
	const { plan } = benchOf([{ shape: '3:2', mount: 'none' }, { 'picture width': '3o0' }], 'guide');
	expect(plan).toMatchObject({ changes: 0, leastChanges: 0, proven: true, steps: [], stepsOfRows: [[], []] });
});
