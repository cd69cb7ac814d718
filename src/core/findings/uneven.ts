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
	const { solution, read, settings } = context;
	const { side, top } = solution.solved;
	if (!side || !top || weightOf(read.cells, settings).kind === 'optical centre') return [];
	const difference = Math.abs(side - top);
	const allowed = (Math.min(side, top) * settings.unevenTolerancePercent) / 100;
	if (difference <= allowed + sameWithin) return [];
	return [
		{
			code: 'uneven',
			level: isSettledByShape(context) ? 'note' : 'look',
			cells: ['side', 'top'],
			figures: () => ({
				side,
				top,
				difference,
				share: { percent: (100 * difference) / Math.min(side, top) },
				allowed: { percent: settings.unevenTolerancePercent },
			}),
			candidates: () => [...clearEach(context, sizeColumns), cutToSuit],
		},
	];
};

/** Whether nothing but the shape, and the mount that it is for, settles the picture. Typing what is shown settles nothing. */
const isSettledByShape = ({ read, solution }: RowContext): boolean =>
	solution.isShapeKept === true &&
	solution.boundByPaper === undefined &&
	sizeKeys.every((key) => (solution.counting ?? read.cells)[key] === undefined);
