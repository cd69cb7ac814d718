import type { RowResult } from '../findings/rowResult.ts';
import type { BenchWay } from '../settings/bench.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
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
	const cutsAt = (_: Row, index: number) => {
		const result = results[index];
		return result ? cutsOf(result, index + 1, settings) : [];
	};
	// Of outer mounts, then of inner ones, each in the order of the show, in which they come.
	const bySetUp = new Map<string, BenchStep & { readonly cuts: Cut[]; readonly inner: Cut[] }>();
	for (const [index, row] of rows.entries())
		for (const { key, setUp, cut } of cutsAt(row, index)) {
			let own = bySetUp.get(key);
			if (!own) bySetUp.set(key, (own = { ...setUp, cuts: [], inner: [] }));
			own[cut.part === 'inner mount' ? 'inner' : 'cuts'].push(cut);
		}
	for (const { cuts, inner } of bySetUp.values()) for (const cut of inner) cuts.push(cut);
	const job = orderJob([...bySetUp.values()]);
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
		'mount by mount': once(() => stepsAlong(mountByMount(rows.flatMap(cutsAt), job))),
	};
	const steps = ways[settings.bench.way ?? 'fewest settings']();
	const changes = changesAlong(steps);
	const ofRows = once(() => stepsOfRows(rows, steps));
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
		get stepsOfRows() {
			return ofRows();
		},
	};
}

function once<Value>(make: () => Value): () => Value {
	let made: { readonly value: Value } | undefined;
	return () => (made ??= { value: make() }).value;
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
	return own.map((places) => [...places]); // a list that was pushed to keeps spare room
}
