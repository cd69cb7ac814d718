import { toMm } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Layout } from './layout.ts';

const areaOf = (pieces: readonly Size[]) =>
	pieces.reduce((total, { width, height }) => total + toMm(width) * toMm(height), 0);

/** The share of the board used that is left as offcuts, from 0 to 1. */
export function offcutShareOf(layouts: readonly Layout[]): number {
	const used = areaOf(layouts.map(({ stock }) => stock));
	return used === 0 ? 0 : areaOf(layouts.flatMap(({ offcuts }) => offcuts)) / used;
}

/** The share of the board used that becomes neither a blank nor an offcut worth keeping, from 0 to 1. */
export function wasteShareOf(layouts: readonly Layout[]): number {
	const used = areaOf(layouts.map(({ stock }) => stock));
	const kept = areaOf(layouts.flatMap(({ blanks, offcuts }) => [...blanks, ...offcuts]));
	return used === 0 ? 0 : Math.max(0, 1 - kept / used);
}
