import type { RowResult } from '../findings/rowResult.ts';
import type { Frame } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import type { StickPlan } from '../sticks/stickPlan.ts';
import { isSawn } from '../sticks/stickJobsOf.ts';
import { type Need, take } from './getLine.ts';

/** Frames that are bought as such, in the order of the show's list. @param rows those that count, by their place */
export function frameNeeds(rows: ReadonlyMap<number, RowResult>, { frames }: Settings): readonly Need[] {
	return frames.flatMap((frame): readonly Need[] => {
		if (isSawn(frame)) return [];
		const taken = new Map<number, bigint>();
		for (const [place, { frame: own, copies }] of rows) if (own.frame === frame) take(taken, place, BigInt(copies));
		const wanted = [...taken.values()].reduce((sum, copies) => sum + Number(copies), 0);
		return wanted === 0 ? [] : [{ ...boughtFrame(frame), kind: 'frame', wanted, taken, ...sizeOf(frame) }];
	});
}

const boughtFrame = ({ name, count = 0, price }: Frame) => ({ name, there: count, pack: 1, price });
const sizeOf = ({ size }: Frame) => (size ? { size: size.takes } : {});

/** Sticks of the mouldings that are sawn; a print takes the length of its legs. */
export function stickNeeds(plans: readonly StickPlan[], { frames }: Settings): readonly Need[] {
	return plans.flatMap(({ frame: name, stick, sticks }): readonly Need[] => {
		const frame = frames.find((each) => each.name === name);
		if (!frame || sticks.length === 0) return [];
		const taken = new Map<number, bigint>();
		for (const { row, length } of sticks.flatMap(({ legs }) => legs)) if (row > 0) take(taken, row - 1, BigInt(length));
		return [{ ...boughtFrame(frame), kind: 'stick', size: { width: stick }, wanted: sticks.length, taken }];
	});
}
