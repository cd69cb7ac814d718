import { sameWithin } from '../length/length.ts';
import { fixedWeight, weightOf } from '../row/border.ts';
import { clearEach } from './candidates.ts';
import { askedOver } from './bottomHeavy.ts';
import type { Finder, RowContext } from './found.ts';

/** `weight-lost`: a bottom weight is asked, and what is typed leaves another, by more than a graduation. */
export const weightLost: Finder = (context) => {
	const { solution, settings } = context;
	const { top, bottom } = solution.solved;
	if (top === undefined || bottom === undefined || solution.height !== 'fits' || isKept(context)) return [];
	const asked = askedOver(context, top);
	const over = bottom - top;
	if (asked <= 0 || Math.abs(over - asked) <= settings.ruler + sameWithin) return [];
	return [
		{
			code: 'weight-lost',
			level: 'note',
			cells: ['top', 'bottom'],
			figures: () => ({ bottom, top, over, asked }),
			candidates: () =>
				clearEach(context, ['bottom', 'top', 'side', 'window height', 'mount height', 'mount', 'picture height']),
		},
	];
};

/** Whether the weight asked is the one that the row is worked out with: then only the ruler moves the bottom. */
function isKept({ read, settings, solution: { weight } }: RowContext): boolean {
	if (weight === undefined) return false;
	const asked = fixedWeight(weightOf(read.cells, settings));
	return asked === undefined || (asked.times === weight.times && asked.more === weight.more);
}
