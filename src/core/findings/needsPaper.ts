import { mm, plus, sameWithin, times } from '../length/length.ts';
import { clearEach, coverColumns } from './candidates.ts';
import type { FiguresByCode } from './figures.ts';
import { axes, type Candidate, type Finder, type RowContext } from './found.ts';
import { paperThatHolds } from './paperThatHolds.ts';
import { uncovered } from './uncovered.ts';

/**
 * `needs-paper`: the window is as large as the picture or larger, or the paper itself is seen, and none is typed: nothing
 * says that the paper reaches under the mount, or how large it is.
 */
export const needsPaper: Finder = (context) => {
	const { read, solution } = context;
	if (read.cells.paper) return [];
	if (read.cells.isFloat)
		return [
			{
				code: 'needs-paper',
				level: 'look',
				cells: ['paper'],
				figures: () => ({ kind: 'float' }),
				candidates: () => paperThatHolds(context),
			},
		];
	const bare = axes.filter(({ axis }) => (uncovered(context, axis) ?? -Infinity) >= -sameWithin);
	const [first] = bare;
	if (first === undefined) return [];
	const { solved } = solution;
	const compared = (): FiguresByCode['needs-paper'] => {
		const { windowWidth, windowHeight, pictureWidth, pictureHeight } = solved;
		if (bare.length === 1)
			return { kind: 'one', axis: first.axis, window: solved[first.window]!, picture: solved[first.picture]! };
		return {
			kind: 'both',
			window: { width: windowWidth!, height: windowHeight! },
			picture: { width: pictureWidth!, height: pictureHeight! },
		};
	};
	return [
		{
			code: 'needs-paper',
			level: 'look',
			cells: bare.flatMap(({ window, picture }) => [window, picture]),
			figures: compared,
			candidates: () => coverMends(context),
		},
	];
};

/** What may have the paper held by the mount again: the picture covered, or a larger paper. */
export function coverMends(context: RowContext): Candidate[] {
	const { settings, text } = context;
	const overlap = settings.unit === 'in' ? times(settings.cuttingTolerance, 2) : plus(settings.cuttingTolerance, mm(1));
	return [
		...clearEach(context, [...coverColumns, 'window width', 'window height', 'inner mount']),
		...paperThatHolds(context),
		{ offer: { kind: 'set', column: 'overlap', to: overlap }, change: { overlap: text(overlap) } },
	];
}
