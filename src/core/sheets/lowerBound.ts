import type { Pattern } from './cutTree.ts';
import type { CutTables } from './cutTables.ts';
import type { LinearSolver } from '../values/linearSolver.ts';
import { type Master, openMaster } from './master.ts';
import type { Mix } from './mixes.ts';
import type { Problem } from './problem.ts';
import { allows, type WorthBound, worthBound } from './worthBound.ts';

/** What was found out about a mix. */
export interface MixTest {
	/** `unknown`: the time ran out. */
	readonly verdict: 'refuted' | 'possible' | 'unknown';
	/** The bound that refutes it; else one that leaves it little room, if one was found. */
	readonly bound: WorthBound | undefined;
}

/** Finds bounds. Patterns that were found for one are kept for the next. */
export interface BoundFinder {
	/** A bound for any mix, strong where sheets are used for what they cost; undefined if the time ran out. */
	overall(): WorthBound | undefined;
	/**
	 * Whether the mix could hold all blanks if patterns could be cut a fraction of a time.
	 * @param isThorough whether to go on, once it could, to the bound that leaves it the least room
	 */
	test(mix: Mix, isThorough: boolean): MixTest;
}

/** What a piece of stock that is there already costs in the program, where the dearest that is bought costs 1. */
const costOfOwn = 0.001;

/** Opens a finder of bounds for a problem. */
export function openBoundFinder(
	problem: Problem,
	tables: CutTables,
	openProgram: LinearSolver,
	secondsLeft: () => number,
): BoundFinder {
	const { sheets } = problem;
	const known: Pattern[] = [];
	/** Adds the best pattern of each entry in turn, as long as there is a new one. */
	const price = (master: Master, isEnough: (cost: number, bound: WorthBound) => boolean): MixTest => {
		for (const pattern of known) master.add(pattern);
		let bound: WorthBound | undefined;
		let verdict: MixTest['verdict'] = 'unknown';
		for (;;) {
			const left = secondsLeft();
			const outcome = left > 0 ? master.solve(left) : undefined;
			if (outcome === undefined) break;
			const current = (bound = worthBound(problem, tables, outcome.worth));
			if (isEnough(outcome.cost, current)) {
				verdict = 'possible';
				break;
			}
			const isNew = sheets.map((_, sheet) => {
				const pattern = tables.best(sheet, current.values);
				if (!master.add(pattern)) return false;
				known.push(pattern);
				return true;
			});
			if (isNew.includes(true)) continue;
			verdict = 'possible';
			break;
		}
		master.close();
		return { verdict, bound };
	};
	return {
		overall() {
			const costs = sheets.map(({ stock: { price = 1, pack }, isBought }) => (isBought ? price / pack : 0));
			const largest = Math.max(...costs) || 1;
			// What is there already is not free in the program, or it would say nothing of how much is needed.
			const master = openMaster(
				problem,
				{ kind: 'cost', sheets: costs.map((cost) => cost / largest + costOfOwn) },
				openProgram,
			);
			return price(master, () => false).bound;
		},
		test(mix, isThorough) {
			const master = openMaster(problem, { kind: 'share', mix }, openProgram);
			const tested = price(master, (share, bound) => !allows(bound, mix) || (!isThorough && share <= 1));
			return tested.bound && !allows(tested.bound, mix) ? { ...tested, verdict: 'refuted' } : tested;
		},
	};
}
