import { inches, type Length, length, mm, sameWithin } from '../length/length.ts';
import type { Unit } from '../length/reading.ts';
import type { OnPaper } from './paper.ts';
import type { PaperPlace } from './paperPlace.ts';
import type { SolvedRow } from './solvedRow.ts';

/** How many hinges hold a paper, and where. */
export interface Hinges {
	readonly count: number;
	/** From the undermount's left edge to the middle of each; undefined where the paper's place is not known. */
	readonly at: readonly Length[] | undefined;
}

/** Two hinges up to this width of paper, and one more for each further width begun. Common practice. */
const widths = {
	metric: { first: mm(500), further: mm(300) },
	inch: { first: inches(20), further: inches(12) },
} as const;

/** How many hinges a paper of a width has. */
export function hingeCount(width: Length, unit: Unit): number {
	const { first, further } = unit === 'in' ? widths.inch : widths.metric;
	return width <= first + sameWithin ? 2 : 2 + Math.ceil((width - first - sameWithin) / further);
}

/**
 * The hinges of a row, along the paper's upper edge: n at (i − ½)/n of its width. Without a paper the picture's width
 * counts.
 */
export function hingesOf(
	{ pictureWidth }: SolvedRow,
	onPaper: OnPaper | undefined,
	place: PaperPlace | undefined,
	unit: Unit,
): Hinges | undefined {
	const width = place?.paper.width ?? onPaper?.paper.width ?? pictureWidth;
	if (width === undefined) return undefined;
	const count = hingeCount(width, unit);
	if (!place) return { count, at: undefined };
	const at = Array.from({ length: count }, (_, i) =>
		length(Math.round(place.from.left + (width * (2 * i + 1)) / (2 * count))),
	);
	return { count, at };
}
