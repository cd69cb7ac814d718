import { type CutTree, left } from './cutTree.ts';

/**
 * Blanks lying side by side, or rows of such rows: the smallest box that holds them. Where on the sheet a slice lies
 * is left open, and so is where the spare room goes: a slice may grow until the sheet is full.
 *
 *     along width     +---+-------+--+
 *                     | a |   b   |c |     width: the sum of the parts; height: that of the highest
 *                     |   +-------+--+
 *                     +---+
 */
export interface Slice {
	width: number;
	height: number;
	/** Which way the parts follow each other; a single blank has none. */
	along: 'width' | 'height' | 'none';
	parts: Slice[];
	/** The type of a single blank, else -1. */
	readonly type: number;
	readonly isAcross: boolean;
	/** How much the slice could grow with the sheet still holding all; kept by `measureRoom`. */
	roomAcross: number;
	roomDown: number;
}

/** A single blank as a slice. */
export const blankSlice = (type: number, isAcross: boolean, width: number, height: number): Slice => ({
	width,
	height,
	along: 'none',
	parts: [],
	type,
	isAcross,
	roomAcross: 0,
	roomDown: 0,
});

const rowSlice = (along: 'width' | 'height', parts: Slice[]): Slice => {
	const slice: Slice = { width: 0, height: 0, along, parts, type: -1, isAcross: false, roomAcross: 0, roomDown: 0 };
	measure(slice);
	return slice;
};

/** Two slices one after the other; a row in a row of the same direction is one row. */
export const joinSlices = (along: 'width' | 'height', first: Slice, other: Slice): Slice =>
	rowSlice(
		along,
		[first, other].flatMap((slice) => (slice.along === along ? slice.parts : [slice])),
	);

/** The box of a slice from those of its parts. */
function measure(slice: Slice): void {
	if (slice.along === 'none') return;
	let sumAcross = 0;
	let sumDown = 0;
	let mostAcross = 0;
	let mostDown = 0;
	for (const { width, height } of slice.parts) {
		sumAcross += width;
		sumDown += height;
		if (width > mostAcross) mostAcross = width;
		if (height > mostDown) mostDown = height;
	}
	slice.width = slice.along === 'width' ? sumAcross : mostAcross;
	slice.height = slice.along === 'height' ? sumDown : mostDown;
}

/** A copy that shares nothing. */
export const copySlice = (slice: Slice): Slice => ({ ...slice, parts: slice.parts.map(copySlice) });

/** Says for each slice how much it could grow, and lists them all, the outermost first. */
export function measureRoom(root: Slice, width: number, height: number): readonly Slice[] {
	root.roomAcross = width - root.width;
	root.roomDown = height - root.height;
	const all = [root];
	// The list grows while it is walked.
	for (const slice of all) {
		for (const part of slice.parts) {
			// Along its row a part may take all the room there is; the other way it also has what others stand out by.
			part.roomAcross = slice.roomAcross + (slice.along === 'height' ? slice.width - part.width : 0);
			part.roomDown = slice.roomDown + (slice.along === 'width' ? slice.height - part.height : 0);
			all.push(part);
		}
	}
	return all;
}

/** Puts a blank beside a slice of a tree, and gives the tree's root, which may be a new one. */
export function putBeside(root: Slice, beside: Slice, along: 'width' | 'height', blank: Slice): Slice {
	const put = (slice: Slice): Slice => {
		if (slice === beside) {
			if (slice.along !== along) return rowSlice(along, [slice, blank]);
			slice.parts.push(blank);
			measure(slice);
			return slice;
		}
		for (const [place, part] of slice.parts.entries()) {
			if (part !== beside && !holds(part, beside)) continue;
			const after = put(part);
			// A row in a row of the same direction is one row.
			if (after.along === slice.along) slice.parts.splice(place, 1, ...after.parts);
			else slice.parts[place] = after;
			break;
		}
		measure(slice);
		return slice;
	};
	return put(root);
}

const holds = (slice: Slice, other: Slice): boolean => slice.parts.some((part) => part === other || holds(part, other));

/** Takes one blank out of a tree; undefined where nothing is left. */
export function takeOut(root: Slice, blank: Slice): Slice | undefined {
	if (root === blank) return undefined;
	for (const [place, part] of root.parts.entries()) {
		if (part !== blank && !holds(part, blank)) continue;
		const after = takeOut(part, blank);
		if (after === undefined) root.parts.splice(place, 1);
		else if (after.along === root.along) root.parts.splice(place, 1, ...after.parts);
		else root.parts[place] = after;
		break;
	}
	if (root.parts.length === 1) return root.parts[0];
	measure(root);
	return root;
}

/** The cuts that make the slices out of a piece of this size; what is over is left whole, at the right and below. */
export function treeOfSlices(slice: Slice | undefined, width: number, height: number): CutTree {
	if (slice === undefined) return left;
	const tree: CutTree =
		slice.along === 'none' ? { kind: 'blank', type: slice.type, isAcross: slice.isAcross } : cutApart(slice, 0);
	return cutToSize(slice, tree, width, height);
}

/** The parts of a row from one on, cut off one after the other. */
function cutApart(row: Slice, from: number): CutTree {
	const part = row.parts[from]!;
	const isAcross = row.along === 'width';
	const tree = isAcross ? treeOfSlices(part, part.width, row.height) : treeOfSlices(part, row.width, part.height);
	if (from === row.parts.length - 1) return tree;
	const at = isAcross ? part.width : part.height;
	return { kind: 'cut', across: isAcross ? 'width' : 'height', at, first: tree, other: cutApart(row, from + 1) };
}

/** Cuts what is over off a piece: the larger rest first, so that it stays whole. */
function cutToSize(slice: Slice, tree: CutTree, width: number, height: number): CutTree {
	const cutAcross = (inner: CutTree): CutTree =>
		slice.width === width ? inner : { kind: 'cut', across: 'width', at: slice.width, first: inner, other: left };
	const cutDown = (inner: CutTree): CutTree =>
		slice.height === height ? inner : { kind: 'cut', across: 'height', at: slice.height, first: inner, other: left };
	const isAcrossFirst = (width - slice.width) * height >= (height - slice.height) * width;
	return isAcrossFirst ? cutAcross(cutDown(tree)) : cutDown(cutAcross(tree));
}
