import type { Scale } from '../length/formatLength.ts';
import type { Frame } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import type { RowResult } from './rowResult.ts';
import { findingOf } from './findingOf.ts';
import { withLook } from './withLook.ts';

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
export function withTooFewFrames(results: readonly RowResult[], settings: Settings): readonly RowResult[] {
	const byFrame = new Map<Frame, Wanted>();
	results.forEach(({ frame: { frame }, framed: { size }, copies, isStopped }, place) => {
		if (frame?.count === undefined || isStopped || copies === 0) return;
		if (!frame.size && (frame.stick === undefined || !size)) return;
		const wanted = byFrame.get(frame) ?? { frame, places: [], copies: 0, legs: [] };
		wanted.places.push(place);
		wanted.copies += copies;
		if (!frame.size && size)
			for (const side of [size.width, size.height])
				wanted.legs.push({ length: side + settings.saw, times: 2 * copies });
		byFrame.set(frame, wanted);
	});
	const short = [...byFrame.values()].flatMap(({ frame, places, copies, legs }) => {
		const wanted = frame.size ? copies : leastSticks(legs, frame.stick!);
		return wanted > frame.count! ? [{ frame, places, wanted }] : [];
	});
	if (short.length === 0) return results;
	const all = [...results];
	for (const { frame, places, wanted } of short)
		for (const place of places) all[place] = withFinding(all[place]!, frame, wanted, settings);
	return all;
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

function withFinding(result: RowResult, frame: Frame, wanted: number, scale: Scale): RowResult {
	const finding = findingOf(
		{
			code: 'no-frame',
			level: 'look',
			cells: ['frame'],
			figures: () => ({
				kind: frame.size ? 'too few' : 'too few sticks',
				frame: frame.name,
				wanted: { count: wanted },
				there: { count: frame.count! },
			}),
		},
		scale,
		() => [],
	);
	return withLook(result, finding);
}
