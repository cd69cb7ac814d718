import type { RowResult } from '../findings/rowResult.ts';
import type { BenchWay } from '../settings/bench.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { groupBy } from '../values/groupBy.ts';
import type { BenchPlan, BenchStep, Cut } from './benchPlan.ts';
import { fewestSettings, type SetUpOrder } from './fewestSettings.ts';
import { mountByMount } from './mountByMount.ts';
import { type OrderJob, orderJob } from './orderJob.ts';
import { changesAlong, setUpKey } from './setUps.ts';
import { type SetCut, windowCuts } from './windowCuts.ts';

/**
 * The cutting order of a show on its bench, boards of one thickness together, in the way that its settings ask.
 * Rows with a `stop`, and rows without a window, are left out.
 * @param orderOf orders the set-ups; for one that cannot wait for the fewest changes
 * @param cutsOf the cuts of a row; for one that has kept those of rows that are as they were
 */
export function orderBench(
	rows: readonly Row[],
	results: readonly RowResult[],
	settings: Settings,
	orderOf: (job: OrderJob) => SetUpOrder = fewestSettings,
	cutsOf: typeof windowCuts = windowCuts,
): BenchPlan {
	const cuts = rows.flatMap((_, index) => {
		const result = results[index];
		return result ? cutsOf(result, index + 1, settings) : [];
	});
	const bySetUp = new Map(
		[...groupBy(cuts, ({ key }) => key)].map(([key, own]) => [key, { ...own[0]!.setUp, cuts: inOrder(own) }]),
	);
	const asked = [...bySetUp.values()];
	const job = orderJob(asked);
	const { order, leastChanges } = orderOf(job);
	// The way that is not asked is ordered when somebody compares: with thousands of mounts it takes its time.
	const ways: Record<BenchWay, () => readonly BenchStep[]> = {
		'fewest settings': once(() => {
			const steps = order.map((setUp) => ({ ...setUp, cuts: bySetUp.get(setUpKey(setUp))!.cuts }));
			// An order that is not proven may be beaten by finishing each mount by itself.
			const mayBeBeaten = order.some(({ isTaped }) => isTaped) && changesAlong(steps) > leastChanges;
			return mayBeBeaten && changesAlong(ways['mount by mount']()) < changesAlong(steps)
				? ways['mount by mount']()
				: steps;
		}),
		'mount by mount': once(() => stepsAlong(mountByMount(cuts, job))),
	};
	const steps = ways[settings.bench.way ?? 'fewest settings']();
	const changes = changesAlong(steps);
	return {
		changes,
		leastChanges,
		proven: changes === leastChanges,
		changesOfWays: {
			get 'fewest settings'() {
				return changesAlong(ways['fewest settings']());
			},
			get 'mount by mount'() {
				return changesAlong(ways['mount by mount']());
			},
		},
		steps,
		stepsOfRows: stepsOfRows(rows, steps),
	};
}

function once<Value>(make: () => Value): () => Value {
	let made: { readonly value: Value } | undefined;
	return () => (made ??= { value: make() }).value;
}

/** The cuts of a step: outer mounts before inner ones, each in the order of the show, in which they come. */
function inOrder(own: readonly SetCut[]): readonly Cut[] {
	const cuts = own.map(({ cut }) => cut);
	const inner = cuts.filter(({ part }) => part === 'inner mount');
	return inner.length === 0 ? cuts : [...cuts.filter(({ part }) => part !== 'inner mount'), ...inner];
}

/** Cuts that follow each other at one set-up are one step. */
function stepsAlong(cuts: readonly SetCut[]): readonly BenchStep[] {
	const steps: (BenchStep & { readonly cuts: Cut[] })[] = [];
	for (const { setUp, cut } of cuts) {
		const last = steps.at(-1);
		if (last && setUpKey(last) === setUpKey(setUp)) last.cuts.push(cut);
		else steps.push({ ...setUp, cuts: [cut] });
	}
	return steps;
}

function stepsOfRows(rows: readonly Row[], steps: readonly BenchStep[]): readonly (readonly number[])[] {
	const own: number[][] = rows.map(() => []);
	steps.forEach(({ cuts }, place) => {
		for (const { row } of cuts) if (own[row - 1]!.at(-1) !== place + 1) own[row - 1]!.push(place + 1);
	});
	return own;
}
