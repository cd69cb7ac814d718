import type { RowResult } from '../../core/findings/rowResult.ts';
import { type Length, nearestLength } from '../../core/length/length.ts';
import type { HungPrint, HungWall } from '../../core/walls/hungPrint.ts';
import { neighboursOf } from '../../core/walls/wallWords.ts';
import { clearFigures, figureRoom } from './clearFigures.ts';
import { gapRuns } from './gapRuns.ts';

/** A distance along a wall that is drawn, in units of length: from, to, and how high above the floor. */
export interface WallMeasure {
	readonly from: number;
	readonly to: number;
	readonly y: number;
	/** Its figure, where that is not its own length under its middle. */
	readonly figure?: {
		/** Blank where it is said with others that are alike. */
		readonly words: string;
		/** Of the figure, along the wall. */
		readonly middle: number;
	};
}

/** What is looked at. */
export interface Measured {
	/** The selected print, where it hangs on this wall. */
	readonly chosen: HungPrint | undefined;
	/** Whether all prints are measured. */
	readonly hasMeasures: boolean;
	/** A distance as it is shown. */
	readonly wordsOf: (distance: number) => string;
	/** The height of a letter, in mm of the wall. */
	readonly letter: number;
}

/** What of a wall is measured, in a lane under its floor: the selected print against its neighbours, or all gaps. */
export function measuresOf(hung: HungWall, measured: Measured): readonly WallMeasure[] {
	const { chosen, hasMeasures, wordsOf, letter } = measured;
	const y = -letter * 0.65 * 1e7;
	const wideOf = (words: string) => figureRoom(words) * letter * 1e7;
	/** No figure stands beyond an end of the wall. */
	const inWall = (middle: number, wide: number) =>
		Math.min(Math.max(middle, wide / 2), Math.max(wide / 2, hung.wall.length - wide / 2));
	if (!hasMeasures) {
		if (!chosen) return [];
		const own = between(hung, chosen, chosen.left, y).map((each) => {
			const words = wordsOf(each.to - each.from);
			return { ...each, words, wide: wideOf(words), middle: (each.from + each.to) / 2 };
		});
		// Where they would lie on each other they go away from the print between them.
		const isCrowded = clearFigures(own).length < own.length;
		return own.map(({ from, to, words, wide, middle }, at) => ({
			...{ from, to, y },
			figure: { words, middle: inWall(isCrowded ? (at === 0 ? to - wide / 2 : from + wide / 2) : middle, wide) },
		}));
	}
	const gaps = hung.prints
		.flatMap((print, at) => {
			if (print.column === hung.prints[at - 1]?.column) return [];
			// The gap between two prints is the left one of the second.
			const isLast = neighboursOf(hung, print).right.print === undefined;
			return between(hung, print, print.left, y).filter(({ to }) => isLast || to === print.left);
		})
		.toSorted((one, other) => one.from - other.from);
	const runs = gapRuns(gaps, wordsOf).map((run) => {
		const wide = wideOf(run.words);
		return { ...run, wide, middle: inWall(run.middle, wide) };
	});
	// Where even so there is no room for a figure, it waits until one zooms in.
	const clear = clearFigures(runs);
	return runs.flatMap((run) =>
		run.gaps.map((gap, at) => ({
			...gap,
			figure: { words: at === 0 && clear.includes(run) ? run.words : '', middle: run.middle },
		})),
	);
}

/** Gaps are measured under all that hangs there. @param letter the height of a letter, in mm of the wall */
export const underAll = ({ prints }: HungWall, letter: number): number =>
	Math.min(...prints.map(({ centre, size }) => centre - size.height / 2)) - letter * 0.9 * 1e7;

/** From a print, as it hangs or with its left edge elsewhere, to what is beside it. */
export function between(hung: HungWall, print: HungPrint, left: Length, y: number): WallMeasure[] {
	const { left: before, right: after } = neighboursOf(hung, print, left);
	const right = left + print.size.width;
	return [
		{ from: left - before.distance, to: left, y },
		{ from: right, to: right + after.distance, y },
	].filter(({ from, to }) => to > from);
}

/** The height of a print that is measured: its hook's, or its middle's. */
export function heightOf(print: HungPrint, { hung }: RowResult) {
	const hook = hung?.hooks?.hooks[0];
	return hook
		? { x: hook.left, height: hook.height, what: 'hook' }
		: { x: nearestLength(print.left + print.size.width / 2), height: print.centre, what: 'centre' };
}
