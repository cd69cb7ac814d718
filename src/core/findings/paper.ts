import { type Length, length, sameWithin } from '../length/length.ts';
import { paperAsItLies, paperPlace } from '../row/paperPlace.ts';
import { clear, clearEach, sizeColumns } from './candidates.ts';
import type { Finder, Found } from './found.ts';
import { heldBy } from './heldBy.ts';
import { sizeText } from './sizeText.ts';
import { paperThatHolds } from './paperThatHolds.ts';

/**
 * `paper-short`: the paper is smaller than the picture (`stop`); or, with a reveal or paper larger than the picture, it
 * reaches under the mount by less than holds it (`look`).
 */
export const paperShort: Finder = (context) => {
	const { read, settings, solution, say, figure } = context;
	const { pictureWidth, pictureHeight } = solution.solved;
	const { paper } = read.cells;
	if (!paper || !pictureWidth || !pictureHeight) return [];
	const lies = paperAsItLies(paper, solution.solved);
	const found = (level: Found['level'], axis: 'width' | 'height', message: () => string): Found => ({
		code: 'paper-short',
		level,
		cells: [axis === 'width' ? 'pictureWidth' : 'pictureHeight'],
		message,
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
					found(
						'stop',
						axis,
						() =>
							`The paper ${sizeText(context, lies.width, lies.height)} is smaller than the picture: its ${axis} ${figure(paperSide)} is ${say(picture - paperSide)} short of ${figure(picture)}.`,
					),
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
		const reach = length(Math.floor(reaches[axis]));
		const where =
			axis === 'width' ? 'at the sides' : place.reachesTop <= place.reachesBottom ? 'at the top' : 'at the bottom';
		return [found('look', axis, () => `The paper ${reachWords(reach, say)} ${where}; ${say(held)} hold it.`)];
	});
	return [...stops, ...looks];
};

function reachWords(reach: Length, say: (value: Length | number) => string): string {
	if (reach > 0) return `reaches under the mount by only ${say(reach)}`;
	return reach === 0 ? 'ends at the window' : `ends ${say(-reach)} inside the window`;
}

/** `paper-crowds`: the paper is nearer the mount's edge than the hinge margin. */
export const paperCrowds: Finder = (context) => {
	const { read, solution, settings, say } = context;
	const place = paperPlace(read.cells, solution.solved);
	if (!place) return [];
	const edges = [
		['width', 'side', place.fromLeft, 'side'],
		['height', place.fromTop <= place.fromBottom ? 'top' : 'bottom', Math.min(place.fromTop, place.fromBottom), 'top'],
	] as const;
	return edges.flatMap(([axis, edge, from]) => {
		if (from >= settings.hingeMargin - sameWithin) return [];
		const words = from < 0 ? `is ${say(-from)} past the mount’s edge` : `is ${say(from)} from the mount’s edge`;
		return [
			{
				code: 'paper-crowds',
				level: 'look' as const,
				cells: axis === 'width' ? ['side'] : ['top', 'bottom'],
				message: () => `The paper ${words} at the ${edge}; ${say(settings.hingeMargin)} are asked for hinges.`,
				candidates: () => [...paperThatHolds(context), clear('paper'), ...clearEach(context, sizeColumns)],
			},
		];
	});
};
