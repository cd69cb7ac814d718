import type { RowResult } from '../findings/rowResult.ts';
import type { Frame } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import type { Leg, StickJob } from './stickPlan.ts';

/** A moulding that is sold in sticks. */
export type SawnFrame = Frame & Required<Pick<Frame, 'stick'>>;

/** Whether a frame is made to each mount from sticks. */
export const isSawn = (frame: Frame): frame is SawnFrame => !frame.size && frame.stick !== undefined;

/** The frame that is sawn for a row; undefined where none is, or nothing is made of it. */
export function sawnFrame({ frame: { frame, inside }, isStopped, copies }: RowResult): SawnFrame | undefined {
	return frame && isSawn(frame) && !isStopped && copies > 0 && inside ? frame : undefined;
}

/**
 * What is to be sawn for a show, one job for each moulding that is sold in sticks, in the order of the show's list: two
 * legs of each copy's framed width and two of its height. Rows with a `stop` have none, nor have those of which it is not
 * known how large their frame is.
 */
export function stickJobsOf(
	rows: readonly Row[],
	results: readonly RowResult[],
	{ frames, saw }: Pick<Settings, 'frames' | 'saw'>,
): readonly StickJob[] {
	const legs = new Map<Frame, Leg[]>();
	rows.forEach(({ id: rowId }, index) => {
		const result = results[index];
		const frame = result && sawnFrame(result);
		const size = result?.framed.size;
		if (!frame || !size) return;
		const own = legs.get(frame) ?? [];
		legs.set(frame, own);
		for (let copy = 1; copy <= result.copies; copy++)
			for (const length of [size.width, size.width, size.height, size.height])
				own.push({ row: index + 1, rowId, copy, length });
	});
	return frames.flatMap((frame): readonly StickJob[] => {
		const own = legs.get(frame);
		return own && isSawn(frame) ? [{ frame: frame.name, stick: frame.stick, saw, legs: own }] : [];
	});
}
