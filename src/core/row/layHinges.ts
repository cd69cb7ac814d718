import { type Length, length } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';
import type { PaperPlace } from './paperPlace.ts';
import { isPastMount, type TrimmedPaper, trimmedPaper } from './trimmedPaper.ts';
import type { WorkedRow } from './workedRow.ts';

/** Where the hinges of a paper are, and how it lies then. */
export interface LaidHinges {
	/** From the undermount's left edge to the middle of each. */
	readonly at: readonly Length[];
	/** Where the paper lies, trimmed if it is. */
	readonly place: PaperPlace;
	/** The paper as it is trimmed before it is hinged; undefined where it lies inside the mount as it is. */
	readonly trimmed: TrimmedPaper | undefined;
}

/**
 * The hinges of a row along the paper's upper edge: n at (i − ½)/n of its width. A paper that reaches past the mount is
 * trimmed first: nothing is measured on an undermount from where it ends. Undefined where the paper's place is not known,
 * and where it reaches past the mount and cannot be trimmed.
 */
export function layHinges(
	{ hinges, place, onPaper }: Pick<WorkedRow, 'hinges' | 'place' | 'onPaper'>,
	{ hingeMargin }: Pick<Settings, 'hingeMargin'>,
): LaidHinges | undefined {
	if (!hinges || !place) return undefined;
	const trimmed = trimmedPaper(place, onPaper, hingeMargin);
	if (!trimmed && isPastMount(place)) return undefined;
	const { count } = hinges;
	const lies = trimmed?.place ?? place;
	const { paper, from } = lies;
	const at = Array.from({ length: count }, (_, i) =>
		length(Math.round(from.left + (paper.width * (2 * i + 1)) / (2 * count))),
	);
	return { at, place: lies, trimmed };
}
