import { sameWithin } from '../length/length.ts';
import { sheetOf } from '../row/paper.ts';
import type { ColumnName } from '../show/columns.ts';
import { clear, sidesOf, typedOf } from './candidates.ts';
import { axes, type Candidate, type Finder } from './found.ts';
import { coverMends } from './needsPaper.ts';

/** `falls-through`: the window is as large as the typed paper, or larger. */
export const fallsThrough: Finder = (context) => {
	const { solution, read, onPaper } = context;
	const paper = onPaper?.paper ?? (read.cells.paper && sheetOf(read.cells.paper));
	if (!paper) return [];
	const shown = typedOf(context, ['reveal', 'signing space']);
	return axes.flatMap(({ axis, window, picture }) => {
		const opening = solution.solved[window];
		const held = paper[axis];
		if (opening === undefined || opening < held - sameWithin) return [];
		return [
			{
				code: 'falls-through',
				level: 'stop',
				cells: [window, picture],
				figures: () => {
					const larger = opening - held > sameWithin ? opening - held : 0;
					return { axis, window: opening, larger, paper: held };
				},
				candidates: () => [
					...coverMends(context),
					// Either alone may leave the other way open.
					...(shown.length > 1 ? [clearWithWindow(shown)] : []),
					clear('paper'),
				],
			},
		];
	});
};

/** Clears cells at once, and says what window that leaves. */
const clearWithWindow = (columns: readonly ColumnName[]): Candidate => ({
	offer: ({ solution: { solved } }) => ({
		kind: 'clear',
		columns,
		window: sidesOf(solved.windowWidth, solved.windowHeight),
	}),
	change: clear(...columns).change,
});
