import { inches, type Length, mm, sameWithin } from '../length/length.ts';
import type { Unit } from '../length/reading.ts';
import type { OnPaper } from './paper.ts';
import type { SolvedRow } from './solvedRow.ts';

/** How many hinges hold a paper; where they are, `layHinges.ts` says. */
export interface Hinges {
	readonly count: number;
}

/** Two hinges up to this width of paper, and one more for each further width begun. Common practice. */
const widths = {
	metric: { first: mm(500), further: mm(300) },
	inch: { first: inches(20), further: inches(12) },
} as const;

/** How many hinges a paper of a width has. */
export function hingeCount(width: Length, unit: Unit): number {
	const { first, further } = unit === 'in' ? widths.inch : widths.metric;
	return width <= first + sameWithin ? 2 : 2 + Math.ceil((width - first - sameWithin) / further);
}

/** The hinges of a row: without a paper the picture's width counts. */
export function hingesOf({ pictureWidth }: SolvedRow, onPaper: OnPaper | undefined, unit: Unit): Hinges | undefined {
	const width = onPaper?.paper.width ?? pictureWidth;
	return width === undefined ? undefined : { count: hingeCount(width, unit) };
}
