import type { Length } from '../length/length.ts';
import { greatestCommonDivisor } from '../values/greatestCommonDivisor.ts';
import type { Leg, StickJob } from './stickPlan.ts';

/** Legs of one length. */
export interface LegType {
	/** What one takes of a stick, the saw included, in the problem's units. */
	readonly size: number;
	/** In the order of the show. */
	readonly legs: readonly Leg[];
}

/** A job in whole numbers as small as they can be, equal legs together, the longest first. */
export interface StickProblem {
	readonly stick: number;
	readonly types: readonly LegType[];
}

/** How many legs of each type a stick gives. */
export type Filling = readonly number[];

/** Whether a stick gives the leg, with what the saw takes. */
export const fitsStick = (length: Length, { stick, saw }: Pick<StickJob, 'stick' | 'saw'>): boolean =>
	length + saw <= stick;

/** The problem of a job; legs that no stick gives are left out. */
export function stickProblem(job: StickJob): StickProblem {
	const { stick, saw } = job;
	const byLength = new Map<number, Leg[]>();
	for (const leg of job.legs) {
		if (!fitsStick(leg.length, job)) continue;
		const size = leg.length + saw;
		byLength.set(size, [...(byLength.get(size) ?? []), leg]);
	}
	const unit = [...byLength.keys()].reduce<number>(greatestCommonDivisor, stick) || 1;
	const types = [...byLength].map(([size, legs]) => ({ size: size / unit, legs })).sort((a, b) => b.size - a.size);
	return { stick: stick / unit, types };
}
