import { type Length, minus, sameWithin, zero } from '../length/length.ts';
import type { OnPaper } from './paper.ts';
import type { FourSides, PaperPlace } from './paperPlace.ts';

/** A paper that reaches past the mount, as it is trimmed to lie behind it. */
export interface TrimmedPaper {
	/** Where it lies once it is trimmed. */
	readonly place: PaperPlace;
	/** Paper left round the picture, on the sides that are trimmed; undefined on the others. */
	readonly cut: { readonly [side in keyof FourSides]: Length | undefined };
}

const sides = ['left', 'right', 'top', 'bottom'] as const;
type Side = (typeof sides)[number];

/** Whether a paper, or a picture without one, reaches past an edge of the mount: past this one, or past any. */
export const isPastMount = ({ from }: PaperPlace, side?: Side): boolean =>
	side === undefined ? sides.some((each) => from[each] < -sameWithin) : from[side] < -sameWithin;

const ofSides = <Of>(of: (side: Side) => Of) =>
	Object.fromEntries(sides.map((side) => [side, of(side)])) as Record<Side, Of>;

/**
 * A paper that reaches past the mount, trimmed on those sides to the hinge margin inside its edge. Undefined where there is
 * nothing to trim, or the trim would go into the picture or leave nothing under the mount.
 */
export function trimmedPaper(
	place: PaperPlace,
	onPaper: OnPaper | undefined,
	hingeMargin: Length,
): TrimmedPaper | undefined {
	const { paper, from, reaches } = place;
	if (!onPaper || !reaches || !isPastMount(place)) return undefined;
	const isCut = (side: Side) => isPastMount(place, side);
	/** What is cut off each side. */
	const off = ofSides((side) => (isCut(side) ? minus(hingeMargin, from[side]) : zero));
	const margins = ofSides((side) => minus(onPaper[side], off[side]));
	const left = ofSides((side) => minus(reaches[side], off[side]));
	if (sides.some((side) => isCut(side) && (margins[side] < 0 || left[side] <= 0))) return undefined;
	return {
		place: {
			...place,
			paper: {
				width: minus(paper.width, off.left, off.right),
				height: minus(paper.height, off.top, off.bottom),
			},
			from: ofSides((side) => (isCut(side) ? hingeMargin : from[side])),
			reaches: left,
		},
		cut: ofSides((side) => (isCut(side) ? margins[side] : undefined)),
	};
}
