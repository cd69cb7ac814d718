import { sumWords } from './sumWords.ts';
import { formatLength, formatWithUnit } from '../length/formatLength.ts';
import { type Length, nearestLength } from '../length/length.ts';
import { hiddenByFrame } from '../row/frame.ts';
import { boardThickness, faceOpening, mountLayers, thicknessOf } from '../row/stack.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { shownText } from '../values/shownText.ts';

/**
 * What else there is to know of a mount that comes out, in sentences: the opening and borders that one sees, the inner
 * mount's window and blank, where the paper lies for hinging, and how thick it all is. A fact that does not apply is not there.
 */
export function factsOf(worked: WorkedRow, settings: Settings): readonly string[] {
	const { read, solved, hasMount, boards, place } = worked;
	const hanging = framedFacts(worked, settings);
	if (hasMount && read.cells.isFloat) return [...floatFacts(worked, settings), ...hanging];
	const { windowWidth, windowHeight, mountWidth, mountHeight, side, top, bottom } = solved;
	if (!hasMount || !windowWidth || !windowHeight || !mountWidth || !mountHeight) return hanging;
	if (side === undefined || top === undefined || bottom === undefined) return hanging;
	const n = (value: number) => formatLength(nearestLength(value), settings);
	const say = (value: number) => formatWithUnit(nearestLength(value), settings);
	const size = (width: number, height: number) => `${n(width)} × ${say(height)}`;
	const { thickness } = boardThickness(boards.mount);
	const seen = (border: Length, hidden: number = thickness) => n(border - hidden);
	const facts = [
		`With the bevel, the opening at the front is ${size(faceOpening(windowWidth, thickness), faceOpening(windowHeight, thickness))}. Visible borders: sides ${seen(side)}, top ${seen(top)}, bottom ${seen(bottom)} ${settings.unit}.`,
	];
	const frame = hiddenByFrame(worked);
	if (frame)
		facts.push(
			`In the frame “${frame.frame.name}” the visible borders are: sides ${seen(side, frame.width)}, top ${seen(top, frame.height)}, bottom ${seen(bottom, frame.height)} ${settings.unit}.`,
		);
	const shows = read.cells.innerMount;
	if (shows)
		facts.push(
			`The inner mount’s window is ${size(windowWidth - 2 * shows, windowHeight - 2 * shows)}, its blank ${size(mountWidth - 2 * settings.innerBlankSmaller, mountHeight - 2 * settings.innerBlankSmaller)}.`,
		);
	if (place && !place.isPicture)
		facts.push(
			`The paper ${size(place.paper.width, place.paper.height)} lies ${n(place.from.left)} from the mount’s left edge and ${say(place.from.top)} from its top.`,
		);
	const layers = mountLayers(worked, settings);
	facts.push(
		`Mount${shows ? 's' : ''}${settings.undermount ? ', print and undermount' : ' and print'} are ${sumWords(
			layers.map(({ thickness: each }) => each),
			nearestLength(thicknessOf(layers)),
			settings,
		)} thick.`,
	);
	return [...facts, ...hanging];
}

/** Where the paper of a float lies on its board. */
function floatFacts({ place, read }: WorkedRow, settings: Settings): readonly string[] {
	if (!place) return [];
	const { paper, from } = place;
	const say = (value: Length) => formatWithUnit(value, settings);
	const edge = read.cells.paper?.edge === 'deckle' ? ', with a deckle edge,' : '';
	return [
		`The paper ${formatLength(paper.width, settings)} × ${say(paper.height)}${edge} lies ${formatLength(from.left, settings)} from the board’s left edge and ${say(from.top)} from its top.`,
	];
}

/** Where the picture lies on its paper, how a row hangs, and its hinges: each with the sum that gives it. */
function framedFacts(worked: WorkedRow, settings: Settings): readonly string[] {
	const { onPaper, frame, framed, hinges } = worked;
	const n = (value: number) => formatLength(nearestLength(value), settings);
	const say = (value: number) => formatWithUnit(nearestLength(value), settings);
	const facts: string[] = [];
	if (onPaper)
		facts.push(
			`The picture lies on its paper with margins of ${n(onPaper.left)} left, ${n(onPaper.top)} above, ${n(onPaper.right)} right and ${say(onPaper.bottom)} below.`,
		);
	if (hinges?.at)
		facts.push(
			`${hinges.count} hinges, at ${hinges.at
				.map(n)
				.join(', ')
				.replace(
					/, ([^,]*)$/,
					' and $1',
				)} ${settings.unit} from the undermount’s left edge. Heavy or valued papers are for a conservator.`,
		);
	const { frame: listed, seat } = frame;
	if (listed && seat) {
		const { rebate, play } = seat;
		facts.push(
			`The rebate of “${shownText(listed.name)}” is ${n(rebate.width)} × ${say(rebate.height)}: play ${n(play.width)} across, ${say(play.height)} down.`,
		);
		if (framed.size && listed.moulding !== undefined && listed.lip !== undefined)
			facts.push(
				`Framed, it is ${n(framed.size.width)} × ${say(framed.size.height)}: the rebate + 2 × (${n(listed.moulding)} − ${say(listed.lip)}).`,
			);
		const stack = sumWords(
			framed.layers.map(({ thickness: each }) => each),
			nearestLength(framed.depth),
			settings,
		);
		const aboutStack = framed.isAbout && !stack.startsWith('about') ? `about ${stack}` : stack;
		facts.push(
			`The stack is ${aboutStack}${listed.depth === undefined ? '' : ` of the rebate’s ${say(listed.depth)}`}.`,
		);
		if (framed.weightKg !== undefined)
			facts.push(`It weighs ${framed.isAbout ? 'about ' : ''}${framed.weightKg.toFixed(1)} kg.`);
	}
	return facts;
}
