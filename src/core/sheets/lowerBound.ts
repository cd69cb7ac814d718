import type { CutTables } from './cutTables.ts';
import type { LinearSolver } from './linearSolver.ts';
import { type Master, openMaster } from './master.ts';
import type { Mix } from './mixes.ts';
import type { Problem } from './problem.ts';
import { allows, type WorthBound, worthBound } from './worthBound.ts';

/** A master over this much uncovered board, in mean blanks, has everything covered. */
const nothing = 1e-7;

/** Finds bounds. Patterns that were found for one are kept for the next. */
export interface BoundFinder {
	/** The bound that the areas of the blanks give. */
	readonly area: WorthBound;
	/** Bounds that hold for any mix, the strongest first that is found where each sheet costs what it costs. */
	overall(): readonly WorthBound[];
	/**
	 * Whether the mix could hold all blanks if patterns could be cut a fraction of a time; if not, a bound that says so.
	 * `unknown`: the time ran out.
	 */
	test(mix: Mix): WorthBound | 'possible' | 'unknown';
	close(): void;
}

/** Opens a finder of bounds for a problem. */
export function openBoundFinder(
	problem: Problem,
	tables: CutTables,
	openProgram: LinearSolver,
	secondsLeft: () => number,
): BoundFinder {
	const { types, sheets } = problem;
	const areas = types.map(({ long, short }) => long * short);
	const mean = areas.reduce((sum, area) => sum + area, 0) / areas.length;
	let mixMaster: Master | undefined;
	return {
		area: worthBound(problem, tables, areas),
		overall() {
			const costs = sheets.map(({ stock: { price, pack }, isBought }) => (isBought ? (price ?? 1) / pack : 0));
			const scale = Math.max(...costs) || 1;
			const master = openMaster(
				problem,
				// What is there already is not free in the program, or it would say nothing of how much is needed.
				{ sheets: costs.map((cost) => cost / scale + 0.001), uncovered: types.map(() => 3) },
				openProgram,
			);
			const bounds = priceUntilDone(problem, tables, master, secondsLeft);
			mixMaster = openMaster(
				problem,
				{ sheets: sheets.map(() => 0), uncovered: areas.map((area) => area / mean) },
				openProgram,
			);
			for (const pattern of master.patterns) mixMaster.add(pattern);
			master.close();
			return bounds;
		},
		test(mix) {
			const master = mixMaster!;
			master.setMost(mix);
			for (;;) {
				const left = secondsLeft();
				const outcome = left > 0 ? master.solve(left) : undefined;
				if (outcome === undefined) return 'unknown';
				if (outcome.cost < nothing) return 'possible';
				const bound = worthBound(problem, tables, outcome.worth);
				if (!allows(bound, mix)) return bound;
				const isNew = sheets.map((_, sheet) => mix[sheet]! > 0 && master.add(tables.best(sheet, bound.values)));
				if (!isNew.includes(true)) return 'possible'; // only by what rounding leaves; a plan will tell
			}
		},
		close: () => mixMaster?.close(),
	};
}

/** Adds the best pattern of each entry as long as it is worth more than it costs, and gives the bounds on the way. */
function priceUntilDone(
	problem: Problem,
	tables: CutTables,
	master: Master,
	secondsLeft: () => number,
): readonly WorthBound[] {
	let last: WorthBound | undefined;
	for (;;) {
		const left = secondsLeft();
		const outcome = left > 0 ? master.solve(left) : undefined;
		if (outcome === undefined) return last ? [last] : [];
		last = worthBound(problem, tables, outcome.worth);
		const bound = last;
		const isNew = problem.sheets.map((_, sheet) => master.add(tables.best(sheet, bound.values)));
		if (!isNew.includes(true)) return [last];
	}
}
