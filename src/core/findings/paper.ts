import { type Length, length, sameWithin } from '../length/length.ts';
import { onRuler } from '../length/ruler.ts';
import { printableSize, wayOf } from '../row/paper.ts';
import type { ColumnName } from '../show/columns.ts';
import { clear, clearEach, sizeColumns, typedOf } from './candidates.ts';
import type { FiguresByCode } from './figures.ts';
import type { Axis } from './measure.ts';
import type { Candidate, Finder, Found, RowContext } from './found.ts';
import { heldBy } from './heldBy.ts';
import { paperThatHolds } from './paperThatHolds.ts';

const edgesOf = { width: ['left', 'right'], height: ['top', 'bottom'] } as const;
const keyOf = { width: 'pictureWidth', height: 'pictureHeight' } as const;
const marginOf = { width: 'margin left', height: 'margin top' } as const satisfies Record<Axis, ColumnName>;
const bothAxes = ['width', 'height'] as const;

/**
 * `paper-short`: the paper is smaller than the picture, or the picture is printed past its edge (`stop`); or, with a reveal
 * or paper larger than the picture, it reaches under the mount by less than holds it (`look`).
 */
export const paperShort: Finder = (context) => {
	const { settings, solution, onPaper, place } = context;
	const { pictureWidth, pictureHeight } = solution.solved;
	if (!onPaper || !pictureWidth || !pictureHeight) return [];
	const { paper } = onPaper;
	const picture = { width: pictureWidth, height: pictureHeight };
	const found = (level: Found['level'], axis: Axis, figures: () => FiguresByCode['paper-short']): Found => ({
		code: 'paper-short',
		level,
		cells: [keyOf[axis]],
		figures,
		candidates: () => [
			...movesOnPaper(context, axis),
			...paperThatHolds(context),
			clear('paper'),
			...clearEach(context, ['reveal', 'signing space', ...sizeColumns]),
		],
	});
	const held = heldBy(settings.unit);
	return bothAxes.flatMap((axis): readonly Found[] => {
		const short = picture[axis] - paper[axis];
		if (short > sameWithin)
			return [found('stop', axis, () => ({ kind: 'smaller', axis, paper, short, picture: picture[axis] }))];
		const past = edgesOf[axis].find((edge) => onPaper[edge] < -sameWithin);
		if (past) return [found('stop', axis, () => ({ kind: 'past the edge', edge: past, past: -onPaper[past] }))];
		if (!place?.reaches) return [];
		const [near, far] = edgesOf[axis];
		const at = place.reaches[near] <= place.reaches[far] ? near : far;
		const reaches = place.reaches[at];
		if (reaches >= held - sameWithin) return [];
		if (solution.cover.reveal === undefined && short >= -sameWithin) return [];
		const border = at === 'left' || at === 'right' ? 'side' : at;
		return [found('look', axis, () => ({ kind: 'hardly held', at: border, reaches, held: { usual: held } }))];
	});
};

/** `paper-crowds`: the paper is nearer the mount's edge than the hinge margin. */
export const paperCrowds: Finder = (context) => {
	const { place, onPaper, settings } = context;
	if (!place || !onPaper) return [];
	const { left, right, top, bottom } = place.from;
	const edges = [
		['width', 'side', Math.min(left, right)],
		['height', top <= bottom ? 'top' : 'bottom', Math.min(top, bottom)],
	] as const;
	return edges.flatMap(([axis, edge, from]) => {
		if (from >= settings.hingeMargin - sameWithin) return [];
		return [
			{
				code: 'paper-crowds',
				level: 'look' as const,
				cells: axis === 'width' ? ['side'] : ['top', 'bottom'],
				figures: () => ({ at: edge, from, margin: settings.hingeMargin }),
				candidates: () => [
					...movesOnPaper(context, axis),
					...paperThatHolds(context),
					clear('paper'),
					...clearEach(context, sizeColumns),
				],
			},
		];
	});
};

/**
 * `paper-margin`: the picture is larger than what can be printed of its paper, or a margin that is typed, or follows from
 * one, is under the printer's.
 */
export const paperMargin: Finder = (context) => {
	const { read, solution, onPaper, settings } = context;
	const { pictureWidth, pictureHeight } = solution.solved;
	const { paper } = read.cells;
	if (!paper || !onPaper || !pictureWidth || !pictureHeight) return [];
	const picture = { width: pictureWidth, height: pictureHeight };
	const printable = printableSize(paper, wayOf(picture), solution.cover, settings);
	const typed = { width: read.cells.marginLeft, height: read.cells.marginTop };
	return bothAxes.flatMap((axis): readonly Found[] => {
		const found = (figures: () => FiguresByCode['paper-margin']): Found => ({
			code: 'paper-margin',
			level: 'look',
			cells: [keyOf[axis]],
			figures,
			candidates: () => [
				...movesOnPaper(context, axis),
				...paperThatHolds(context),
				...clearEach(context, [...sizeColumns, 'reveal', 'signing space', 'paper']),
			],
		});
		if (picture[axis] > printable[axis] + sameWithin && !isToldShort(context, axis, paper.margin))
			return [found(() => ({ kind: 'too large', axis, picture: picture[axis], printable: printable[axis] }))];
		if (typed[axis] === undefined) return [];
		const under = edgesOf[axis].find((edge) => onPaper[edge] < paper.margin - sameWithin);
		return under ? [found(() => ({ kind: 'margin', edge: under, margin: onPaper[under], least: paper.margin }))] : [];
	});
};

/** Whether `paper-short` tells it already: the paper is smaller, or what shows round the picture leaves too little of it. */
function isToldShort({ onPaper, place, settings }: RowContext, axis: Axis, printersMargin: Length): boolean {
	const [near, far] = edgesOf[axis];
	const beside = onPaper![near] + onPaper![far];
	if (beside < -sameWithin) return true;
	if (!place?.reaches || beside < 2 * printersMargin - sameWithin) return false;
	return Math.min(place.reaches[near], place.reaches[far]) < heldBy(settings.unit) - sameWithin;
}

/** `paper-bounds`: the paper made the picture smaller than the mount would take. */
export const paperBounds: Finder = (context) => {
	const { solution } = context;
	const bound = solution.boundByPaper;
	if (!bound) return [];
	const { printable, unbound, sides } = bound;
	return [
		{
			code: 'paper-bounds',
			level: 'note',
			cells: sides.map((side) => keyOf[side]),
			figures: () => ({ holds: printable, takes: unbound }),
			candidates: () => [...paperThatHolds(context, unbound), ...clearEach(context, ['paper'])],
		},
	];
};

/** Ways to lay the picture elsewhere on its paper: in the middle, or so that the mount holds it as well on both sides. */
function movesOnPaper(context: RowContext, axis: Axis): Candidate[] {
	const { read, settings, onPaper, place, text } = context;
	const column = marginOf[axis];
	const middle = typedOf(context, [column]).length > 0 ? [clear(column)] : [];
	if (!onPaper || !place?.reaches || !read.cells.paper) return middle;
	const [near, far] = edgesOf[axis];
	const spare = onPaper[near] + onPaper[far];
	const { margin } = read.cells.paper;
	const evenly = onPaper[near] + (place.reaches[far] - place.reaches[near]) / 2;
	const within = Math.min(Math.max(evenly, margin), spare - margin);
	if (!(within >= 0)) return middle;
	const nearest = onRuler(within, settings.ruler);
	const to: Length = nearest >= margin && nearest <= spare - margin ? nearest : length(Math.round(within));
	return [...middle, { offer: { kind: 'set', column, to }, change: { [column]: text(to) } }];
}
