import { groupBy } from '../values/groupBy.ts';
import type { LinearColumn, LinearSolver } from '../values/linearSolver.ts';
import { type Applicant, type Assignment, type FrameOption, kindsOf, rankOf } from './assignFrames.ts';
import { mostUsed } from './mostUsed.ts';

/** What the search is given from outside: core has no clock, and no solver for linear programs. */
export interface FrameTools {
	readonly openProgram: LinearSolver;
	/** Seconds that it may still take. */
	readonly secondsLeft: () => number;
}

/** Prints that are alike: they have as many copies, and each frame is the same for them. */
interface Kind extends Applicant {
	/** Their places, in order. */
	readonly places: readonly number[];
}

/** So many prints of a kind may have a frame. */
interface Pair {
	readonly kind: number;
	readonly frame: number;
	readonly option: FrameOption;
	readonly most: number;
}

/**
 * Differences are counted in micrometres, areas in square centimetres: figures that a program in floating point tells apart.
 * One that is less than half of that from the least counts as the least, as lengths within a micrometre count as equal.
 */
const [unitsInMicrometre, unitsInCentimetre] = [10_000, 100_000_000];
const nearEnough = 0.5;

/**
 * Gives frames out with programs in whole numbers, one for each thing that is wanted: as many prints as can be; of these
 * choices the least sum of differences; of these the least area. Prints that are alike are one kind, of which so many have
 * a frame; and of a frame no more is counted than whole prints can use. The last program knows from the one before it which
 * frames no best choice gives to whom, and leaves them out.
 * @param known a choice that is known: what is found is never worse
 */
export function programFrames(
	applicants: readonly Applicant[],
	counts: readonly number[],
	{ openProgram, secondsLeft }: FrameTools,
	known: Assignment,
): Assignment {
	const kinds = groupsOf(applicants);
	const job = { kinds, counts, openProgram, secondsLeft };
	const pairs = pairsOf(kinds, counts);
	let best = known;
	const keep = (given: Given | undefined, isMost: boolean, proven: boolean) => {
		const frames = given ? framesOf(kinds, given, applicants.length) : best.frames;
		const isBetter = rankOf(applicants, frames) <= rankOf(applicants, best.frames);
		best = { frames: isBetter ? frames : best.frames, isMost, proven };
	};
	const most = solve(job, pairs, { cost: () => -1 });
	keep(most?.given, most?.isLeast === true, false);
	if (!most?.isLeast) return best;
	const served = Math.round(-most.cost);
	const least = solve(job, pairs, { cost: differenceOf, served });
	keep(least?.given, true, false);
	if (!least?.isLeast) return best;
	const smallest = solve(job, withoutHopeless(job, pairs, served, least.cost), {
		cost: ({ option, kind }) => (Number(option.area) / unitsInCentimetre ** 2) * kinds[kind]!.copies,
		served,
		mostDifference: least.cost + nearEnough,
	});
	keep(smallest?.given, true, smallest?.isLeast === true);
	return best;
}

const differenceOf = ({ option }: Pair): number => Number(option.difference) / unitsInMicrometre;

interface ProgramJob extends FrameTools {
	readonly kinds: readonly Kind[];
	readonly counts: readonly number[];
}

/** What a program is to make least, and what it must keep to. */
interface Aim {
	readonly cost: (pair: Pair) => number;
	/** So many prints get a frame, at least. */
	readonly served?: number;
	/** The differences are no more than this in all. */
	readonly mostDifference?: number;
}

/** Pairs, with how many prints have each. */
type Given = readonly (readonly [Pair, number])[];

/** The best choice for an aim; undefined where time ran out before any was found. */
function solve(job: ProgramJob, pairs: readonly Pair[], aim: Aim) {
	const { openProgram, secondsLeft } = job;
	// A program of no columns has nothing to choose.
	if (pairs.length === 0) return { given: [], cost: 0, isLeast: true };
	const program = openProgram(true);
	try {
		addChoice(program, job, pairs, aim);
		const { status, values, cost } = program.solve({ seconds: secondsLeft(), gap: nearEnough });
		if (!values) return undefined;
		const given = pairs.map((pair, at) => [pair, Math.round(values[at]!)] as const);
		return { given, cost, isLeast: status === 'optimal' };
	} finally {
		program.close();
	}
}

