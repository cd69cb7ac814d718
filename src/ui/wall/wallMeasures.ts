import type { RowResult } from '../../core/findings/rowResult.ts';
import { type Length, nearestLength } from '../../core/length/length.ts';
import type { HungPrint, HungWall } from '../../core/walls/hungPrint.ts';
import { neighboursOf } from '../../core/walls/wallWords.ts';
import { clearFigures, figureRoom } from './clearFigures.ts';

/** A distance along a wall that is drawn, in units of length: from, to, and how high above the floor. */
export interface WallMeasure {
	readonly from: number;
	readonly to: number;
	readonly y: number;
	/** Where its figure would lie over another of the same print: it ends, or begins, at the print then. */
	readonly lean?: 'end' | 'start';
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

/** What of a wall is measured: the selected print against its neighbours, or all. */
export function measuresOf(hung: HungWall, measured: Measured): readonly WallMeasure[] {
	const { chosen, hasMeasures, wordsOf, letter } = measured;
	const y = underAll(hung, letter);
	const figure = (measure: WallMeasure) => {
		const wide = figureRoom(wordsOf(measure.to - measure.from)) * letter * 1e7;
		const { from, to, lean } = measure;
		const middle = lean === 'end' ? to - wide / 2 : lean === 'start' ? from + wide / 2 : (from + to) / 2;
		return { measure, middle, wide };
	};
	let own = chosen ? between(hung, chosen, chosen.left, y) : [];
	if (own.length > clearFigures(own.map(figure)).length)
		own = own.map((each, at) => ({ ...each, lean: at === 0 ? 'end' : 'start' }));
	if (!hasMeasures) return own;
	const gaps = hung.prints.flatMap((print, at) => {
		if (print.column === hung.prints[at - 1]?.column) return [];
		// The gap between two prints is the left one of the second.
		const isLast = neighboursOf(hung, print).right.print === undefined;
		return between(hung, print, print.left, y).filter(({ to }) => isLast || to === print.left);
	});
	// A figure stands under its gap, where prints leave it more room than the gap is wide: only figures crowd each other.
	return [...own, ...clearFigures(gaps.map(figure), own.map(figure)).map(({ measure }) => measure)];
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
