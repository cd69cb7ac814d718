import { toMm } from '../length/length.ts';
import type { Reading } from '../length/reading.ts';
import type { PlainRecord } from '../values/isRecord.ts';
import { readTickList } from './readTickList.ts';
import { storedLength } from './storedLength.ts';
import { type CutPart, type CutSide, cutSides, type Tick, tickKey } from './tick.ts';

/** Ticks as a show file has them: lengths in millimetres. */
export const ticksJson = (ticks: readonly Tick[]): readonly unknown[] =>
	ticks.map((tick) =>
		tick.side === 'spoilt'
			? tick
			: {
					...tick,
					border: toMm(tick.border),
					width: toMm(tick.width),
					height: toMm(tick.height),
					...(tick.thickness !== undefined && { thickness: toMm(tick.thickness) }),
				},
	);

/** Reads the ticks of a show file. @returns a problem that names the place */
export const readTicks = (stored: unknown): Reading<readonly Tick[]> =>
	readTickList(stored, 'ticks', readTick, tickKey);

/** A tick, or what is wrong with it. */
function readTick(stored: PlainRecord): Tick | string {
	const { row, copy, part, side, times, border, width, height, board, thickness } = stored;
	if (typeof row !== 'string' || row === '') return '.row is not a text';
	if (!isCount(copy)) return '.copy is not a whole number';
	if (!isPart(part)) return '.part is no part of a mount';
	const mount = { row, copy, part };
	if (side === 'spoilt') return isCount(times) ? { ...mount, side, times } : '.times is not a whole number';
	if (!isSide(side)) return '.side is no side of a mount';
	const read = { border: storedLength(border), width: storedLength(width), height: storedLength(height) };
	if (read.border === undefined) return '.border is not a length in mm';
	if (read.width === undefined) return '.width is not a length in mm';
	if (read.height === undefined) return '.height is not a length in mm';
	if (board !== undefined && typeof board !== 'string') return '.board is not a text';
	const thick = storedLength(thickness);
	if (thickness !== undefined && thick === undefined) return '.thickness is not a length in mm';
	return {
		...{ ...mount, side, border: read.border, width: read.width, height: read.height },
		...(board !== undefined && { board }),
		...(thick !== undefined && { thickness: thick }),
	};
}

const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) >= 1;
const isPart = (value: unknown): value is CutPart => value === 'mount' || value === 'inner mount';
const isSide = (value: unknown): value is CutSide => cutSides.some((side) => side === value);
