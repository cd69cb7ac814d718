import { type Length, minus, plus } from '../length/length.ts';
import type { LinearSolver } from '../values/linearSolver.ts';
import { fillStick } from './fillStick.ts';
import { searchSticks } from './searchSticks.ts';
import { leastBy, stickMeasures, type StickMeasure } from './stickBound.ts';
import type { CutStick, Leg, StickJob, StickPlan } from './stickPlan.ts';
import { type Filling, fitsStick, type StickProblem, stickProblem } from './stickProblem.ts';
import { askProgram } from './stickProgram.ts';

/** What a search is given from outside: core has no clock, and no solver for linear programs. */
export interface StickTools {
	/** Seconds that the search may still take; asked often. */
	readonly secondsLeft: () => number;
	/** Without it, less is proven where a moulding has very many legs of different lengths. */
	readonly openProgram?: LinearSolver | undefined;
}

/** The steps of a first look at one number of sticks, and of a long one. */
const stepsOfLooks = [20_000, 2_000_000] as const;

/** The sticks of one moulding: as few as can be found, and whether no plan takes fewer. */
export function planSticks(job: StickJob, { secondsLeft, openProgram }: StickTools): StickPlan {
	const problem = stickProblem(job);
	const isTimeUp = () => secondsLeft() <= 0;
	const measures: StickMeasure[] = [...stickMeasures(problem)];
	let best = [fillInOrder(problem, 'first'), fillInOrder(problem, 'fullest')].reduce(fewer);
	let least = Math.max(...measures.map((measure) => leastBy(problem, measure)));
	for (const power of powersOfWorth)
		if (least < best.length && !isTimeUp()) best = fewer(best, fillFull(problem, power) ?? best);

	/** Looks at each number of sticks from the least on; one that is refuted raises it. */
	const look = (mostSteps: number) => {
		let isOpen = false;
		for (let count = least; count < best.length && !isTimeUp(); count++) {
			const found = searchSticks(problem, count, measures, { isTimeUp, mostSteps });
			if (found === 'impossible' && !isOpen) least = count + 1;
			else if (found === 'unknown') isOpen = true;
			else if (typeof found !== 'string') best = found;
		}
	};
	look(stepsOfLooks[0]);
	if (least < best.length && openProgram && !isTimeUp()) {
		const { measure, fillings } = askProgram(problem, distinct(best), openProgram, secondsLeft);
		if (measure) {
			measures.push(measure);
			least = Math.max(least, leastBy(problem, measure));
		}
		const given = fillings && withoutSurplus(problem, fillings);
		if (given && given.length < best.length) best = given;
		look(stepsOfLooks[0]);
	}
	if (least < best.length) look(stepsOfLooks[1]);
	return planOf(job, problem, best, least);
}

/** The sticks of each moulding, one after the other; each gets its share of the time that is left when its turn comes. */
export const planAllSticks = (jobs: readonly StickJob[], tools: StickTools): readonly StickPlan[] =>
	jobs.map((job, place) => {
		const end = tools.secondsLeft() - tools.secondsLeft() / (jobs.length - place);
		return planSticks(job, { ...tools, secondsLeft: () => tools.secondsLeft() - end });
	});

const fewer = (a: readonly Filling[], b: readonly Filling[]) => (b.length < a.length ? b : a);

const distinct = (fillings: readonly Filling[]): readonly Filling[] => [
	...new Map(fillings.map((filling) => [filling.join(' '), filling])).values(),
];

/** The longest leg first, each into the first stick that has room for it, or into the fullest of those. */
function fillInOrder({ stick, types }: StickProblem, into: 'first' | 'fullest'): readonly Filling[] {
	const sticks: { room: number; readonly filling: number[] }[] = [];
	const put = (type: number, size: number) => {
		const open = sticks.filter(({ room }) => room >= size);
		const chosen = into === 'first' ? open[0] : open.reduce((a, b) => (b.room < a.room ? b : a), open[0]!);
		const own = chosen ?? { room: stick, filling: types.map(() => 0) };
		if (!chosen) sticks.push(own);
		own.room -= size;
		own.filling[type]!++;
	};
	types.forEach(({ size, legs }, type) => {
		legs.forEach(() => {
			put(type, size);
		});
	});
	return sticks.map(({ filling }) => filling);
}

/**
 * How much more than by its length a long leg is worth when a stick is filled: at 1 it is filled as full as can be, above
 * that short legs are left for later sticks.
 */
const powersOfWorth = [1, 1.05, 1.1, 1.2, 1.4];

/** Parts of a stick that a worth is rounded to. */
const partsOfStick = 1_000_000;

/** The longest leg that is left, and beside it what is worth most; undefined where there are too many ways to fill it. */
function fillFull({ stick, types }: StickProblem, power: number): readonly Filling[] | undefined {
	const worths = types.map(({ size }) => (power === 1 ? size : Math.round((size / stick) ** power * partsOfStick)));
	const left = types.map(({ legs }) => legs.length);
	const fillings: Filling[] = [];
	for (;;) {
		const first = left.findIndex((count) => count > 0);
		if (first < 0) return fillings;
		left[first]!--;
		const rest = types.map(({ size, legs }, type) => ({ size, legs: legs.slice(0, left[type]) }));
		const full = fillStick({ stick: stick - types[first]!.size, types: rest }, worths);
		if (full === undefined) return undefined;
		full.filling.forEach((count, type) => (left[type]! -= count));
		fillings.push(full.filling.map((count, type) => (type === first ? count + 1 : count)));
	}
}

/** Fillings that give each leg once: what is over is left out; undefined where they do not give every leg. */
function withoutSurplus({ types }: StickProblem, fillings: readonly Filling[]): readonly Filling[] | undefined {
	const left = types.map(({ legs }) => legs.length);
	const given = fillings
		.map((filling) =>
			filling.map((count, type) => {
				const own = Math.min(count, left[type]!);
				left[type]! -= own;
				return own;
			}),
		)
		.filter((filling) => filling.some((count) => count > 0));
	return left.every((count) => count === 0) ? given : undefined;
}

/** The plan of some fillings: the legs of each type in the order of the show, over sticks that are sawn alike. */
function planOf(job: StickJob, { types }: StickProblem, fillings: readonly Filling[], least: number): StickPlan {
	const { frame, stick, saw } = job;
	const sizeOf = (filling: Filling) => filling.reduce((sum, count, type) => sum + count * types[type]!.size, 0);
	const inOrder = fillings.toSorted((a, b) => sizeOf(b) - sizeOf(a) || compare(b, a));
	const next = types.map(() => 0);
	const sticks = inOrder.map((filling): CutStick => {
		const legs = filling.flatMap((count, type): readonly Leg[] => {
			const from = next[type]!;
			next[type] = from + count;
			return types[type]!.legs.slice(from, from + count);
		});
		return { legs, rest: minus(stick, ...legs.map((leg): Length => plus(leg.length, saw))) };
	});
	return {
		frame,
		stick,
		saw,
		sticks,
		tooLong: job.legs.filter((leg) => !fitsStick(leg.length, job)),
		leastCount: least,
		proven: least === fillings.length,
	};
}

/** Which of two fillings has more of the longer legs. */
function compare(a: Filling, b: Filling): number {
	const at = a.findIndex((count, type) => count !== b[type]);
	return at < 0 ? 0 : a[at]! - b[at]!;
}
