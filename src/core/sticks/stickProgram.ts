import type { LinearProgram, LinearSolver } from '../values/linearSolver.ts';
import { fillStick } from './fillStick.ts';
import { leastBy, measureOf, type StickMeasure } from './stickBound.ts';
import type { Filling, StickProblem } from './stickProblem.ts';

/** What a linear program says of the sticks. */
export interface ProgramOutcome {
	/** A measure by which sticks are filled as well as can be; undefined where none was found. */
	readonly measure: StickMeasure | undefined;
	/** Fillings that give every leg at least once over, as few as the program found. */
	readonly fillings: readonly Filling[] | undefined;
}

/** Worths come from the program in floating point; so many parts of one are kept, as whole numbers. */
const partsOfWorth = 1_000_000;

/** The most fillings that are added: each makes the program better, the last ones hardly. */
const mostFillings = 2000;

/**
 * Finds what each leg is worth, by filling one stick after the other with what is worth most until none is worth more
 * than a stick costs; then how often each of these fillings is sawn. The program is trusted for neither: worths are
 * checked by what a stick really holds, fillings by what they really give.
 */
export function askProgram(
	problem: StickProblem,
	first: readonly Filling[],
	openProgram: LinearSolver,
	secondsLeft: () => number,
): ProgramOutcome {
	const { types } = problem;
	const fillings = [...first];
	const program = openMaster(problem, openProgram, false);
	let best: StickMeasure | undefined;
	try {
		addFillings(program, fillings);
		while (fillings.length < mostFillings && secondsLeft() > 0) {
			const { status, duals } = program.solve({ seconds: secondsLeft() });
			if (status !== 'optimal' || !duals) break;
			const worths = types.map((_, type) => Math.max(0, Math.round(duals[type]! * partsOfWorth)));
			const measure = measureOf(problem, worths);
			const full = measure && fillStick(problem, worths);
			if (!full) break;
			if (!best || leastBy(problem, measure) >= leastBy(problem, best)) best = measure;
			// Rounding alone may make a filling that is known worth a little more than a stick.
			const isKnown = fillings.some((filling) => filling.every((count, type) => count === full.filling[type]));
			if (full.worth <= partsOfWorth || isKnown) break;
			fillings.push(full.filling);
			addFillings(program, [full.filling]);
		}
	} finally {
		program.close();
	}
	return { measure: best, fillings: wholeFillings(problem, fillings, openProgram, secondsLeft) };
}

/** How often each filling is sawn, in whole numbers. */
function wholeFillings(
	problem: StickProblem,
	fillings: readonly Filling[],
	openProgram: LinearSolver,
	secondsLeft: () => number,
): readonly Filling[] | undefined {
	const program = openMaster(problem, openProgram, true);
	try {
		addFillings(program, fillings);
		const { values } = program.solve({ seconds: secondsLeft() });
		return values && fillings.flatMap((filling, place) => new Array<Filling>(Math.round(values[place]!)).fill(filling));
	} finally {
		program.close();
	}
}

/** An empty program: of each type of leg at least as many as are wanted. */
function openMaster({ types }: StickProblem, openProgram: LinearSolver, isWhole: boolean): LinearProgram {
	const program = openProgram(isWhole);
	for (const { legs } of types) program.addRow(legs.length, Infinity);
	return program;
}

const addFillings = (program: LinearProgram, fillings: readonly Filling[]) => {
	program.addColumns(
		fillings.map((filling) => {
			const rows = [...filling.keys()].filter((type) => filling[type]! > 0);
			return { cost: 1, most: Infinity, rows, values: rows.map((type) => filling[type]!) };
		}),
	);
};
