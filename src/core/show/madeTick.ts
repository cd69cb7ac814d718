import type { Reading } from '../length/reading.ts';
import type { PlainRecord } from '../values/isRecord.ts';
import { readTickList } from './readTickList.ts';
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
export const readMade = (stored: unknown): Reading<readonly MadeTick[]> =>
	readTickList(stored, 'made', readTick, madeKey);

/** A tick, or what is wrong with it. */
function readTick(stored: PlainRecord): MadeTick | string {
	const { row, copy, step } = stored;
	if (typeof row !== 'string' || row === '') return '.row is not a text';
	if (!Number.isSafeInteger(copy) || (copy as number) < 1) return '.copy is not a whole number';
	const known = madeSteps.find((each) => each === step);
	return known === undefined ? '.step is no step of making a print' : { row, copy: copy as number, step: known };
}
