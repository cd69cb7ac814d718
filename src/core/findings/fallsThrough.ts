import { type Length, mm, plus, sameWithin, times } from '../length/length.ts';
import { innerWindowIsSmaller } from '../row/cover.ts';
import { paperAsItLies } from '../row/paperPlace.ts';
import { clear, clearEach, coverColumns } from './candidates.ts';
import { axes, type Candidate, type Finder, type RowContext } from './found.ts';
import { paperThatHolds } from './paperThatHolds.ts';

/** `falls-through`: the window is as large as the paper (blank: the picture), or larger. */
export const fallsThrough: Finder = (context) => {
	const { solution, read, figure, say } = context;
	const paper = read.cells.paper && paperAsItLies(read.cells.paper, solution.solved);
	return axes.flatMap(({ axis, window, picture }) => {
		const opening = innermost(context, solution.solved[window]);
		const held = paper ? paper[axis] : solution.solved[picture];
		if (opening === undefined || held === undefined || opening < held - sameWithin) return [];
		const what = paper ? `the paper’s ${figure(held)}` : `the print’s ${figure(held)} (no larger paper is typed)`;
		const by = opening - held > sameWithin ? `${say(opening - held)} larger than` : 'as large as';
		return [
			{
				code: 'falls-through',
				level: 'stop',
				cells: [window, picture],
				message: () => `The window’s ${axis} ${figure(opening)} is ${by} ${what}: the print falls through.`,
				candidates: () => mends(context),
			},
		];
	});
};

const innermost = (context: RowContext, window: Length | undefined): number | undefined =>
	window === undefined ? undefined : window - innerWindowIsSmaller(context.read.cells);

function mends(context: RowContext): Candidate[] {
	const { settings, text, say, read } = context;
	const overlap = settings.unit === 'in' ? times(settings.cuttingTolerance, 2) : plus(settings.cuttingTolerance, mm(1));
	const paper = read.cells.paper ? [clear('paper')] : [];
	return [
		...clearEach(context, [...coverColumns, 'window width', 'window height', 'inner mount']),
		...paper,
		...paperThatHolds(context),
		{ label: () => `Cover the picture by ${say(overlap)} a side`, change: { overlap: text(overlap) } },
	];
}
