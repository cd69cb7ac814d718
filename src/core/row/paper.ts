import { isSame, type Length, length, sameWithin } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Settings } from '../settings/settings.ts';
import type { PaperCell } from './cells.ts';
import type { Cover } from './cover.ts';

/** Which way something lies: wide, tall, or neither (square, or not known). */
export type Way = 'wide' | 'tall' | undefined;

/** Which way a size lies. */
export function wayOf({ width, height }: { readonly width: number; readonly height: number }): Way {
	if (isSame(width, height)) return undefined;
	return width > height ? 'wide' : 'tall';
}

/** A sheet as it lies, long side with the picture's: a sheet of paper has no way up of its own. */
function sheetAsItLies({ width, height }: Size, way: Way): Size {
	const own = wayOf({ width, height });
	return way === undefined || own === undefined || own === way ? { width, height } : { width: height, height: width };
}

/** A sheet as it is given; undefined for a roll, which has no size before it is cut. */
export const sheetOf = ({ width, height }: PaperCell): Size | undefined =>
	height === undefined ? undefined : { width, height };

/** What must be left blank beside the picture, and above and below it, on each side. */
export interface LeftBlank {
	readonly beside: Length;
	readonly below: Length;
}

/**
 * What is left blank of a paper: the greater of the printer's margin and, where paper is to show, the reveal and what
 * hinges need; above and below the signing space too.
 */
export function leftBlank(
	{ margin }: PaperCell,
	{ reveal, signingSpace }: Cover,
	{ hingeMargin }: Settings,
): LeftBlank {
	const isShowing = reveal !== undefined || signingSpace > 0;
	const most = (shows: number) => length(Math.max(margin, shows));
	return {
		beside: reveal === undefined ? margin : most(reveal + hingeMargin),
		below: isShowing ? most((reveal ?? 0) + signingSpace + hingeMargin) : margin,
	};
}

/**
 * The paper as it lies under a picture. Of a roll, the picture's shorter side lies across it, and the picture with what is
 * left blank on both sides is cut off.
 * @param picture undefined where it is not known
 * @param otherwise which way it lies then
 * @returns undefined for a roll under a picture that is not known
 */
export function paperAsItLies(
	paper: PaperCell,
	picture: Size | undefined,
	blank: LeftBlank,
	otherwise?: Way,
): Size | undefined {
	const { width, height } = paper;
	const way = picture ? wayOf(picture) : otherwise;
	if (height !== undefined) return sheetAsItLies({ width, height }, way);
	if (!picture) return undefined;
	return way === 'wide'
		? { width: length(picture.width + 2 * blank.beside), height: width }
		: { width, height: length(picture.height + 2 * blank.below) };
}

/** What is printed of a paper at most, as it lies. Sides may come out at zero or less. */
export interface Printable {
	readonly width: number;
	readonly height: number;
}

/** The printable size of a paper as it lies: less, on each side, what is left blank. */
export function printableSize(paper: PaperCell, way: Way, cover: Cover, settings: Settings): Printable {
	const { width, height, roll = width } = paper;
	const whole = way === 'wide' ? { width: roll, height: width } : { width, height: roll };
	const lies = height === undefined ? whole : sheetAsItLies({ width, height }, way);
	const { beside, below } = leftBlank(paper, cover, settings);
	return { width: lies.width - 2 * beside, height: lies.height - 2 * below };
}

/** Whether a picture is no larger than what can be printed. */
export const isHeld = (picture: Size, printable: Printable): boolean =>
	picture.width <= printable.width + sameWithin && picture.height <= printable.height + sameWithin;

/** Where a picture lies on its paper. */
export interface OnPaper {
	readonly paper: Size;
	/** From the paper's edges to the picture's; below zero where the picture is past the edge. */
	readonly left: Length;
	readonly top: Length;
	readonly right: Length;
	readonly bottom: Length;
}

/** Where a picture lies on its paper: in the middle, or where the margins typed say. */
export function placeOnPaper(
	paper: Size,
	picture: Size,
	typed: { readonly marginLeft: Length | undefined; readonly marginTop: Length | undefined },
): OnPaper {
	const middle = (outer: Length, inner: Length) => length(Math.floor((outer - inner) / 2));
	const left = typed.marginLeft ?? middle(paper.width, picture.width);
	const top = typed.marginTop ?? middle(paper.height, picture.height);
	return {
		paper,
		left,
		top,
		right: length(paper.width - picture.width - left),
		bottom: length(paper.height - picture.height - top),
	};
}
