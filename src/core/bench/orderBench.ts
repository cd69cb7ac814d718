import { type Length, minus, plus } from '../length/length.ts';
import type { RowResult } from '../row/rowResult.ts';
import { boardOf } from '../row/stack.ts';
import type { Row } from '../show/row.ts';
import type { Settings } from '../show/settings.ts';
import type { BenchPlan, BenchStep, Cut, CutSide } from './benchPlan.ts';

interface SetCut {
	readonly thickness: Length | undefined;
	readonly guide: Length;
	readonly cut: Cut;
}

/**
 * The cutting order of a guide bench: boards of one thickness together, and in each the cuts by guide setting, widest
 * first, so that every setting is set once. The settings of a thickness are all different, so no order sets the guide
 * less often than once for each, except where one thickness ends at the setting with which the next begins.
 * Rows with a `stop`, and rows without a window, are left out.
 */
export function orderBench(rows: readonly Row[], results: readonly RowResult[], settings: Settings): BenchPlan {
	const cuts = rows.flatMap((row, i) => {
		const result = results[i];
		return result ? cutsOf(row, result, i + 1, settings) : [];
	});
	const steps = stepsOf(cuts);
	const stepsOfRows: number[][] = rows.map(() => []);
	steps.forEach((step, i) => {
		for (const { row } of step.cuts) {
			const own = stepsOfRows[row - 1]!;
			if (own.at(-1) !== i + 1) own.push(i + 1);
		}
	});
	const changes = steps.filter((step, i) => step.guide !== steps[i - 1]?.guide).length;
	return { changes, leastChanges: leastChanges(steps), proven: changes === leastChanges(steps), steps, stepsOfRows };
}

const sides: readonly CutSide[] = ['left', 'right', 'top', 'bottom'];

/** The four cuts of each window of a row; an inner mount's are set by its own, smaller blank. */
function cutsOf(row: Row, result: RowResult, number: number, settings: Settings): SetCut[] {
	const { side, top, bottom, windowWidth, windowHeight } = result.solved;
	if (result.isStopped || side === undefined || top === undefined || bottom === undefined) return [];
	if (windowWidth === undefined || windowHeight === undefined) return [];
	const borders = { left: side, right: side, top, bottom };
	const thickness = boardOf(row, settings)?.thickness;
	const copies = Array.from({ length: result.copies }, (_, i) => i + 1);
	const { innerMount } = result;
	return copies.flatMap((copy) =>
		sides.flatMap((edge) => {
			const outer: SetCut = { thickness, guide: borders[edge], cut: { row: number, copy, part: 'mount', side: edge } };
			if (innerMount === undefined || innerMount === 0) return [outer];
			const guide = minus(plus(borders[edge], innerMount), settings.innerBlankSmaller);
			return [outer, { thickness, guide, cut: { row: number, copy, part: 'inner mount' as const, side: edge } }];
		}),
	);
}

function stepsOf(cuts: readonly SetCut[]): BenchStep[] {
	const steps = new Map<string, { guide: Length; thickness: Length | undefined; cuts: Cut[] }>();
	for (const { thickness, guide, cut } of cuts) {
		const key = `${thickness ?? ''} ${guide}`;
		const step = steps.get(key) ?? { guide, thickness, cuts: [] };
		step.cuts.push(cut);
		steps.set(key, step);
	}
	return [...steps.values()].sort((a, b) => (a.thickness ?? 0) - (b.thickness ?? 0) || b.guide - a.guide);
}

/**
 * Each thickness needs each of its settings once, and where one follows another they may share one: at most once for
 * each further thickness, and for each pair that has a setting in common.
 */
function leastChanges(steps: readonly BenchStep[]): number {
	const byThickness = new Map<Length | undefined, Set<Length>>();
	for (const { thickness, guide } of steps)
		byThickness.set(thickness, (byThickness.get(thickness) ?? new Set()).add(guide));
	const groups = [...byThickness.values()];
	const pairs = groups.flatMap((group, i) =>
		groups.slice(i + 1).filter((other) => [...other].some((guide) => group.has(guide))),
	);
	return steps.length - Math.min(Math.max(groups.length - 1, 0), pairs.length);
}
