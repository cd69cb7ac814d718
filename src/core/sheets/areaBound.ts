import type { Problem } from './problem.ts';

/**
 * The fewest pieces of stock that any plan could take: the largest first, until their area is that of the blanks.
 * Products of sides are doubles; a millionth of a sheet is given away so that they can never round the bound up.
 */
export function fewestByArea({ types, sheets }: Problem): number {
	let area = types.reduce((sum, { long, short, blanks }) => sum + long * short * blanks.length, 0);
	const bySize = sheets
		.filter(({ givesAcross, givesDown }) => [...givesAcross, ...givesDown].includes(true))
		.map(({ width, height, most }) => ({ sheetArea: width * height, most }))
		.sort((a, b) => b.sheetArea - a.sheetArea);
	let count = 0;
	for (const { sheetArea, most } of bySize) {
		const wanted = Math.max(0, Math.min(most, Math.ceil(area / sheetArea - 1e-6)));
		count += wanted;
		area -= wanted * sheetArea;
	}
	return count;
}
