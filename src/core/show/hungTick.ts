import { type Length, toMm } from '../length/length.ts';
import type { Reading } from '../length/reading.ts';
import type { PlainRecord } from '../values/isRecord.ts';
import { readTickList } from './readTickList.ts';
import type { RowId } from './row.ts';
import { storedLength } from './storedLength.ts';

/** A print that was hung. Where it was hung is kept, so that a later change of its place does not pass for it. */
export interface HungTick {
	readonly row: RowId;
	/** The name of its wall. */
	readonly wall: string;
	/** From the wall's left edge. */
	readonly left: Length;
	/** Of its middle, above the floor. */
	readonly centre: Length;
}

/** What is hung as a show file has it: lengths in millimetres. */
export const hungJson = (ticks: readonly HungTick[]): readonly unknown[] =>
	ticks.map((tick) => ({ ...tick, left: toMm(tick.left), centre: toMm(tick.centre) }));

/** Reads what is hung of a show file. @returns a problem that names the place */
export const readHung = (stored: unknown): Reading<readonly HungTick[]> =>
	readTickList(stored, 'hung', readTick, ({ row }) => row);

/** A tick, or what is wrong with it. */
function readTick(stored: PlainRecord): HungTick | string {
	const { row, wall, left, centre } = stored;
	if (typeof row !== 'string' || row === '') return '.row is not a text';
	if (typeof wall !== 'string') return '.wall is not a text';
	const [fromLeft, above] = [storedLength(left), storedLength(centre)];
	if (fromLeft === undefined) return '.left is not a length in mm';
	if (above === undefined) return '.centre is not a length in mm';
	return { row, wall, left: fromLeft, centre: above };
}
