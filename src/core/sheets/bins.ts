import { type Pattern, patternOf } from './cutTree.ts';
import type { Problem } from './problem.ts';
import { blankSlice, copySlice, measureRoom, putBeside, type Slice, takeOut, treeOfSlices } from './slices.ts';

/** One piece of stock being filled. */
export interface Bin {
	/** Place of its entry in the problem's sheets. */
	readonly sheet: number;
	readonly width: number;
	readonly height: number;
	root: Slice | undefined;
	/** All slices, the outermost first, with the room that each has. */
	slices: readonly Slice[];
	/** Area that no blank takes. */
	free: number;
}

/** A place for a blank. */
export interface Place {
	readonly bin: Bin;
	/** The slice that it is put beside; undefined in an empty bin. */
	readonly beside: Slice | undefined;
	readonly along: 'width' | 'height';
	readonly isAcross: boolean;
	readonly score: number;
}

/** How the room that a blank is put into is judged; the least score is best. */
export type Fit = (roomAlong: number, roomBeside: number) => number;

export function emptyBin({ sheets }: Problem, sheet: number): Bin {
	const { width, height } = sheets[sheet]!;
	return { sheet, width, height, root: undefined, slices: [], free: width * height };
}

export const copyBin = (bin: Bin): Bin => {
	const root = bin.root && copySlice(bin.root);
	return { ...bin, root, slices: root ? measureRoom(root, bin.width, bin.height) : [] };
};

/** The best place for a blank in a bin that scores under `limit`. */
export function bestPlaceIn(bin: Bin, problem: Problem, type: number, fit: Fit, limit: number): Place | undefined {
	const { long, short } = problem.types[type]!;
	const sheet = problem.sheets[bin.sheet]!;
	if (bin.free < long * short) return undefined;
	let best: Place | undefined;
	let score = limit;
	for (const isAcross of [true, false]) {
		if (!(isAcross ? sheet.givesAcross[type]! : sheet.givesDown[type]!)) continue;
		const width = isAcross ? long : short;
		const height = isAcross ? short : long;
		if (bin.root === undefined) {
			const own = fit(bin.width - width, bin.height - height);
			if (own < score) best = { bin, beside: undefined, along: 'width', isAcross, score: (score = own) };
			continue;
		}
		for (const slice of bin.slices) {
			const restAcross = slice.roomAcross - width;
			const restDown = slice.roomDown - height;
			const overDown = slice.height + slice.roomDown - height;
			const overAcross = slice.width + slice.roomAcross - width;
			if (restAcross >= 0 && overDown >= 0) {
				const own = fit(restAcross, overDown);
				if (own < score) best = { bin, beside: slice, along: 'width', isAcross, score: (score = own) };
			}
			if (restDown >= 0 && overAcross >= 0) {
				const own = fit(restDown, overAcross);
				if (own < score) best = { bin, beside: slice, along: 'height', isAcross, score: (score = own) };
			}
		}
	}
	return best;
}

/** Puts a blank in its place. */
export function putIn({ bin, beside, along, isAcross }: Place, { types }: Problem, type: number): void {
	const { long, short } = types[type]!;
	const blank = blankSlice(type, isAcross, isAcross ? long : short, isAcross ? short : long);
	bin.root = bin.root && beside ? putBeside(bin.root, beside, along, blank) : blank;
	bin.slices = measureRoom(bin.root, bin.width, bin.height);
	bin.free -= long * short;
}

/** Takes a blank out of its bin. */
export function takeFrom(bin: Bin, blank: Slice): void {
	bin.root = bin.root && takeOut(bin.root, blank);
	bin.slices = bin.root ? measureRoom(bin.root, bin.width, bin.height) : [];
	bin.free += blank.width * blank.height;
}

/** The blanks of a bin. */
export const blanksIn = ({ slices }: Bin): readonly Slice[] => slices.filter(({ type }) => type >= 0);

/** How the bin is cut. */
export const patternOfBin = ({ sheet, root, width, height }: Bin, { types }: Problem): Pattern =>
	patternOf(sheet, treeOfSlices(root, width, height), types.length);
