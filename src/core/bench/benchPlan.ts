import type { Length } from '../length/length.ts';
import type { BenchWay } from '../settings/bench.ts';
import type { CutPart, CutSide } from '../show/tick.ts';

/** One cut of one window. */
export interface Cut {
	/** Place of the row in the show, from 1. */
	readonly row: number;
	/** Which of the row's copies, from 1. */
	readonly copy: number;
	readonly part: CutPart;
	readonly side: CutSide;
}

/** What a bench is set to for a cut. */
export interface SetUp {
	/** What the guide is set to, the correction taken off; on a straight edge the pencil line's distance. */
	readonly guide: Length;
	/** What the stop where the blade goes in is set to; undefined on a bench without end stops. */
	readonly start: Length | undefined;
	/** What the scale of the stop where the blade comes out reads; undefined on a bench without end stops. */
	readonly end: Length | undefined;
}

/** All the cuts that are made at one set-up. */
export interface BenchStep extends SetUp {
	/** The border that is cut: mount edge to sight edge. */
	readonly border: Length;
	/** Thickness of the board, where the row's board has one. */
	readonly thickness: Length | undefined;
	/** Whether it cuts inner mounts that are taped behind their outer ones. */
	readonly isTaped: boolean;
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
	/** The changes of each way; the plan is one of them. */
	readonly changesOfWays: Readonly<Record<BenchWay, number>>;
	readonly steps: readonly BenchStep[];
	/** For each row of the show, in order: the steps of its cuts, from 1, ascending. Empty where it has none. */
	readonly stepsOfRows: readonly (readonly number[])[];
}

/** The plan of a show in which nothing is cut, or not ordered yet. */
export const noPlan: BenchPlan = {
	changes: 0,
	leastChanges: 0,
	proven: true,
	changesOfWays: { 'fewest settings': 0, 'mount by mount': 0 },
	steps: [],
	stepsOfRows: [],
};
