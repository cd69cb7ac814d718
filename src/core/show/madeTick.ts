import type { Reading } from '../length/reading.ts';
import { isRecord } from '../values/isRecord.ts';
import type { RowId } from './row.ts';

/** What is done to make a print ready to hang, in the order in which it is mostly done. */
export const madeSteps = [
	...(['printed', 'signed', 'hinged', 'window clean'] as const),
	...(['glazing clean', 'sealed', 'labelled', 'corded'] as const),
] as const;

/** One of `madeSteps`. */
export type MadeStep = (typeof madeSteps)[number];

/** A step that one copy of a print has behind it. Every copy is printed and framed by itself, so each has its own ticks. */
export interface MadeTick {
	readonly row: RowId;
	/** Which of the row's copies, from 1. */
	readonly copy: number;
	readonly step: MadeStep;
}

/** Names a tick within its show. */
export const madeKey = ({ row, copy, step }: MadeTick): string => JSON.stringify([row, copy, step]);

/** Reads what is made of a show file. @returns a problem that names the place */
export function readMade(stored: unknown): Reading<readonly MadeTick[]> {
	if (!Array.isArray(stored)) return { problem: 'made is not a list' };
	const ticks = new Map<string, MadeTick>();
	for (const [place, each] of stored.entries()) {
		const tick = readTick(each);
		if (typeof tick === 'string') return { problem: `made[${place}]${tick}` };
		if (ticks.has(madeKey(tick))) return { problem: `made[${place}] is there twice` };
		ticks.set(madeKey(tick), tick);
	}
	return { value: [...ticks.values()] };
}

/** A tick, or what is wrong with it. */
function readTick(stored: unknown): MadeTick | string {
	if (!isRecord(stored)) return ' is not a record';
	const { row, copy, step } = stored;
	if (typeof row !== 'string' || row === '') return '.row is not a text';
	if (!Number.isSafeInteger(copy) || (copy as number) < 1) return '.copy is not a whole number';
	const known = madeSteps.find((each) => each === step);
	return known === undefined ? '.step is no step of making a print' : { row, copy: copy as number, step: known };
}
