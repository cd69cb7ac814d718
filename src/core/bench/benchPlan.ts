import type { Length } from '../length/length.ts';

/** The edge of the mount that a cut runs along, as seen from the front. */
export type CutSide = 'top' | 'bottom' | 'left' | 'right';

/** One cut of one window. */
export interface Cut {
	/** Place of the row in the show, from 1. */
	readonly row: number;
	/** Which of the row's copies, from 1. */
	readonly copy: number;
	readonly part: 'mount' | 'inner mount';
	readonly side: CutSide;
}

/** All the cuts that are made at one guide setting. */
export interface BenchStep {
	readonly guide: Length;
	/** Thickness of the board, where the row's board has one. */
	readonly thickness: Length | undefined;
	readonly cuts: readonly Cut[];
}

/** The cutting order of a show. */
export interface BenchPlan {
	/** How often a device is set, from a bench set to nothing. */
	readonly changes: number;
	/** The fewest changes that any order could have. */
	readonly leastChanges: number;
	/** Whether `changes` is proven least. */
	readonly proven: boolean;
	readonly steps: readonly BenchStep[];
	/** For each row of the show, in order: the steps of its cuts, from 1, ascending. Empty where it has none. */
	readonly stepsOfRows: readonly (readonly number[])[];
}
