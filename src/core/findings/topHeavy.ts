import { sameWithin } from '../length/length.ts';
import { clearEach } from './candidates.ts';
import type { Finder } from './found.ts';

/** `top-heavy`: the bottom border is narrower than the top. */
export const topHeavy: Finder = (context) => {
	const { top, bottom } = context.solution.solved;
	if (top === undefined || bottom === undefined || bottom >= top - sameWithin) return [];
	return [
		{
			code: 'top-heavy',
			level: 'look',
			cells: ['top', 'bottom'],
			figures: () => ({ bottom, narrower: top - bottom, top }),
			candidates: () =>
				clearEach(context, ['top', 'bottom', 'side', 'window height', 'mount height', 'mount', 'picture height']),
		},
	];
};
