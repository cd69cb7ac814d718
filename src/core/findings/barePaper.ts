import { length, sameWithin } from '../length/length.ts';
import { isRevealAsked, uncovered } from './uncovered.ts';
import { columnOf } from '../row/columnOfSize.ts';
import { clear, clearEach, sizeColumns } from './candidates.ts';
import { axes, type Candidate, type Finder, type RowContext } from './found.ts';

/** `bare-paper`: the window is larger than the picture, and no reveal was asked. */
export const barePaper: Finder = (context) => {
	const { solution } = context;
	return axes.flatMap((keys) => {
		const bare = uncovered(context, keys.axis);
		if (bare === undefined || bare <= sameWithin || isRevealAsked(context, keys.axis)) return [];
		const [window, picture] = [solution.solved[keys.window]!, solution.solved[keys.picture]!];
		return [
			{
				code: 'bare-paper',
				level: 'look',
				cells: [keys.window, keys.picture],
				figures: () => ({ axis: keys.axis, window, picture, bare: Math.round(bare / 2) }),
				candidates: () => [
					...(keys.axis === 'width' &&
					context.read.cells.windowWidth !== undefined &&
					context.read.cells.windowHeight !== undefined
						? [clear('window width', 'window height')]
						: []),
					...clearEach(context, [columnOf(keys.window), columnOf(keys.picture), ...sizeColumns]),
					...askFor(context, bare),
				],
			},
		];
	});
};

/** The reveal that the sizes show anyway. */
function askFor(context: RowContext, bare: number): Candidate[] {
	if (bare % 2 !== 0) return [];
	const reveal = length(bare / 2);
	return [{ offer: { kind: 'set', column: 'reveal', to: reveal }, change: { reveal: context.text(reveal) } }];
}
