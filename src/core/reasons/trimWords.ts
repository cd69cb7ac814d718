import { formatSize, formatWithUnit } from '../length/formatLength.ts';
import type { LaidHinges } from '../row/layHinges.ts';
import type { TrimmedPaper } from '../row/trimmedPaper.ts';
import type { Settings } from '../settings/settings.ts';
import { groupBy } from '../values/groupBy.ts';
import { listed } from '../values/listed.ts';

const sides = { left: 'left', right: 'right', top: 'above', bottom: 'below' } as const;

/**
 * How a paper that reaches past the mount is trimmed: "Before hinging, trim the paper to 440 × 401 mm. Leave 62 mm left and
 * right, from the picture’s edge."
 */
export function trimWords({ place: { paper }, cut }: TrimmedPaper, settings: Pick<Settings, 'unit' | 'ruler'>): string {
	const all = Object.entries(sides) as [keyof typeof sides, string][];
	const left = all.flatMap(([side, word]) =>
		cut[side] === undefined ? [] : { word, said: formatWithUnit(cut[side], settings) },
	);
	const parts = [...groupBy(left, ({ said }) => said)].map(
		([said, own]) => `${said} ${listed(own.map(({ word }) => word))}`,
	);
	return `Before hinging, trim the paper to ${formatSize(paper.width, paper.height, settings)}. Leave ${listed(parts)}, from the picture’s edge.`;
}

/**
 * What holds before a paper is hinged as drawn: how it is trimmed; without a paper, that the figures are those of a print
 * trimmed to its picture, for on a larger sheet they would hang it low. Empty where it is hinged as it is.
 */
export function beforeHingingWords({ trimmed, place }: LaidHinges, settings: Pick<Settings, 'unit' | 'ruler'>): string {
	if (trimmed) return trimWords(trimmed, settings);
	return place.isPicture ? onlyTrimmedWords(place, settings) : '';
}

/** "No paper yet. Only for a print trimmed to 464 × 309.3 mm." */
const onlyTrimmedWords = ({ paper }: LaidHinges['place'], settings: Pick<Settings, 'unit' | 'ruler'>): string =>
	`No paper yet. Only for a print trimmed to ${formatSize(paper.width, paper.height, settings)}.`;
