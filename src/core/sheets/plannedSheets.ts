import type { CutSheet } from '../show/cutSheet.ts';
import type { BoardPlan } from './boardPlan.ts';
import { jobKey } from './jobKey.ts';
import type { JobOptions, ShowJobs } from './jobsOf.ts';
import { layoutOf } from './layout.ts';
import { beginSheet } from './markSheets.ts';
import { stockKey } from '../stock/stock.ts';
import type { PackingJob } from './packingJob.ts';

/** A plan of one board that is shown, and what it was made for. */
export interface PlannedBoard {
	/** The key of the job that it was made for. */
	readonly key: string;
	readonly job: PackingJob;
	readonly plan: BoardPlan;
	/**
	 * What it cuts, the sheets that were cut before it was made left out. A sheet keeps its name when the knife begins it,
	 * so the plan stands.
	 */
	readonly sheets: readonly CutSheet[];
	/** Whether it was made for rows, settings or sheets that have changed since. */
	readonly isOld: boolean;
}

/** A plan as it is shown. @param makeId names each of its sheets */
export const plannedBoard = (job: PackingJob, plan: BoardPlan, makeId: () => string): PlannedBoard => ({
	key: jobKey(job),
	job,
	plan,
	sheets: plan.layouts.filter(({ isCut }) => !isCut).map((layout) => beginSheet(layout, makeId())),
	isOld: false,
});

/** What has to be planned again, and what stands. */
export interface Replanning {
	/** Plans of boards that still have something to cut or to say, old ones marked. */
	readonly boards: readonly (PlannedBoard | { readonly job: PackingJob })[];
	/** The jobs of those that are old or have none. */
	readonly jobs: readonly PackingJob[];
	readonly leftOut: ShowJobs['leftOut'];
}

/**
 * Which plans stand, found out in short steps. A sheet that was begun as its plan has it changes nothing: the plan is as good as it was. One that
 * was spoilt, or cut from an earlier plan, is planned round.
 * @param jobsFor the jobs of the show as it is, with these sheets cut
 */
export function* replanning(
	planned: readonly PlannedBoard[],
	cutSheets: readonly CutSheet[],
	jobsFor: (cutSheets: Required<JobOptions>['cutSheets']) => Generator<void, ShowJobs>,
): Generator<void, Replanning> {
	const own = new Set(planned.flatMap(({ sheets }) => sheets.map(({ id }) => id)));
	const others = cutSheets.filter(({ id, isSpoilt }) => isSpoilt || !own.has(id));
	const { jobs, leftOut } = yield* jobsFor(cutSheets.map(layoutOf));
	const asPlanned = others.length === cutSheets.length ? { jobs } : yield* jobsFor(others.map(layoutOf));
	const standing = new Set(asPlanned.jobs.map(jobKey));
	const boards = jobs.map((job) => {
		const before = planned.find(({ plan }) => stockKey(plan) === stockKey(job));
		if (before === undefined) return { job };
		return { ...before, isOld: !standing.has(before.key) };
	});
	const wanted = jobs.filter((_, place) => {
		const board = boards[place]!;
		return !('plan' in board) || board.isOld;
	});
	return { boards, jobs: wanted, leftOut };
}
