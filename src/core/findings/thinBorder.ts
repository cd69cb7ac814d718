import { sameWithin } from '../length/length.ts';
import { bordersIn, clearEach, cutToSuit, sizeColumns } from './candidates.ts';
import { axes, type Finder } from './found.ts';

/** `thin-border`: a border under the least border. */
export const thinBorder: Finder = (context) => {
	const { solution, settings } = context;
	return axes.flatMap(({ borders }) => {
		const thin = borders.filter((key) => {
			const border = solution.solved[key];
			return border !== undefined && border < settings.leastBorder - sameWithin;
		});
		if (thin.length === 0) return [];
		return [
			{
				code: 'thin-border',
				level: 'look',
				cells: thin,
				figures: () => ({ borders: bordersIn(solution, thin), least: settings.leastBorder }),
				candidates: () => [...clearEach(context, sizeColumns), cutToSuit],
			},
		];
	});
};
