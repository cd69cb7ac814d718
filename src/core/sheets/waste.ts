import { toMm } from '../length/length.ts';
import type { Layout } from './layout.ts';

const areaOf = ({
	width,
	height,
}: {
	readonly width: Layout['stock']['width'];
	readonly height: Layout['stock']['height'];
}) => toMm(width) * toMm(height);

const sumOf = (pieces: readonly Parameters<typeof areaOf>[0][]) =>
	pieces.reduce((total, piece) => total + areaOf(piece), 0);

/** The share of the board used that is kept as offcuts, from 0 to 1. */
export function offcutShareOf(layouts: readonly Layout[]): number {
	const used = sumOf(layouts.map(({ stock }) => stock));
	return used === 0 ? 0 : sumOf(layouts.flatMap(({ offcuts }) => offcuts)) / used;
}

/** The share of the board used that becomes neither a blank nor an offcut worth keeping, from 0 to 1. */
export function wasteShareOf(layouts: readonly Layout[]): number {
	const used = sumOf(layouts.map(({ stock }) => stock));
	const kept = sumOf(layouts.flatMap(({ blanks, offcuts }) => [...blanks, ...offcuts]));
	return used === 0 ? 0 : Math.max(0, 1 - kept / used);
}