/** The rows: of each kind and each frame no more than there are, then what the aim keeps to. A column is a pair. */
function addChoice(
	program: ReturnType<LinearSolver>,
	{ kinds, counts }: Pick<ProgramJob, 'kinds' | 'counts'>,
	pairs: readonly Pair[],
	{ cost, served, mostDifference }: Aim,
): void {
	for (const { places } of kinds) program.addRow(-Infinity, places.length);
	for (const [frame, count] of counts.entries())
		program.addRow(
			-Infinity,
			mostUsed(
				count,
				pairs.flatMap((pair) =>
					pair.frame === frame ? new Array<number>(pair.most).fill(kinds[pair.kind]!.copies) : [],
				),
			),
		);
	const servedRow = kinds.length + counts.length;
	if (served !== undefined) program.addRow(served, Infinity);
	const differenceRow = servedRow + (served === undefined ? 0 : 1);
	if (mostDifference !== undefined) program.addRow(-Infinity, mostDifference);
	program.addColumns(
		pairs.map((pair): LinearColumn => {
			const cells: (readonly [row: number, value: number])[] = [
				[pair.kind, 1],
				[kinds.length + pair.frame, kinds[pair.kind]!.copies],
			];
			if (served !== undefined) cells.push([servedRow, 1]);
			if (mostDifference !== undefined && pair.option.difference > 0n) cells.push([differenceRow, differenceOf(pair)]);
			return {
				cost: cost(pair),
				most: pair.most,
				rows: cells.map(([row]) => row),
				values: cells.map(([, value]) => value),
			};
		}),
	);
}

/**
 * The pairs that a choice of the least differences may hold. The program in parts says what each pair costs besides what it
 * must; one that costs more than the gap between parts and whole numbers is in no such choice.
 */
function withoutHopeless(job: ProgramJob, pairs: readonly Pair[], served: number, least: number): readonly Pair[] {
	const { kinds, counts, openProgram, secondsLeft } = job;
	if (pairs.length === 0) return pairs;
	const program = openProgram(false);
	try {
		addChoice(program, job, pairs, { cost: differenceOf, served });
		const { status, duals, cost } = program.solve({ seconds: secondsLeft() });
		if (status !== 'optimal' || !duals) return pairs;
		const servedDual = duals[kinds.length + counts.length]!;
		const gap = least - cost + 2 * nearEnough;
		return pairs.filter((pair) => {
			const { copies } = kinds[pair.kind]!;
			const row = kinds.length + pair.frame;
			return differenceOf(pair) - duals[pair.kind]! - copies * duals[row]! - servedDual <= gap;
		});
	} finally {
		program.close();
	}
}

function groupsOf(applicants: readonly Applicant[]): readonly Kind[] {
	const firsts = kindsOf(applicants);
	const kinds = groupBy([...firsts.keys()], (place) => firsts[place]!);
	return [...kinds].map(([first, places]) => ({ ...applicants[first]!, places }));
}

function pairsOf(kinds: readonly Kind[], counts: readonly number[]): readonly Pair[] {
	return kinds.flatMap(({ copies, options, places }, kind) =>
		options.flatMap((option, frame) => {
			const most = Math.min(places.length, Math.floor(counts[frame]! / copies));
			return option && most > 0 ? [{ kind, frame, option, most }] : [];
		}),
	);
}

/** Who has which frame: of prints that are alike the first have the first frames, and the last get none. */
function framesOf(kinds: readonly Kind[], given: Given, count: number): Assignment['frames'] {
	const frames = new Array<number | undefined>(count).fill(undefined);
	const next = kinds.map(() => 0);
	for (const [{ kind, frame }, times] of given)
		for (let time = 0; time < times; time++) frames[kinds[kind]!.places[next[kind]!++]!] = frame;
	return frames;
}
