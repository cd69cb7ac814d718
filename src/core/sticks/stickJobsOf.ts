import type { RowResult } from '../findings/rowResult.ts';
import type { Frame, Settings } from '../settings/settings.ts';
import type { Row, RowId } from '../show/row.ts';
import type { Leg, StickJob } from './stickPlan.ts';

/** A row whose frame is made, and of which it is not known how large: the moulding's width or lip is not given. */
export interface UnmeasuredRow {
	/** Place of the row in the show, from 1. */
	readonly row: number;
	readonly rowId: RowId;
	readonly frame: string;
}

/** What is to be sawn for a show. */
export interface ShowSticks {
	/** One for each moulding that is sold in sticks, in the order of the show's list. */
	readonly jobs: readonly StickJob[];
	readonly unmeasured: readonly UnmeasuredRow[];
}

/** Whether a frame is made to each mount from sticks. */
export const isSawn = (frame: Frame): frame is Frame & Required<Pick<Frame, 'stick'>> =>
	!frame.size && frame.stick !== undefined;

/** The legs of a show's made frames, two of each copy's framed width and two of its height. Rows with a `stop` have none. */
export function stickJobsOf(
	rows: readonly Row[],
	results: readonly RowResult[],
	{ frames, saw }: Pick<Settings, 'frames' | 'saw'>,
): ShowSticks {
	const legs = new Map<Frame, Leg[]>();
	const unmeasured: UnmeasuredRow[] = [];
	rows.forEach(({ id: rowId }, index) => {
		const result = results[index];
		const frame = result?.frame.frame;
		if (!result || !frame || !isSawn(frame) || result.isStopped || result.copies === 0 || !result.frame.inside) return;
		const { size } = result.framed;
		if (!size) {
			unmeasured.push({ row: index + 1, rowId, frame: frame.name });
			return;
		}
		const own = legs.get(frame) ?? [];
		legs.set(frame, own);
		for (let copy = 1; copy <= result.copies; copy++)
			for (const length of [size.width, size.width, size.height, size.height])
				own.push({ row: index + 1, rowId, copy, length });
	});
	const jobs = frames.flatMap((frame): readonly StickJob[] => {
		const own = legs.get(frame);
		return own && isSawn(frame) ? [{ frame: frame.name, stick: frame.stick, saw, legs: own }] : [];
	});
	return { jobs, unmeasured };
}
