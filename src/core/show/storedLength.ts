import { type Length, length, unitsPerMm } from '../length/length.ts';

/** A length of a show file, which has it in millimetres; undefined where it is none. */
export function storedLength(stored: unknown): Length | undefined {
	if (typeof stored !== 'number' || !Number.isFinite(stored)) return undefined;
	const units = Math.round(stored * unitsPerMm);
	return Number.isSafeInteger(units) ? length(units) : undefined;
}
