import type { Blank } from '../show/blank.ts';
import { type Stock, waysOf } from '../stock/stock.ts';
import { patternOfBin } from './bins.ts';
import type { BoardPlan, UnplacedBlank, UnplacedReason } from './boardPlan.ts';
import type { LinearSolver } from '../values/linearSolver.ts';
import { type MixSearch, searchMixes } from './mixSearch.ts';
import type { PackingJob } from './packingJob.ts';
import { type Problem, problemOf } from './problem.ts';
import { costOf } from './purchases.ts';
import { blanksInOrder, treeLayout } from './treeLayout.ts';
import { wasteShareOf } from './waste.ts';

/** What a search is given from outside: core has no clock, and no solver for linear programs. */
export interface PackingTools {
	/** Seconds that the search may still take; asked often. */
	readonly secondsLeft: () => number;
	/** Told each plan that is better than those before, or better known. The first comes at once. */
	readonly onPlan?: (plan: BoardPlan) => void;
	/** Without it, little is proven. */
	readonly openProgram?: LinearSolver | undefined;
}

/** Plans how one board is cut: the plan of least cost, then of fewest sheets, that is found in the time. */
export function packBoard(job: PackingJob, { secondsLeft, onPlan, openProgram }: PackingTools): BoardPlan {
	const { possible, unplaced } = sortOut(job);
	const problem = problemOf(possible);
	let plan: BoardPlan | undefined;
	searchMixes(problem, {
		openProgram,
		secondsLeft,
		onBetter: (found) => {
			plan = planOf(possible, problem, found, unplaced);
			onPlan?.(plan);
		},
	});
	return plan!;
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

/** The blanks that a filling leaves over: the last ones of their types. */
const usedUp = ({ types }: Problem, left: readonly number[]): readonly UnplacedBlank[] =>
	types.flatMap(({ blanks }, type) => {
		const count = left.filter((other) => other === type).length;
		return blanks.slice(blanks.length - count).map((blank) => ({ blank, reason: 'used-up' as const }));
	});

function planOf(
	{ board, material, stock, cutSheets }: PackingJob,
	problem: Problem,
	{ filling, leastCost, leastPieces, isProven }: MixSearch,
	tooLarge: readonly UnplacedBlank[],
): BoardPlan {
	const take = blanksInOrder(problem);
	const patterns = filling.bins.filter(({ root }) => root !== undefined).map((bin) => patternOfBin(bin, problem));
	const layouts = [
		...cutSheets,
		...patterns.map(({ sheet, tree }, index) =>
			treeLayout(tree, problem.sheets[sheet]!.stock, problem.scale, take, cutSheets.length + index + 1),
		),
	];
	const isShort = filling.unplaced.length > 0;
	return {
		board,
		...(material && { material }),
		layouts,
		unplaced: [...tooLarge, ...usedUp(problem, filling.unplaced)],
		cost: costOf(layouts, stock),
		count: layouts.length,
		leastCost: costOf(cutSheets, stock) + (isShort ? 0 : leastCost),
		leastCount: cutSheets.length + (isShort ? 0 : leastPieces),
		proven: isProven && !isShort,
		wasteShare: wasteShareOf(layouts),
	};
}
