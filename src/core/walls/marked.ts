import { type Scale } from '../length/formatLength.ts';
import { toMark } from '../length/formatMark.ts';
import { type Length, minus } from '../length/length.ts';
import type { HangingLine } from './hangingList.ts';

/** The lengths of a print that are marked on its wall, each on a graduation: 605 mm where 604.5 comes out. */
export interface Marked {
	/** Of its mark: above the floor, from the wall's left end, from the mark before it. */
	readonly height: Length;
	readonly left: Length;
	readonly fromLast: Length | undefined;
	/** Of the print: its left edge, and its middle above the floor. */
	readonly edge: Length;
	readonly middle: Length;
}

/** What is marked on the wall for a print. The way from the last mark is between the marks as they are shown: it adds up. */
export function markedOf({ mark, fromLast, print }: HangingLine, scale: Scale): Marked {
	const left = toMark(mark.left, scale);
	return {
		height: toMark(mark.height, scale),
		left,
		fromLast: fromLast === undefined ? undefined : minus(left, toMark(minus(mark.left, fromLast), scale)),
		edge: toMark(print.left, scale),
		middle: toMark(print.centre, scale),
	};
}
