import { sameWithin } from '../length/length.ts';
import { weightOf } from '../row/border.ts';
import { sizeKeys } from '../row/cells.ts';
import { clearEach, cutToSuit, sizeColumns } from './candidates.ts';
import type { Finder, RowContext } from './found.ts';

/**
 * `uneven`: side and top differ by more than the tolerance, a share of the smaller. A `note` where the picture is as large
 * as its shape can be, for then nobody can do otherwise. The optical centre asks for what it gives.
 */
export const uneven: Finder = (context) => {
	const { solution, read, settings, figure, say } = context;
	const { side, top } = solution.solved;
	if (!side || !top || weightOf(read.cells, settings).kind === 'optical centre') return [];
	const difference = Math.abs(side - top);
	const allowed = (Math.min(side, top) * settings.unevenTolerancePercent) / 100;
	if (difference <= allowed + sameWithin) return [];
	const percent = percentAbove((100 * difference) / Math.min(side, top), settings.unevenTolerancePercent);
	return [
		{
			code: 'uneven',
			level: isSettledByShape(context) ? 'note' : 'look',
			cells: ['side', 'top'],
			message: () =>
				`Side ${figure(side)} and top ${figure(top)} differ by ${say(difference)}, ${percent} % of the smaller; ${settings.unevenTolerancePercent} % is allowed.`,
			candidates: () => [...clearEach(context, sizeColumns), cutToSuit],
		},
	];
};

/** A share in whole per cent, or with a decimal or two where it would look like no more than what is allowed. */
function percentAbove(percent: number, allowed: number): number {
	const rounded = [0, 1].map((places) => Number(percent.toFixed(places))).find((each) => each > allowed);
	return rounded ?? Math.ceil(percent * 100) / 100;
}

/** Whether nothing but the shape, and the mount that it is for, settles the picture. */
const isSettledByShape = ({ read, solution }: RowContext): boolean =>
	solution.isShapeKept === true && sizeKeys.every((key) => read.cells[key] === undefined);
