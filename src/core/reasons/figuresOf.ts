import { isSame, type Length, length } from '../length/length.ts';
import { formatMark } from '../length/formatMark.ts';
import { boardThickness, faceOpening, mountLayers, thicknessOf } from '../row/stack.ts';
import { layHinges } from '../row/layHinges.ts';
import { shownMargins } from '../row/shownMargins.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { groupBy } from '../values/groupBy.ts';
import { listed } from '../values/listed.ts';
import { keptOff } from './protection.ts';
import { sayer } from './sayer.ts';

/** What is known of a print, as a figure after its word. */
export interface FactFigure {
	readonly what: string;
	/** With its unit once, at the end. */
	readonly figures: string;
}

/**
 * What there is to know of a print besides what its drawing shows, as figures: the same facts as `factsOf` says in
 * sentences, without their sums. A fact that does not apply is not there. Of the borders see `bordersOf`.
 */
export function figuresOf(worked: WorkedRow, settings: Settings): readonly FactFigure[] {
	const { solved } = worked;
	const { size } = sayer(settings);
	return [
		...(solved.pictureWidth && solved.pictureHeight
			? [{ what: 'Picture', figures: size(solved.pictureWidth, solved.pictureHeight) }]
			: []),
		...coverFigures(worked, settings),
		...mountFigures(worked, settings),
		...paperFigures(worked, settings),
		...glazingFigures(worked, settings),
		...frameFigures(worked, settings),
	];
}

/** How far the mount covers the picture, and how much paper shows round it, each at the sides of which it is true. */
function coverFigures({ read, solved, hasMount }: WorkedRow, settings: Settings): readonly FactFigure[] {
	if (!hasMount || read.cells.isFloat) return [];
	const { overlapSide, overlapTop, overlapBottom } = solved;
	const covers = { 'each side': overlapSide, top: overlapTop, bottom: overlapBottom };
	const at = (sign: 1 | -1) =>
		Object.entries(covers).flatMap(([side, cover]) =>
			cover !== undefined && (sign > 0 ? cover >= 0 : cover < 0) ? [[side, length(sign * cover)] as const] : [],
		);
	return [
		{ what: 'Mount covers', figures: eachSide(at(1), settings) },
		{ what: 'Paper shows', figures: eachSide(at(-1), settings) },
	].filter(({ figures }) => figures !== '');
}

/** "4 mm each side, 4.2 mm top and bottom": what is alike once, each with its unit; "3 mm all round". */
function eachSide(lengths: readonly (readonly [side: string, length: Length])[], settings: Settings): string {
	const { say } = sayer(settings);
	const alike = [...groupBy(lengths, ([, length]) => say(length)).values()];
	return alike
		.map(
			(sides) => `${say(sides[0]![1])} ${sides.length > 2 ? 'all round' : sides.map(([side]) => side).join(' and ')}`,
		)
		.join(', ');
}

function mountFigures(worked: WorkedRow, settings: Settings): readonly FactFigure[] {
	const { read, solved, hasMount, boards } = worked;
	const { windowWidth, windowHeight, mountWidth, mountHeight } = solved;
	if (!hasMount || read.cells.isFloat || !windowWidth || !windowHeight || !mountWidth || !mountHeight) return [];
	const { size } = sayer(settings);
	const { thickness } = boardThickness(boards.mount);
	const shows = read.cells.innerMount;
	return [
		...squareFigure(worked, settings),
		{
			what: 'Window at the face',
			figures: size(faceOpening(windowWidth, thickness), faceOpening(windowHeight, thickness)),
		},
		...(shows
			? [
					{ what: 'Inner window', figures: size(windowWidth - 2 * shows, windowHeight - 2 * shows) },
					{
						what: 'Inner blank',
						figures: size(mountWidth - 2 * settings.innerBlankSmaller, mountHeight - 2 * settings.innerBlankSmaller),
					},
				]
			: []),
		layersFigure(worked, settings),
	];
}

