import { formatMark } from '../length/formatMark.ts';
import { sayer } from './sayer.ts';
import { isHingedToMount } from './framedWords.ts';
import { sumWords } from './sumWords.ts';
import { beforeHingingWords, trimWords } from './trimWords.ts';
import { type Length, nearestLength } from '../length/length.ts';
import { framingReasons } from './framingReasons.ts';
import { boardThickness, faceOpening, mountLayers, thicknessOf } from '../row/stack.ts';
import { layHinges } from '../row/layHinges.ts';
import { shownMargins } from '../row/shownMargins.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { listed } from '../values/listed.ts';

/**
 * What else there is to know of a mount that comes out, in sentences: the opening and visible borders, the inner
 * mount's window and blank, where the paper lies for hinging, and how thick it all is. A fact that does not apply is not there.
 */
export function factsOf(worked: WorkedRow, settings: Settings): readonly string[] {
	const { read, solved, hasMount, boards, place } = worked;
	const hanging = framedFacts(worked, settings);
	if (hasMount && read.cells.isFloat) return [...floatFacts(worked, settings), ...hanging];
	const { windowWidth, windowHeight, mountWidth, mountHeight, side, top, bottom } = solved;
	if (!hasMount || !windowWidth || !windowHeight || !mountWidth || !mountHeight) return hanging;
	if (side === undefined || top === undefined || bottom === undefined) return hanging;
	const { n, say, size } = sayer(settings);
	const { thickness } = boardThickness(boards.mount);
	const seen = (border: Length) => n(border - thickness);
	const facts = [
		`With the bevel, the opening at the front is ${size(faceOpening(windowWidth, thickness), faceOpening(windowHeight, thickness))}. Visible borders without a frame: sides ${seen(side)}, top ${seen(top)}, bottom ${seen(bottom)} ${settings.unit}.`,
	];
	const inFrame = framingReasons['seen border']!(worked, settings);
	if (inFrame !== undefined) facts.push(inFrame);
	const shows = read.cells.innerMount;
	if (shows)
		facts.push(
			`The inner mount’s window is ${size(windowWidth - 2 * shows, windowHeight - 2 * shows)}, its blank ${size(mountWidth - 2 * settings.innerBlankSmaller, mountHeight - 2 * settings.innerBlankSmaller)}.`,
		);
	const laid = layHinges(worked, settings);
	const lies = laid?.place ?? place;
	const trimmed = laid?.trimmed;
	if (trimmed) facts.push(trimWords(trimmed, settings));
	if (lies && !lies.isPicture)
		facts.push(
			`The paper ${size(lies.paper.width, lies.paper.height)} lies ${n(lies.from.left)} from the mount’s left edge and ${say(lies.from.top)} from its top.`,
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
function floatFacts(worked: WorkedRow, settings: Settings): readonly string[] {
	const { place, read } = worked;
	const inFrame = framingReasons['seen border']!(worked, settings);
	const seen = inFrame === undefined ? [] : [inFrame];
	if (!place) return seen;
	const { paper, from } = place;
	const { n, say, size } = sayer(settings);
	const edge = read.cells.paper?.edge === 'deckle' ? ', with a deckle edge,' : '';
	return [
		`The paper ${size(paper.width, paper.height)}${edge} lies ${n(from.left)} from the board’s left edge and ${say(from.top)} from its top.`,
		...seen,
	];
}

/** Where the picture lies on its paper, how a row hangs, and its hinges: each with the sum that gives it. */
function framedFacts(worked: WorkedRow, settings: Settings): readonly string[] {
	const { onPaper, hinges, read } = worked;
	const laid = layHinges(worked, settings);
	const { n, say } = sayer(settings);
	const facts: string[] = [];
	if (onPaper) {
		const { left, top, right, bottom } = shownMargins(onPaper, settings);
		facts.push(
			`The picture lies on its paper with margins of ${n(left)} left, ${n(top)} above, ${n(right)} right and ${say(bottom)} below.`,
		);
	}
	const edge = read.cells.isFloat
		? 'board’s left edge'
		: isHingedToMount(worked, settings)
			? 'mount’s left edge, as seen from the front'
			: 'undermount’s left edge';
	if (hinges && laid)
		facts.push(
			`${laid.place.isPicture ? `${beforeHingingWords(laid, settings)} ` : ''}${hinges.count} hinges, at ${listed(laid.at.map((each) => formatMark(each, settings)))} ${settings.unit} from the ${edge}. Leave heavy or valuable work to a conservator.`,
		);
	const reasons = ['play', 'framed width', 'stack', 'weight'].map((column) =>
		framingReasons[column]!(worked, settings),
	);
	return [...facts, ...reasons.filter((reason) => reason !== undefined)];
}
