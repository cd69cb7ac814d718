import { sameWithin } from '../length/length.ts';
import { clearEach, cutToSuit, sizeColumns } from './candidates.ts';
import { axes, type Finder } from './found.ts';

/** `thin-border`: a border under the least border. */
export const thinBorder: Finder = (context) => {
	const { solution, settings, figure, say } = context;
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
				message: () => {
					const words = thin.map((key) => `${key} ${figure(solution.solved[key]!)}`).join(' and ');
					return `${words[0]!.toUpperCase()}${words.slice(1)} ${thin.length > 1 ? 'are' : 'is'} under the least border of ${say(settings.leastBorder)}.`;
				},
				candidates: () => [...clearEach(context, sizeColumns), cutToSuit],
			},
		];
	});
};
