import type { Frame } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { withCells } from '../show/withCells.ts';
import type { Mend } from './finding.ts';
import { findingOf } from './findingOf.ts';
import { judgeRow } from './judgeRow.ts';
import { framesThatTake, useFrame } from './otherFrames.ts';
import type { RowResult } from './rowResult.ts';
import { withLook } from './withLook.ts';
import { labelOf } from './words/inWords.ts';

/** What the rows of a show want of a frame. */
interface Wanted {
	readonly frame: Frame;
	readonly places: number[];
	copies: number;
	/** The legs of a moulding with what the saw takes, each as often as it is cut. */
	readonly legs: { readonly length: number; readonly times: number }[];
}

/**
 * The results of a show with `no-frame` where more frames of one name are wanted, or sticks of a moulding, than are there.
 * Rows that are stopped want none. Results of which there are enough stay the same objects.
 */
export function withTooFewFrames(
	rows: readonly Row[],
	results: readonly RowResult[],
	settings: Settings,
): readonly RowResult[] {
	if (settings.frames.every(({ count }) => count === undefined)) return results;
	const short = [...wantedOf(results, settings)].filter(isShort);
	if (short.length === 0) return results;
	const all = [...results];
	for (const wanted of short)
		for (const place of wanted.places)
			all[place] = withFinding(all[place]!, wanted, settings, () => othersWithEnough(rows, results, place, settings));
	return all;
}

/** The frame that a row wants of which the show says how many there are; undefined where it wants none. */
export function frameWanted({ frame: { frame }, framed: { size }, copies, isStopped }: RowResult): Frame | undefined {
	if (frame?.count === undefined || isStopped || copies === 0) return undefined;
	return isSawn(frame) && !size ? undefined : frame;
}

/** Whether it is counted in sticks. A moulding without their length is got as a frame, and counted as one. */
const isSawn = (frame: Frame): frame is Frame & Required<Pick<Frame, 'stick'>> =>
	!frame.size && frame.stick !== undefined;

/** What the rows want of each frame of which the show says how many are there. */
function wantedOf(results: readonly RowResult[], settings: Settings): Iterable<Wanted> {
	const byFrame = new Map<Frame, Wanted>();
	results.forEach((result, place) => {
		const frame = frameWanted(result);
		if (!frame) return;
		const {
			framed: { size },
			copies,
		} = result;
		const wanted = byFrame.get(frame) ?? { frame, places: [], copies: 0, legs: [] };
		wanted.places.push(place);
		wanted.copies += copies;
		if (isSawn(frame) && size)
			for (const side of [size.width, size.height])
				wanted.legs.push({ length: side + settings.saw, times: 2 * copies });
		byFrame.set(frame, wanted);
	});
	return byFrame.values();
}

/** How many frames, or at least how many sticks, are wanted. */
const countOf = ({ frame, copies, legs }: Wanted) => (isSawn(frame) ? leastSticks(legs, frame.stick) : copies);

const isShort = (wanted: Wanted) => countOf(wanted) > wanted.frame.count!;

/** The other frames of the list that a row could have without a stop, and of which there are enough then. */
function othersWithEnough(
	rows: readonly Row[],
	results: readonly RowResult[],
	place: number,
	settings: Settings,
): readonly Mend[] {
	const { inside, frame: now } = results[place]!.frame;
	if (!inside) return [];
	return framesThatTake(inside, settings)
		.map(useFrame)
		.flatMap(({ offer, change }) => {
			const after = judgeRow(withCells(rows[place]!, change, settings), settings);
			const { frame } = after.frame;
			if (after.isStopped || !frame || frame === now) return [];
			const wanted = [...wantedOf(results.with(place, after), settings)].find((each) => each.frame === frame);
			return wanted && isShort(wanted) ? [] : [{ label: labelOf(offer, settings), change }];
		});
}

/**
 * As many sticks as legs take in any plan: by their lengths in all, and by those of which no two go into one stick. The
 * plan itself may need more, and says so.
 */
function leastSticks(legs: Wanted['legs'], stick: number): number {
	const taken = legs.reduce((sum, { length, times }) => sum + length * times, 0);
	const alone = legs.reduce((sum, { length, times }) => (2 * length > stick ? sum + times : sum), 0);
	return Math.max(Math.ceil(taken / stick), alone);
}

function withFinding(result: RowResult, wanted: Wanted, scale: Settings, mends: () => readonly Mend[]): RowResult {
	const { frame } = wanted;
	const finding = findingOf(
		{
			code: 'no-frame',
			level: 'look',
			cells: ['frame'],
			figures: () => ({
				kind: isSawn(frame) ? 'too few sticks' : 'too few',
				frame: frame.name,
				wanted: { count: countOf(wanted) },
				there: { count: frame.count! },
			}),
		},
		scale,
		mends,
	);
	return withLook(result, finding);
}
