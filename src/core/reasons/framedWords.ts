import { formatLength, formatSize, formatWithUnit } from '../length/formatLength.ts';
import { formatMark } from '../length/formatMark.ts';
import { isSame, type Length, nearestLength, toMm } from '../length/length.ts';
import { layHinges } from '../row/layHinges.ts';
import { seenBorders } from '../row/seenBorders.ts';
import type { Layer } from '../row/stack.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { listed } from '../values/listed.ts';
import { shownText } from '../values/shownText.ts';
import { beforeHingingWords } from './trimWords.ts';

/** A part of the stack in a rebate, as a legend names it. */
export interface StackLine {
	readonly what: Layer['what'] | 'room for points' | 'free';
	/** "glass 2 mm" where the show says what it is, else "glazing about 2 mm". */
	readonly words: string;
}

/** A layer in half millimetres or thinner has one figure more than the ruler of a metric show gives. */
const thickness = (value: Length, settings: Settings): string =>
	settings.unit === 'in' ? formatWithUnit(value, settings) : `${Number(toMm(value).toFixed(1))} mm`;

/** Said before a depth in which a thickness is only a usual one. */
const aboutWords = ({ isAbout }: WorkedRow['framed']): string => (isAbout ? 'about ' : '');

/** What lies in a row's frame, from the front, and what of the rebate's depth is left behind it. */
export function stackLines({ framed, frame }: WorkedRow, settings: Settings): readonly StackLine[] {
	const lines = framed.layers.map(({ what, thickness: own, isKnown }): StackLine => ({
		what,
		words: `${what} ${isKnown ? '' : 'about '}${thickness(own, settings)}`,
	}));
	const depth = frame.frame?.depth;
	if (depth === undefined) return lines;
	const left = nearestLength(depth - framed.depth);
	if (left <= 0) return lines;
	const isPoints = left >= settings.pointsRoom;
	return [
		...lines,
		{
			what: isPoints ? 'room for points' : 'free',
			words: `free ${aboutWords(framed)}${thickness(left, settings)}`,
		},
	];
}

/** How deep a row's stack is against the rebate's depth, in a sentence. */
export function depthWords({ framed, frame }: WorkedRow, settings: Settings): string {
	const whole = `The stack is ${aboutWords(framed)}${thickness(framed.depth, settings)} deep`;
	const depth = frame.frame?.depth;
	if (depth === undefined) return `${whole}. The settings don’t say how deep the rebate is.`;
	const over = nearestLength(framed.depth - depth);
	return over > 0
		? `${whole}, ${thickness(over, settings)} more than the rebate’s ${thickness(depth, settings)}.`
		: `${whole}; the rebate is ${thickness(depth, settings)}.`;
}

/**
 * What a row looks like in its frame, in sentences: its size, the play of what lies in it, and the borders that show.
 * @param isDrawn whether its size and its borders are read in the drawing over it, and not said again
 */
export function framedFrontWords(worked: WorkedRow, settings: Settings, isDrawn = false): string {
	const { frame, framed, solved, hasMount } = worked;
	const { frame: own, seat } = frame;
	if (!own || !seat) return '';
	const n = (value: number) => formatLength(nearestLength(value), settings);
	const words = [
		framed.size
			? `Framed in “${shownText(own.name)}”${isDrawn ? '' : `, ${formatSize(framed.size.width, framed.size.height, settings)}`}.`
			: `In “${shownText(own.name)}”; its face width or lip is not in the settings.`,
		`${hasMount ? 'The mount' : 'It'} ${playWords(seat.play, settings)}.`,
	];
	const seen = seenBorders(worked);
	if (!isDrawn && seen && solved.side !== undefined)
		words.push(
			`Visible borders inside the frame: sides ${n(seen.side)}, top ${n(seen.top)}, bottom ${n(seen.bottom)} ${settings.unit}.`,
		);
	return words.join(' ');
}

/**
 * The legs of a frame that is made, long point to long point, as they are sawn or ordered cut: "two of 739 and two of 465
 * mm". Undefined where the frame is bought as it is, or its size is not known.
 */
export function legWords({ frame, framed }: WorkedRow, settings: Settings): string | undefined {
	const own = frame.frame;
	if (!own || own.size || !framed.size) return undefined;
	const { width, height } = framed.size;
	return isSame(width, height)
		? `four of ${formatWithUnit(width, settings)}`
		: `two of ${formatLength(width, settings)} and two of ${formatWithUnit(height, settings)}`;
}

/** How what goes in sits in the recess: "has 3 mm of play"; "is 97 mm too wide for the rebate". */
function playWords({ width, height }: { readonly width: number; readonly height: number }, settings: Settings): string {
	const n = (value: number) => formatLength(nearestLength(value), settings);
	const over = [
		...(width < 0 ? [`${n(-width)} ${settings.unit} too wide`] : []),
		...(height < 0 ? [`${n(-height)} ${settings.unit} too high`] : []),
	];
	if (over.length > 0) return `is ${over.join(' and ')} for the rebate`;
	const [across, down] = [n(width), n(height)];
	return across === down
		? `has ${across} ${settings.unit} of play`
		: `has ${across} of play across and ${down} ${settings.unit} down`;
}

/**
 * Hinges are measured on an undermount, or on the board of a float. Without one they are on the mount itself, which is seen
 * from its other side then: its edges keep their names, as where windows are cut. This is said, with a space before it; empty
 * where there is one.
 */
export const noUndermount = (worked: Pick<WorkedRow, 'read'>, settings: Pick<Settings, 'undermount'>): string =>
	isHingedToMount(worked, settings)
		? ' No undermount is set. On the back of the mount, measure from the left edge, at your right hand.'
		: '';

/** Whether the paper of a row is hinged to the back of its mount, for want of an undermount. */
export const isHingedToMount = (
	{ read }: Pick<WorkedRow, 'read'>,
	{ undermount }: Pick<Settings, 'undermount'>,
): boolean => !undermount && !read.cells.isFloat;

/** Where the paper and its hinges lie on the undermount, as seen from the front, in sentences; empty where that is not known. */
export function hingeWords(worked: WorkedRow, settings: Settings): string {
	const laid = layHinges(worked, settings);
	if (!laid) return '';
	const { place, at } = laid;
	const n = (value: Length) => formatLength(value, settings);
	const { paper, from, isPicture } = place;
	const back = noUndermount(worked, settings);
	const before = beforeHingingWords(laid, settings);
	return (
		`${before && `${before} `}${isPicture ? 'The print' : `The paper, ${formatSize(paper.width, paper.height, settings)},`} lies ${n(from.left)} from the left and ${formatWithUnit(from.top, settings)} from the top, seen from the front. ` +
		`Hinges at ${listed(at.map((each) => formatMark(each, settings)))} ${settings.unit} from the left.${back}`
	);
}
