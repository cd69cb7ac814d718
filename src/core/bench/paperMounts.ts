import type { RowResult } from '../findings/rowResult.ts';
import { type Length, toMm } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { groupBy } from '../values/groupBy.ts';
import type { Paper } from '../values/papers.ts';
import type { BenchStep } from './benchPlan.ts';
import { fitsTemplate, rowsWithCuts } from './paper.ts';
import { type CutMount, cutMounts, overcutOf } from './windowCuts.ts';

/** A mount whose marks or corners are drawn on paper. */
export interface PaperMount {
	/** Place of its row, from 0. */
	readonly index: number;
	readonly mount: CutMount;
	/** How far a cut runs past the corner of the window. */
	readonly overcut: Length;
}

/** A corner of a mount, by its end of the right side. */
export interface PaperCorner extends PaperMount {
	readonly end: 'top' | 'bottom';
}

/** Corner templates for paper of a size. */
export interface CornerTemplates {
	/** One of each corner, with all that are alike, the one that is drawn first. */
	readonly pages: readonly (readonly PaperCorner[])[];
	/** Places of the rows with a corner that has no room on the paper. */
	readonly tooLarge: readonly number[];
}

/** The mounts that have cuts, row by row, the outer one first. */
export const paperMounts = (
	rows: readonly Row[],
	results: readonly RowResult[],
	steps: readonly BenchStep[],
	settings: Settings,
): readonly PaperMount[] =>
	rowsWithCuts(rows, steps).flatMap((index) =>
		cutMounts(results[index]!, settings).map((mount) => ({
			index,
			mount,
			overcut: overcutOf(results[index]!, mount.part, settings),
		})),
	);

/** The templates of the corners of mounts. */
export function cornerTemplates(mounts: readonly PaperMount[], paper: Paper): CornerTemplates {
	const corners = mounts.flatMap((each) => (['top', 'bottom'] as const).map((end) => ({ ...each, end })));
	const fits = ({ mount: { borders }, end }: PaperCorner) =>
		fitsTemplate(toMm(borders.right), toMm(borders[end]), paper);
	const pages = groupBy(corners.filter(fits), ({ mount: { borders }, overcut, end }) =>
		[end, borders.right, borders[end], overcut].join(' '),
	);
	const tooLarge = corners.filter((corner) => !fits(corner)).map(({ index }) => index);
	return { pages: [...pages.values()], tooLarge: [...new Set(tooLarge)] };
}