/**
 * That a square picture has a window which is not, because its borders go to the ruler: whoever lays a rule on it wants to
 * know why. What is further from square was typed so.
 */
function squareFigure({ solved }: WorkedRow, settings: Settings): readonly FactFigure[] {
	const { windowWidth, windowHeight, pictureWidth, pictureHeight } = solved;
	if (!windowWidth || !windowHeight || !isSame(pictureWidth ?? 0, pictureHeight ?? 1)) return [];
	const { size, say } = sayer(settings);
	return isSame(windowWidth, windowHeight) || Math.abs(windowWidth - windowHeight) > 2 * settings.ruler
		? []
		: [
				{
					what: 'Window not square',
					figures: `${size(windowWidth, windowHeight)}, by the ruler’s ${say(settings.ruler)}`,
				},
			];
}

/** How thick mounts, print and undermount are together, so that nobody counts the undermount twice. */
function layersFigure(worked: WorkedRow, settings: Settings): FactFigure {
	const layers = mountLayers(worked, settings);
	const hasUndermount = layers.some(({ what }) => what === 'undermount');
	return {
		what: hasUndermount ? 'Mount, print and undermount' : 'Mount and print',
		figures: sayer(settings).say(thicknessOf(layers)),
	};
}

function paperFigures(worked: WorkedRow, settings: Settings): readonly FactFigure[] {
	const { place, onPaper, hinges } = worked;
	const { n, say, size } = sayer(settings);
	const margins = onPaper && shownMargins(onPaper, settings);
	const laid = layHinges(worked, settings);
	const trimmed = laid?.trimmed?.place;
	const lies = laid?.place ?? place;
	return [
		...(place && lies && !place.isPicture
			? [
					{ what: 'Paper', figures: size(place.paper.width, place.paper.height) },
					...(trimmed ? [{ what: 'Trim it to', figures: size(trimmed.paper.width, trimmed.paper.height) }] : []),
					{ what: 'Paper sits', figures: `${n(lies.from.left)} from left, ${say(lies.from.top)} from top` },
				]
			: []),
		...(margins
			? [
					{
						what: 'Margins',
						figures: eachSide(
							(['left', 'right', 'top', 'bottom'] as const).map((side) => [side, margins[side]]),
							settings,
						),
					},
				]
			: []),
		...(hinges && laid
			? [
					...(laid.place.isPicture
						? [{ what: 'Only if trimmed to', figures: size(laid.place.paper.width, laid.place.paper.height) }]
						: []),
					{
						what: `${hinges.count} hinges at`,
						figures: `${listed(laid.at.map((at) => formatMark(at, settings)))} ${settings.unit} from left`,
					},
				]
			: []),
	];
}

function glazingFigures(worked: WorkedRow, settings: Settings): readonly FactFigure[] {
	const { glazing } = worked.words;
	if (glazing === 'none') return [{ what: 'Glazing', figures: 'none' }];
	const { parts, far, isGuess } = keptOff(worked);
	const figures = parts.length === 0 ? 'nothing' : `${isGuess ? 'about ' : ''}${sayer(settings).say(far)}`;
	return [{ what: `Off the ${glazing}`, figures }];
}

function frameFigures({ frame, framed }: WorkedRow, settings: Settings): readonly FactFigure[] {
	const { frame: listedFrame, seat } = frame;
	if (!listedFrame || !seat) return [];
	const { n, say, size } = sayer(settings);
	const about = framed.isAbout ? 'about ' : '';
	const { depth } = listedFrame;
	return [
		...(framed.size ? [{ what: 'Framed', figures: size(framed.size.width, framed.size.height) }] : []),
		{ what: 'Play', figures: `${n(seat.play.width)} across, ${say(seat.play.height)} down` },
		{
			what: 'Stack',
			figures: depth === undefined ? `${about}${say(framed.depth)}` : `${about}${n(framed.depth)} of ${say(depth)}`,
		},
		...(framed.weightKg === undefined ? [] : [{ what: 'Weight', figures: `${about}${framed.weightKg.toFixed(1)} kg` }]),
	];
}
