import { formatMark } from '../length/formatMark.ts';
import { hiddenByFrame } from '../row/frame.ts';
import { boardThickness, faceOpening, mountLayers, thicknessOf } from '../row/stack.ts';
import { layHinges } from '../row/layHinges.ts';
import { shownMargins } from '../row/shownMargins.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
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
 * sentences, without their sums. A fact that does not apply is not there.
 */
export function figuresOf(worked: WorkedRow, settings: Settings): readonly FactFigure[] {
	const { solved } = worked;
	const { size } = sayer(settings);
	return [
		...(solved.pictureWidth && solved.pictureHeight
			? [{ what: 'Picture', figures: size(solved.pictureWidth, solved.pictureHeight) }]
			: []),
		...mountFigures(worked, settings),
		...paperFigures(worked, settings),
		...glazingFigures(worked, settings),
		...frameFigures(worked, settings),
	];
}

function mountFigures(worked: WorkedRow, settings: Settings): readonly FactFigure[] {
	const { read, solved, hasMount, boards } = worked;
	const { windowWidth, windowHeight, mountWidth, mountHeight, side, top, bottom } = solved;
	if (!hasMount || read.cells.isFloat || !windowWidth || !windowHeight || !mountWidth || !mountHeight) return [];
	if (side === undefined || top === undefined || bottom === undefined) return [];
	const { n, say, size } = sayer(settings);
	const borders = (sides: number, above: number, below: number) =>
		`sides ${n(sides)}, top ${n(above)}, bottom ${say(below)}`;
	const { thickness } = boardThickness(boards.mount);
	const frame = hiddenByFrame(worked);
	const shows = read.cells.innerMount;
	return [
		...coverFigures(worked, settings),
		{
			what: 'Opening at the face',
			figures: size(faceOpening(windowWidth, thickness), faceOpening(windowHeight, thickness)),
		},
		{ what: 'Visible borders, unframed', figures: borders(side - thickness, top - thickness, bottom - thickness) },
		...(frame
			? [
					{
						what: 'Visible borders, framed',
						figures: borders(side - frame.width, top - frame.height, bottom - frame.height),
					},
				]
			: []),
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

/** How thick mounts, print and undermount are together, so that nobody counts the undermount twice. */
function layersFigure(worked: WorkedRow, settings: Settings): FactFigure {
	const layers = mountLayers(worked, settings);
	const hasUndermount = layers.some(({ what }) => what === 'undermount');
	return {
		what: hasUndermount ? 'Mount, print and undermount' : 'Mount and print',
		figures: sayer(settings).say(thicknessOf(layers)),
	};
}

/** How far the mount covers the picture, and how much paper shows round it. */
function coverFigures({ solved }: WorkedRow, settings: Settings): readonly FactFigure[] {
	const { overlapSide, overlapTop, overlapBottom } = solved;
	if (overlapSide === undefined || overlapTop === undefined || overlapBottom === undefined) return [];
	const places = [
		{ where: 'sides', cover: overlapSide },
		...(overlapTop === overlapBottom
			? [{ where: 'top and bottom', cover: overlapTop }]
			: [
					{ where: 'top', cover: overlapTop },
					{ where: 'bottom', cover: overlapBottom },
				]),
	];
	const { n, say } = sayer(settings);
	const line = (what: string, of: typeof places): readonly FactFigure[] => {
		if (of.length === 0) return [];
		const isAlike = of.length === places.length && of.every(({ cover }) => cover === overlapSide);
		const { unit } = settings;
		const figures = isAlike
			? `${say(Math.abs(overlapSide))} a side`
			: `${of.map(({ where, cover }) => `${where} ${n(Math.abs(cover))}`).join(', ')} ${unit}`;
		return [{ what, figures }];
	};
	return [
		...line(
			'Mount covers',
			places.filter(({ cover }) => cover >= 0),
		),
		...line(
			'Paper shows',
			places.filter(({ cover }) => cover < 0),
		),
	];
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
					{ what: 'Paper lies at', figures: `${n(lies.from.left)} from left, ${say(lies.from.top)} from top` },
				]
			: []),
		...(margins
			? [
					{
						what: 'Margins',
						figures: `left ${n(margins.left)}, top ${n(margins.top)}, right ${n(margins.right)}, bottom ${say(margins.bottom)}`,
					},
				]
			: []),
		...(hinges && laid
			? [
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
