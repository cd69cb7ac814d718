import { inches, mm, zero } from '../length/length.ts';
import { nameKey } from '../values/named.ts';
import type { Paper } from '../values/papers.ts';
import type { LabelSheet } from '../settings/labelSheet.ts';
import type { Settings } from '../settings/settings.ts';

/** Sheets with measures that many makers sell (common practice): measure yours before you print on it. */
export const usualSheets: readonly LabelSheet[] = [
	{
		...{ name: 'A4, 2 × 5 of 99.1 × 57 mm', paper: 'A4' },
		...{ width: mm(99.1), height: mm(57), columns: 2, rows: 5 },
		...{ left: mm(4.65), top: mm(6), gapAcross: mm(2.5), gapDown: zero },
	},
	{
		...{ name: 'Letter, 2 × 5 of 4 × 2 in', paper: 'Letter' },
		...{ width: inches(4), height: inches(2), columns: 2, rows: 5 },
		...{ left: inches(5 / 32), top: inches(1 / 2), gapAcross: inches(3 / 16), gapDown: zero },
	},
];

/** The sheets to choose from: the show's own, then the usual ones, those of the paper in use first. */
export function sheetsOf({ labelSheets }: Pick<Settings, 'labelSheets'>, paper: Paper): readonly LabelSheet[] {
	const names = new Set(labelSheets.map(({ name }) => nameKey(name)));
	const usual = usualSheets.filter(({ name }) => !names.has(nameKey(name)));
	return [...labelSheets, ...usual.toSorted((a, b) => Number(b.paper === paper) - Number(a.paper === paper))];
}
