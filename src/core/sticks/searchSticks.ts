import type { Filling, StickProblem } from './stickProblem.ts';
import { type StickMeasure, worthOfAll } from './stickBound.ts';

/** How far a search may go. */
export interface SearchLimits {
	readonly isTimeUp: () => boolean;
	/** The most steps that it may take. */
	readonly mostSteps: number;
}

/** How often the time is asked for, in steps: asking costs more than a step. */
const stepsBetweenLooks = 512;

/**
 * Tries every way to saw all legs from so many sticks. The longest leg that is left comes from the next stick, with
 * others beside it until none more goes in: a leg of a later stick could as well come from this one. By each measure the
 * sticks hold so much more than the legs are worth; a stick that leaves more of it unused is in no plan.
 * @returns `impossible`, or `unknown` where it would take too long
 */
export function searchSticks(
	problem: StickProblem,
	count: number,
	measures: readonly StickMeasure[],
	{ isTimeUp, mostSteps }: SearchLimits,
): readonly Filling[] | 'impossible' | 'unknown' {
	const { stick, types } = problem;
	const spare = measures.map((measure) => count * measure.held - worthOfAll(problem, measure));
	if (spare.some((left) => left < 0)) return 'impossible';
	const left = types.map(({ legs }) => legs.length);
	const sticks: Filling[] = [];
	const refuted = new Set<string>();
	let steps = 0;
	const search = { isCutShort: false };

	/** Fills the sticks that are left. */
	function next(sticksLeft: number, spareLeft: readonly number[]): boolean {
		const first = left.findIndex((one) => one > 0);
		if (first < 0) return true;
		if (sticksLeft === 0) return false;
		const key = `${sticksLeft}: ${left.join(' ')}`;
		if (refuted.has(key)) return false;
		const filling = types.map(() => 0);
		const take = (type: number, by: number) => {
			filling[type]! += by;
			left[type]! -= by;
		};
		/** Adds legs of a type and of shorter ones; `room` is what is left of the stick. */
		const fill = (type: number, room: number): boolean => {
			if (++steps > mostSteps || (steps % stepsBetweenLooks === 0 && isTimeUp())) search.isCutShort = true;
			if (search.isCutShort) return false;
			if (type === types.length) {
				if (types.some(({ size }, place) => left[place]! > 0 && size <= room)) return false;
				const unused = measures.map(({ worths, held }, place) => {
					const worth = filling.reduce((sum, one, at) => sum + one * worths[at]!, 0);
					return spareLeft[place]! - (held - worth);
				});
				if (unused.some((one) => one < 0)) return false;
				sticks.push([...filling]);
				if (next(sticksLeft - 1, unused)) return true;
				sticks.pop();
				return false;
			}
			const { size } = types[type]!;
			const least = type === first ? 1 : 0;
			const most = Math.min(left[type]!, Math.floor(room / size));
			// What is left after the last leg of this type is waste, unless a shorter one goes in.
			for (let own = most; own >= least; own--) {
				take(type, own);
				const isFound = fill(type + 1, room - own * size);
				take(type, -own);
				if (isFound) return true;
			}
			return false;
		};
		if (fill(first, stick)) return true;
		if (!search.isCutShort) refuted.add(key);
		return false;
	}

	if (next(count, spare)) return sticks;
	return search.isCutShort ? 'unknown' : 'impossible';
}
