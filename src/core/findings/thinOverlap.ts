import { sameWithin } from '../length/length.ts';
import { clearEach, columnOf, coverColumns, sizeColumns } from './candidates.ts';
import { axes, type Finder } from './found.ts';
import { uncovered } from './uncovered.ts';

/** `thin-overlap`: the mount covers the picture by less than the cutting tolerance, and no reveal was asked. */
export const thinOverlap: Finder = (context) => {
	const { solution, settings, say } = context;
	if (solution.cover.reveal !== undefined) return [];
	return axes.flatMap(({ axis, window, picture }) => {
		const covered = axis === 'width' ? solution.solved.overlapSide : solution.solved.overlapTop;
		const bare = uncovered(context, axis);
		const hasSpaceBelow = axis === 'height' && solution.cover.signingSpace > 0;
		if (covered === undefined || bare === undefined || (bare > sameWithin && !hasSpaceBelow)) return [];
		if (covered < -sameWithin || covered >= settings.cuttingTolerance - sameWithin) return [];
		const where = axis === 'width' ? 'at the sides' : hasSpaceBelow ? 'at the top' : 'at top and bottom';
		return [
			{
				code: 'thin-overlap',
				level: 'look',
				cells: [window, picture],
				message: () =>
					`The mount covers ${covered === 0 ? 'nothing' : `only ${say(covered)}`} of the picture ${where}, less than the cutting tolerance of ${say(settings.cuttingTolerance)}.`,
				candidates: () => [
					...clearEach(context, [...coverColumns, columnOf(window), ...sizeColumns]),
					{
						label: () => `Cover it by ${say(settings.cuttingTolerance)} a side`,
						change: { overlap: context.text(settings.cuttingTolerance) },
					},
				],
			},
		];
	});
};
