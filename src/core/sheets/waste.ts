import { toMm } from '../length/length.ts';
import type { Layout } from './layout.ts';

const areaOf = ({
	width,
	height,
}: {
	readonly width: Layout['stock']['width'];
	readonly height: Layout['stock']['height'];
}) => toMm(width) * toMm(height);

/** The share of the board used that becomes neither a blank nor an offcut worth keeping, from 0 to 1. */
export function wasteShareOf(layouts: readonly Layout[]): number {
	const sum = (areas: readonly number[]) => areas.reduce((total, area) => total + area, 0);
	const used = sum(layouts.map(({ stock }) => areaOf(stock)));
	const kept = sum(layouts.flatMap(({ blanks, offcuts }) => [...blanks, ...offcuts].map(areaOf)));
	return used === 0 ? 0 : Math.max(0, 1 - kept / used);
}
