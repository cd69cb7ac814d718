import { sameWithin } from '../length/length.ts';
import { columnOf } from '../row/columnOfSize.ts';
import { clearEach, coverColumns, sizeColumns } from './candidates.ts';
import { axes, type Finder } from './found.ts';
import { uncovered } from './uncovered.ts';

/** `thin-overlap`: the mount covers the picture by less than the cutting tolerance, and no reveal was asked. */
export const thinOverlap: Finder = (context) => {
	const { solution, settings } = context;
	if (solution.cover.reveal !== undefined) return [];
	return axes.flatMap(({ axis, window, picture }) => {
		const covered = axis === 'width' ? solution.solved.overlapSide : solution.solved.overlapTop;
		const bare = uncovered(context, axis);
		const hasSpaceBelow = axis === 'height' && solution.cover.signingSpace > 0;
		if (covered === undefined || bare === undefined || (bare > sameWithin && !hasSpaceBelow)) return [];
		if (covered < -sameWithin || covered >= settings.cuttingTolerance - sameWithin) return [];
		const at = axis === 'width' ? 'side' : hasSpaceBelow ? 'top' : 'top and bottom';
		return [
			{
				code: 'thin-overlap',
				level: 'look',
				cells: [window, picture],
				figures: () => ({ at, covered, tolerance: settings.cuttingTolerance }),
				candidates: () => [
					...clearEach(context, [...coverColumns, columnOf(window), ...sizeColumns]),
					{
						offer: { kind: 'set', column: 'overlap', to: settings.cuttingTolerance },
						change: { overlap: context.text(settings.cuttingTolerance) },
					},
				],
			},
		];
	});
};
