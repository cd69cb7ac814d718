import { sameWithin } from '../length/length.ts';
import { fixedWeight, weightOf } from '../row/border.ts';
import { clearEach } from './candidates.ts';
import type { Finder, RowContext } from './found.ts';

/**
 * `bottom-heavy`: the bottom is wider than the top by more than twice the weight asked, and more than the tolerance. A
 * bottom that is typed was chosen.
 */
export const bottomHeavy: Finder = (context) => {
	const { solution, read, settings } = context;
	const { top, bottom } = solution.solved;
	if (top === undefined || bottom === undefined || read.cells.bottom !== undefined) return [];
	const wider = bottom - top;
	const tolerance = (Math.min(top, bottom) * settings.unevenTolerancePercent) / 100;
	if (wider <= 2 * askedOver(context, top) + sameWithin || wider <= tolerance + sameWithin) return [];
	return [
		{
			code: 'bottom-heavy',
			level: 'look',
			cells: ['top', 'bottom'],
			figures: () => ({ bottom, wider, top }),
			candidates: () =>
				clearEach(context, ['bottom', 'top', 'side', 'window height', 'mount height', 'mount', 'picture height']),
		},
	];
};

/** How much wider than the top the bottom was asked to be. */
export function askedOver({ read, settings, solution }: RowContext, top: number): number {
	const weight = fixedWeight(weightOf(read.cells, settings));
	if (weight) return top * (weight.times - 1) + weight.more;
	const { mountWidth, windowWidth } = solution.solved;
	if (mountWidth === undefined || windowWidth === undefined) return 0;
	return top * ((4 * mountWidth) / (mountWidth + windowWidth) - 2);
}
