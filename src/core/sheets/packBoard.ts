import { fewestByArea } from './areaBound.ts';
import type { Blank } from './blank.ts';
import type { BoardPlan, UnplacedBlank, UnplacedReason } from './boardPlan.ts';
import { costOf } from './purchases.ts';
import type { Pattern } from './cutTree.ts';
import { greedyPlan } from './greedyPlan.ts';
import type { PackingJob } from './packingJob.ts';
import { type Problem, problemOf } from './problem.ts';
import { type Stock, waysOf } from './stock.ts';
import { blanksInOrder, treeLayout } from './treeLayout.ts';
import { wasteShareOf } from './waste.ts';

/** What a search is given from outside: core has no clock and no chance of its own. */
export interface PackingTools {
	/** Seconds that the search may still take; asked often. */
	readonly secondsLeft: () => number;
	/** Told each plan that is better than those before, or better known. The first comes at once. */
	readonly onPlan?: (plan: BoardPlan) => void;
}

/** Plans how one board is cut: the plan of least cost, then of fewest sheets, that is found in the time. */
export function packBoard(job: PackingJob, { onPlan }: PackingTools): BoardPlan {
	const { possible, unplaced } = sortOut(job);
	const problem = problemOf(possible);
	const { patterns, leftOver } = greedyPlan(problem);
	const plan = planOf(possible, problem, patterns, [...unplaced, ...usedUp(problem, leftOver)]);
	onPlan?.(plan);
	return plan;
}

/** Takes the blanks out that no piece of the stock gives. */
function sortOut(job: PackingJob): { possible: PackingJob; unplaced: readonly UnplacedBlank[] } {
	const gives = (blank: Blank, stock: Stock) => {
		const { upright, turned } = waysOf(blank, stock);
		return upright || turned;
	};
	const reason: UnplacedReason = job.stock.length === 0 ? 'no-stock' : 'too-large';
	const unplaced = job.blanks
		.filter((blank) => !job.stock.some((stock) => gives(blank, stock)))
		.map((blank) => ({ blank, reason }));
	if (unplaced.length === 0) return { possible: job, unplaced };
	const out = new Set(unplaced.map(({ blank }) => blank));
	return { possible: { ...job, blanks: job.blanks.filter((blank) => !out.has(blank)) }, unplaced };
}

const usedUp = ({ types }: Problem, leftOver: readonly number[]): readonly UnplacedBlank[] =>
	types.flatMap(({ blanks }, type) =>
		blanks.slice(blanks.length - leftOver[type]!).map((blank) => ({ blank, reason: 'used-up' as const })),
	);

function planOf(
	{ board, stock, cutSheets }: PackingJob,
	problem: Problem,
	patterns: readonly Pattern[],
	unplaced: readonly UnplacedBlank[],
): BoardPlan {
	const take = blanksInOrder(problem);
	const layouts = [
		...cutSheets,
		...patterns.map(({ sheet, tree }, index) =>
			treeLayout(tree, problem.sheets[sheet]!.stock, problem.scale, take, cutSheets.length + index + 1),
		),
	];
	const cost = costOf(layouts, stock);
	const leastCount = cutSheets.length + (unplaced.length > 0 ? 0 : fewestByArea(problem));
	return {
		board,
		layouts,
		unplaced,
		cost,
		count: layouts.length,
		leastCost: costOf(cutSheets, stock),
		leastCount,
		proven: unplaced.length === 0 && cost === costOf(cutSheets, stock) && layouts.length === leastCount,
		wasteShare: wasteShareOf(layouts),
	};
}
