/** What becomes of a piece of board: it is a blank, it is left over, or it is cut in two. */
export type CutTree = BlankLeaf | LeftLeaf | TreeCut;

/** The piece is a blank of this type, to the last unit. */
export interface BlankLeaf {
	readonly kind: 'blank';
	readonly type: number;
	/** Whether the blank's long side lies across the sheet's width. */
	readonly isAcross: boolean;
}

/** Nothing is cut from the piece. */
export interface LeftLeaf {
	readonly kind: 'left';
}

/**
 * The piece is cut from edge to edge.
 *
 *     across width         across height
 *     +-------+-----+      +-----------+
 *     | first |other|      |   first   | at
 *     |       |     |      +-----------+
 *     +-------+-----+      |   other   |
 *        at                +-----------+
 */
export interface TreeCut {
	readonly kind: 'cut';
	readonly across: 'width' | 'height';
	/** From the left edge, or from the top one, in the problem's units. */
	readonly at: number;
	readonly first: CutTree;
	readonly other: CutTree;
}

/** One sheet cut by a tree. */
export interface Pattern {
	/** Place of its entry in the problem's sheets. */
	readonly sheet: number;
	readonly tree: CutTree;
	/** How many blanks of each type it gives. */
	readonly counts: readonly number[];
}

/** A piece from which nothing is cut. */
export const left: LeftLeaf = { kind: 'left' };

/** Adds the blanks of a tree to the counts of their types. */
export function addCounts(tree: CutTree, counts: number[]): void {
	if (tree.kind === 'blank') counts[tree.type]!++;
	if (tree.kind !== 'cut') return;
	addCounts(tree.first, counts);
	addCounts(tree.other, counts);
}

/** A pattern of a tree. */
export function patternOf(sheet: number, tree: CutTree, typeCount: number): Pattern {
	const counts = new Array<number>(typeCount).fill(0);
	addCounts(tree, counts);
	return { sheet, tree, counts };
}
