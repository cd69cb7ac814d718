import { isSame } from '../length/length.ts';
import { bordersIn, clearEach } from './candidates.ts';
import type { Finder } from './found.ts';

/** `no-board`, of an inner mount: a blank so much smaller than the outer one has nothing left behind a border. */
export const innerBlank: Finder = (context) => {
	const { read, hasMount, settings, solution } = context;
	if (!read.cells.innerMount || !hasMount) return [];
	const smaller = settings.innerBlankSmaller;
	const short = (['side', 'top', 'bottom'] as const).filter((key) => {
		const border = solution.solved[key];
		return border !== undefined && (border < smaller || isSame(border, smaller));
	});
	if (short.length === 0) return [];
	return [
		{
			code: 'no-board',
			level: 'stop',
			cells: ['inner mount'],
			figures: () => ({ kind: 'inner blank', smaller, behind: bordersIn(solution, short) }),
			candidates: () => clearEach(context, ['inner mount', 'side', 'top', 'bottom']),
		},
	];
};
