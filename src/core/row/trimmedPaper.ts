import { type Length, minus, sameWithin } from '../length/length.ts';
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

/** Whether a paper, or a picture without one, reaches past an edge of the mount. */
export const isPastMount = ({ from }: PaperPlace): boolean => sides.some((side) => from[side] < -sameWithin);

/**
 * A paper that reaches past the mount, trimmed on those sides to the hinge margin inside its edge. Undefined where there is
 * nothing to trim, or the trim would go into the picture or leave nothing under the mount.
 */
export function trimmedPaper(
	place: PaperPlace,
	onPaper: OnPaper | undefined,
	hingeMargin: Length,
): TrimmedPaper | undefined {
	if (!onPaper || !place.reaches || !isPastMount(place)) return undefined;
	/** What is cut off a side. */
	const off = (side: keyof FourSides) => (place.from[side] < -sameWithin ? minus(hingeMargin, place.from[side]) : 0);
	const less = (of: FourSides): FourSides => {
		const [left, right, top, bottom] = sides.map((side) => minus(of[side], off(side) as Length));
		return { left: left!, right: right!, top: top!, bottom: bottom! };
	};
	const margins = less(onPaper);
	const reaches = less(place.reaches);
	if (sides.some((side) => off(side) > 0 && (margins[side] < 0 || reaches[side] <= 0))) return undefined;
	const { paper, from } = place;
	const inside = (side: keyof FourSides) => (off(side) > 0 ? hingeMargin : from[side]);
	const cut = (side: keyof FourSides) => (off(side) > 0 ? margins[side] : undefined);
	return {
		place: {
			...place,
			paper: {
				width: minus(paper.width, off('left') as Length, off('right') as Length),
				height: minus(paper.height, off('top') as Length, off('bottom') as Length),
			},
			from: { left: inside('left'), right: inside('right'), top: inside('top'), bottom: inside('bottom') },
			reaches,
		},
		cut: { left: cut('left'), right: cut('right'), top: cut('top'), bottom: cut('bottom') },
	};
}
