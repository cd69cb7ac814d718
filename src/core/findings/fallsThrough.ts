import { type Length, mm, plus, sameWithin, times } from '../length/length.ts';
import { paperSizes } from '../length/paperSizes.ts';
import { innerWindowIsSmaller } from '../row/cover.ts';
import { clear, clearEach, coverColumns } from './candidates.ts';
import { axes, type Candidate, type Finder, type RowContext } from './found.ts';
import { sizeText } from './sizeText.ts';

/** How far paper must reach under the mount to be held: 5 mm. Common practice. */
const heldBy = mm(5);

/** `falls-through`: the window is as large as the paper (blank: the picture), or larger. */
export const fallsThrough: Finder = (context) => {
	const { solution, read, figure, say } = context;
	const { paper } = read.cells;
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
				message: `The window’s ${axis} ${figure(opening)} is ${by} ${what}: the print falls through.`,
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

/** The smallest paper of a known name that the picture is on and the mount holds on every side. */
function paperThatHolds(context: RowContext): Candidate[] {
	const { pictureWidth, pictureHeight, windowWidth, windowHeight } = context.solution.solved;
	if (!pictureWidth || !pictureHeight || !windowWidth || !windowHeight) return [];
	const width = Math.max(pictureWidth, innermost(context, windowWidth)! + 2 * heldBy);
	const height = Math.max(pictureHeight, innermost(context, windowHeight)! + 2 * heldBy);
	const [short, long] = [Math.min(width, height), Math.max(width, height)];
	const holds = paperSizes
		.filter((paper) => paper.width >= short && paper.height >= long)
		.sort((a, b) => a.width * a.height - b.width * b.height)[0];
	if (!holds) return [];
	const [across, down] = width > height ? [holds.height, holds.width] : [holds.width, holds.height];
	const typed = `${context.text(across)} x ${context.text(down)}`;
	return [{ label: () => `Print on ${holds.name}, ${sizeText(context, across, down)}`, change: { paper: typed } }];
}
