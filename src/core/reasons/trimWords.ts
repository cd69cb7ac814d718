import { formatLength, formatSize, formatWithUnit } from '../length/formatLength.ts';
import type { TrimmedPaper } from '../row/trimmedPaper.ts';
import type { Settings } from '../settings/settings.ts';
import { listed } from '../values/listed.ts';

const sides = { left: 'left', right: 'right', top: 'above', bottom: 'below' } as const;

/**
 * How a paper that reaches past the mount is trimmed: "Before hinging, trim the paper to 440 × 401 mm: round the picture leave
 * 62 mm left and right."
 */
export function trimWords({ place: { paper }, cut }: TrimmedPaper, settings: Pick<Settings, 'unit' | 'ruler'>): string {
	const left = Object.entries(sides).flatMap(([side, word]) => {
		const length = cut[side as keyof typeof sides];
		return length === undefined ? [] : [{ word, length }];
	});
	const figures = new Set(left.map(({ length }) => formatLength(length, settings)));
	const parts = [...figures].map((figure) => {
		const own = left.filter(({ length }) => formatLength(length, settings) === figure);
		return `${formatWithUnit(own[0]!.length, settings)} ${listed(own.map(({ word }) => word))}`;
	});
	return `Before hinging, trim the paper to ${formatSize(paper.width, paper.height, settings)}: round the picture leave ${listed(parts)}.`;
}
