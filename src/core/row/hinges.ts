import { inches, type Length, length, mm, sameWithin } from '../length/length.ts';
import type { Unit } from '../length/reading.ts';
import type { Settings } from '../settings/settings.ts';
import type { OnPaper } from './paper.ts';
import type { PaperPlace } from './paperPlace.ts';
import type { SolvedRow } from './solvedRow.ts';
import { isPastMount, type TrimmedPaper, trimmedPaper } from './trimmedPaper.ts';

/** How many hinges hold a paper, and where. */
export interface Hinges {
	readonly count: number;
	/**
	 * From the undermount's left edge to the middle of each; undefined where the paper's place is not known, and where it
	 * reaches past the mount and cannot be trimmed to it.
	 */
	readonly at: readonly Length[] | undefined;
	/** The paper as it is trimmed before it is hinged; undefined where it lies inside the mount as it is. */
	readonly trimmed: TrimmedPaper | undefined;
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
 * counts. A paper that reaches past the mount is trimmed first: nothing is measured on an undermount from where it ends.
 */
export function hingesOf(
	{ pictureWidth }: SolvedRow,
	onPaper: OnPaper | undefined,
	place: PaperPlace | undefined,
	{ unit, hingeMargin }: Pick<Settings, 'unit' | 'hingeMargin'>,
): Hinges | undefined {
	const width = place?.paper.width ?? onPaper?.paper.width ?? pictureWidth;
	if (width === undefined) return undefined;
	const count = hingeCount(width, unit);
	if (!place) return { count, at: undefined, trimmed: undefined };
	const trimmed = trimmedPaper(place, onPaper, hingeMargin);
	if (!trimmed && isPastMount(place)) return { count, at: undefined, trimmed };
	const { paper, from } = trimmed?.place ?? place;
	const at = Array.from({ length: count }, (_, i) =>
		length(Math.round(from.left + (paper.width * (2 * i + 1)) / (2 * count))),
	);
	return { count, at, trimmed };
}
