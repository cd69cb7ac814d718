import { isSame, type Length, length } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Cells } from './cells.ts';
import { leftBlank, type OnPaper, paperAsItLies, placeOnPaper } from './paper.ts';
import type { Solution } from './solution.ts';
import type { SolvedRow } from './solvedRow.ts';
import type { Settings } from '../settings/settings.ts';

/** Where the picture of a row lies on its paper; undefined where no paper is typed or the picture is not known. */
export function pictureOnPaper(cells: Cells, { solved, cover }: Solution, settings: Settings): OnPaper | undefined {
	const { pictureWidth, pictureHeight } = solved;
	if (!cells.paper || pictureWidth === undefined || pictureHeight === undefined) return undefined;
	const picture: Size = { width: pictureWidth, height: pictureHeight };
	const paper = paperAsItLies(cells.paper, picture, leftBlank(cells.paper, cover, settings));
	return paper && placeOnPaper(paper, picture, cells);
}

/** Lengths on the four sides of something, below zero where it is past an edge. */
export interface FourSides {
	readonly left: Length;
	readonly right: Length;
	readonly top: Length;
	readonly bottom: Length;
}

/** Where the paper lies behind the mount, or on the board of a float, for hinging. */
export interface PaperPlace {
	/** The paper; without one the picture stands for it. */
	readonly paper: Size;
	readonly isPicture: boolean;
	/** From the mount's edges to the paper's; below zero where the paper is past the edge. */
	readonly from: FourSides;
	/**
	 * How far the paper reaches under the mount round its innermost window; below zero where it falls short. Undefined for a
	 * float, which has no window.
	 */
	readonly reaches: FourSides | undefined;
}

/** What of a row its paper's place follows from. */
export interface Placed {
	readonly read: { readonly cells: Pick<Cells, 'innerMount' | 'isFloat'> };
	readonly solved: SolvedRow;
	readonly onPaper: OnPaper | undefined;
}

const noMargins = { left: 0, right: 0, top: 0, bottom: 0 };

/** Where the paper lies. Undefined where the row does not come out. */
export function paperPlace({ read, solved, onPaper }: Placed): PaperPlace | undefined {
	const { pictureWidth, pictureHeight, side, top, bottom, overlapSide, overlapTop, overlapBottom, mountWidth } = solved;
	if (pictureWidth === undefined || pictureHeight === undefined) return undefined;
	if (side === undefined || top === undefined || bottom === undefined || mountWidth === undefined) return undefined;
	const paper = onPaper?.paper ?? { width: pictureWidth, height: pictureHeight };
	const isPicture = onPaper === undefined;
	if (read.cells.isFloat) {
		const isInPlace = isSame(side + paper.width + side, mountWidth);
		const left = isInPlace ? side : length(Math.floor((mountWidth - paper.width) / 2));
		return { paper, isPicture, from: { left, right: left, top, bottom }, reaches: undefined };
	}
	if (overlapSide === undefined || overlapTop === undefined || overlapBottom === undefined) return undefined;
	const inner: number = read.cells.innerMount ?? 0;
	const margins = onPaper ?? noMargins;
	// The picture is in the middle of the window: what half a unit leaves over is on the right.
	const covered = {
		left: overlapSide,
		right: length(pictureWidth - (mountWidth - 2 * (side + inner)) - overlapSide),
		top: overlapTop,
		bottom: overlapBottom,
	};
	const outer = { left: side, right: side, top, bottom };
	const reach = (edge: keyof FourSides) => length(covered[edge] + margins[edge]);
	const reaches = { left: reach('left'), right: reach('right'), top: reach('top'), bottom: reach('bottom') };
	const from = (edge: keyof FourSides) => length(outer[edge] + inner - reaches[edge]);
	return {
		paper,
		isPicture,
		from: { left: from('left'), right: from('right'), top: from('top'), bottom: from('bottom') },
		reaches,
	};
}
