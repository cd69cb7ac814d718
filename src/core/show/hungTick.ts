import { type Length, length, toMm, unitsPerMm } from '../length/length.ts';
import type { Reading } from '../length/reading.ts';
import { isRecord } from '../values/isRecord.ts';
import type { RowId } from './row.ts';

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
export function readHung(stored: unknown): Reading<readonly HungTick[]> {
	if (!Array.isArray(stored)) return { problem: 'hung is not a list' };
	const ticks = new Map<RowId, HungTick>();
	for (const [place, each] of stored.entries()) {
		const tick = readTick(each);
		if (typeof tick === 'string') return { problem: `hung[${place}]${tick}` };
		if (ticks.has(tick.row)) return { problem: `hung[${place}] is there twice` };
		ticks.set(tick.row, tick);
	}
	return { value: [...ticks.values()] };
}

/** A tick, or what is wrong with it. */
function readTick(stored: unknown): HungTick | string {
	if (!isRecord(stored)) return ' is not a record';
	const { row, wall, left, centre } = stored;
	if (typeof row !== 'string' || row === '') return '.row is not a text';
	if (typeof wall !== 'string') return '.wall is not a text';
	const [fromLeft, above] = [asLength(left), asLength(centre)];
	if (fromLeft === undefined) return '.left is not a length in mm';
	if (above === undefined) return '.centre is not a length in mm';
	return { row, wall, left: fromLeft, centre: above };
}

function asLength(value: unknown): Length | undefined {
	if (typeof value !== 'number' || !Number.isFinite(value)) return undefined;
	const units = Math.round(value * unitsPerMm);
	return Number.isSafeInteger(units) ? length(units) : undefined;
}
