import type { Length } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Cells } from './cells.ts';
import type { SolvedRow } from './solvedRow.ts';

/** The paper as it lies, long side with the picture's: a sheet of paper has no way up of its own. */
export function paperAsItLies(paper: Size, solved: SolvedRow): Size {
	const { pictureWidth, pictureHeight } = solved;
	if (!pictureWidth || !pictureHeight || pictureWidth === pictureHeight) return paper;
	const isTurned = pictureWidth > pictureHeight !== paper.width > paper.height && paper.width !== paper.height;
	return isTurned ? { width: paper.height, height: paper.width } : paper;
}

/** Where the paper lies behind the mount, for hinging: in units of a `Length`, halves possible. */
export interface PaperPlace {
	readonly paper: Size;
	/** From the mount's edges to the paper's; below zero where the paper is past the edge. */
	readonly fromLeft: number;
	readonly fromTop: number;
	readonly fromBottom: number;
	/** How far the paper reaches under the mount round its innermost window; below zero where it falls short. */
	readonly reachesSide: number;
	readonly reachesTop: number;
	readonly reachesBottom: number;
}

/** Where the paper lies, the picture centred on it. Undefined where no paper is typed or the row does not come out. */
export function paperPlace(cells: Cells, solved: SolvedRow): PaperPlace | undefined {
	const { pictureWidth, pictureHeight, side, top, bottom, overlapSide, overlapTop, overlapBottom } = solved;
	if (!cells.paper || pictureWidth === undefined || pictureHeight === undefined) return undefined;
	if (side === undefined || top === undefined || bottom === undefined) return undefined;
	if (overlapSide === undefined || overlapTop === undefined || overlapBottom === undefined) return undefined;
	const paper = paperAsItLies(cells.paper, solved);
	const inner: number = cells.innerMount ?? 0;
	const reach = (overlap: Length, spare: number) => overlap + spare / 2;
	const reachesSide = reach(overlapSide, paper.width - pictureWidth);
	const reachesTop = reach(overlapTop, paper.height - pictureHeight);
	const reachesBottom = reach(overlapBottom, paper.height - pictureHeight);
	return {
		paper,
		fromLeft: side + inner - reachesSide,
		fromTop: top + inner - reachesTop,
		fromBottom: bottom + inner - reachesBottom,
		reachesSide,
		reachesTop,
		reachesBottom,
	};
}
