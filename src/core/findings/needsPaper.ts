import { mm, plus, sameWithin, times } from '../length/length.ts';
import { clearEach, coverColumns } from './candidates.ts';
import { axes, type Candidate, type Finder, type RowContext } from './found.ts';
import { paperThatHolds } from './paperThatHolds.ts';
import { sizeText } from './sizeText.ts';
import { uncovered } from './uncovered.ts';

/**
 * `needs-paper`: the window is as large as the picture or larger, and no paper is typed: nothing says that the paper
 * reaches under the mount.
 */
export const needsPaper: Finder = (context) => {
	const { read, solution, figure } = context;
	if (read.cells.paper) return [];
	const bare = axes.filter(({ axis }) => (uncovered(context, axis) ?? -Infinity) >= -sameWithin);
	const [first] = bare;
	if (first === undefined) return [];
	const { solved } = solution;
	const compared = () =>
		bare.length > 1
			? `The window ${sizeText(context, solved.windowWidth!, solved.windowHeight!)} is no smaller than the picture ${sizeText(context, solved.pictureWidth!, solved.pictureHeight!)}`
			: `The window’s ${first.axis} ${figure(solved[first.window]!)} is no smaller than the picture’s ${figure(solved[first.picture]!)}`;
	return [
		{
			code: 'needs-paper',
			level: 'look',
			cells: bare.flatMap(({ window, picture }) => [window, picture]),
			message: () => `${compared()}. Type the paper that reaches under the mount.`,
			candidates: () => coverMends(context),
		},
	];
};

/** What may have the paper held by the mount again: the picture covered, or a larger paper. */
export function coverMends(context: RowContext): Candidate[] {
	const { settings, text, say } = context;
	const overlap = settings.unit === 'in' ? times(settings.cuttingTolerance, 2) : plus(settings.cuttingTolerance, mm(1));
	return [
		...clearEach(context, [...coverColumns, 'window width', 'window height', 'inner mount']),
		...paperThatHolds(context),
		{ label: () => `Cover the picture by ${say(overlap)} a side`, change: { overlap: text(overlap) } },
	];
}
