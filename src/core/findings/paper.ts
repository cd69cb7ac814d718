import { sameWithin } from '../length/length.ts';
import { paperAsItLies, paperPlace } from '../row/paperPlace.ts';
import { clear, clearEach, sizeColumns } from './candidates.ts';
import type { Axis, FiguresByCode } from './figures.ts';
import type { Finder, Found } from './found.ts';
import { heldBy } from './heldBy.ts';
import { paperThatHolds } from './paperThatHolds.ts';

/**
 * `paper-short`: the paper is smaller than the picture (`stop`); or, with a reveal or paper larger than the picture, it
 * reaches under the mount by less than holds it (`look`).
 */
export const paperShort: Finder = (context) => {
	const { read, settings, solution } = context;
	const { pictureWidth, pictureHeight } = solution.solved;
	const { paper } = read.cells;
	if (!paper || !pictureWidth || !pictureHeight) return [];
	const lies = paperAsItLies(paper, solution.solved);
	const found = (level: Found['level'], axis: Axis, figures: () => FiguresByCode['paper-short']): Found => ({
		code: 'paper-short',
		level,
		cells: [axis === 'width' ? 'pictureWidth' : 'pictureHeight'],
		figures,
		candidates: () => [
			...paperThatHolds(context),
			clear('paper'),
			...clearEach(context, ['reveal', 'signing space', ...sizeColumns]),
		],
	});
	const short = [
		['width', lies.width, pictureWidth],
		['height', lies.height, pictureHeight],
	] as const;
	const stops = short.flatMap(([axis, paperSide, picture]) =>
		paperSide < picture - sameWithin
			? [
					found('stop', axis, () => ({
						kind: 'smaller',
						axis,
						paper: { width: lies.width, height: lies.height },
						short: picture - paperSide,
						picture,
					})),
				]
			: [],
	);
	const place = paperPlace(read.cells, solution.solved);
	if (!place) return stops;
	const reaches = { width: place.reachesSide, height: Math.min(place.reachesTop, place.reachesBottom) };
	const held = heldBy(settings.unit);
	const looks = short.flatMap(([axis, paperSide, picture]) => {
		if (paperSide < picture - sameWithin || reaches[axis] >= held - sameWithin) return [];
		const isLarger = paperSide > picture + sameWithin;
		if (solution.cover.reveal === undefined && !isLarger) return [];
		const at = axis === 'width' ? 'side' : place.reachesTop <= place.reachesBottom ? 'top' : 'bottom';
		const usual = { usual: held };
		return [found('look', axis, () => ({ kind: 'hardly held', at, reaches: Math.floor(reaches[axis]), held: usual }))];
	});
	return [...stops, ...looks];
};

/** `paper-crowds`: the paper is nearer the mount's edge than the hinge margin. */
export const paperCrowds: Finder = (context) => {
	const { read, solution, settings } = context;
	const place = paperPlace(read.cells, solution.solved);
	if (!place) return [];
	const edges = [
		['width', 'side', place.fromLeft, 'side'],
		['height', place.fromTop <= place.fromBottom ? 'top' : 'bottom', Math.min(place.fromTop, place.fromBottom), 'top'],
	] as const;
	return edges.flatMap(([axis, edge, from]) => {
		if (from >= settings.hingeMargin - sameWithin) return [];
		return [
			{
				code: 'paper-crowds',
				level: 'look' as const,
				cells: axis === 'width' ? ['side'] : ['top', 'bottom'],
				figures: () => ({ at: edge, from, margin: settings.hingeMargin }),
				candidates: () => [...paperThatHolds(context), clear('paper'), ...clearEach(context, sizeColumns)],
			},
		];
	});
};
