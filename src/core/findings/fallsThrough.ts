import { sameWithin } from '../length/length.ts';
import { paperAsItLies } from '../row/paperPlace.ts';
import { clear } from './candidates.ts';
import { axes, type Finder } from './found.ts';
import { coverMends } from './needsPaper.ts';

/** `falls-through`: the window is as large as the typed paper, or larger. */
export const fallsThrough: Finder = (context) => {
	const { solution, read, figure, say } = context;
	if (!read.cells.paper) return [];
	const paper = paperAsItLies(read.cells.paper, solution.solved);
	return axes.flatMap(({ axis, window, picture }) => {
		const opening = solution.solved[window];
		const held = paper[axis];
		if (opening === undefined || opening < held - sameWithin) return [];
		const by = opening - held > sameWithin ? `${say(opening - held)} larger than` : 'as large as';
		return [
			{
				code: 'falls-through',
				level: 'stop',
				cells: [window, picture],
				message: () =>
					`The window’s ${axis} ${figure(opening)} is ${by} the paper’s ${figure(held)}: the print falls through.`,
				candidates: () => [...coverMends(context), clear('paper')],
			},
		];
	});
};
