import { type CutTree, left, type Pattern, patternOf } from './cutTree.ts';
import type { Problem, SheetType } from './problem.ts';

/** A piece in hand whose tree is still open: blanks are cut from it while there are any that fit. */
interface OpenPiece {
	readonly width: number;
	readonly height: number;
	tree: CutTree | undefined;
	/** The two pieces that it was cut into. */
	parts: { across: 'width' | 'height'; at: number; first: OpenPiece; other: OpenPiece } | undefined;
}

/** Patterns for as many of the blanks as the stock gives, and how many of each type were left over. */
export interface GreedyPlan {
	readonly patterns: readonly Pattern[];
	readonly leftOver: readonly number[];
}

/** A plan at once: the largest blank first, into the piece that it fills best, else from another sheet. */
export function greedyPlan({ types, sheets }: Problem): GreedyPlan {
	const used = sheets.map(() => 0);
	const leftOver = types.map(() => 0);
	const open: { sheet: number; root: OpenPiece }[] = [];
	types.forEach(({ blanks }, type) => {
		for (let count = 0; count < blanks.length; count++) {
			let best = bestPlace(types, sheets, open, type);
			if (best === undefined) {
				const sheet = cheapestSheet(sheets, used, type);
				if (sheet === undefined) {
					leftOver[type] = blanks.length - count;
					break;
				}
				used[sheet]!++;
				open.push({ sheet, root: openPiece(sheets[sheet]!.width, sheets[sheet]!.height) });
				best = bestPlace(types, sheets, open.slice(-1), type)!;
			}
			place(best.piece, best.width, best.height, type, best.isAcross);
		}
	});
	return { patterns: open.map(({ sheet, root }) => patternOf(sheet, closed(root), types.length)), leftOver };
}

const openPiece = (width: number, height: number): OpenPiece => ({ width, height, tree: undefined, parts: undefined });

function* emptyPieces(piece: OpenPiece): Generator<OpenPiece> {
	if (piece.parts) {
		yield* emptyPieces(piece.parts.first);
		yield* emptyPieces(piece.parts.other);
	} else if (piece.tree === undefined) yield piece;
}

/** The open piece, and the way round, that leaves the least on the shorter of the two sides left. */
function bestPlace(
	types: Problem['types'],
	sheets: readonly SheetType[],
	open: readonly { sheet: number; root: OpenPiece }[],
	type: number,
) {
	const { long, short } = types[type]!;
	let best: { piece: OpenPiece; width: number; height: number; isAcross: boolean; spare: number } | undefined;
	for (const { sheet, root } of open)
		for (const piece of emptyPieces(root))
			for (const isAcross of [true, false]) {
				const gives = isAcross ? sheets[sheet]!.givesAcross[type] : sheets[sheet]!.givesDown[type];
				const [width, height] = isAcross ? [long, short] : [short, long];
				if (!gives || width > piece.width || height > piece.height) continue;
				const spare = Math.min(piece.width - width, piece.height - height);
				if (best === undefined || spare < best.spare) best = { piece, width, height, isAcross, spare };
			}
	return best;
}

/** The sheet that gives the type at the least price for its area; what is there already first. */
function cheapestSheet(sheets: readonly SheetType[], used: readonly number[], type: number): number | undefined {
	const priceOf = ({ stock, width, height, isBought }: SheetType) =>
		isBought ? (stock.price ?? 1) / stock.pack / (width * height) : 0;
	const possible = sheets
		.map((_, place) => place)
		.filter((place) => used[place]! < sheets[place]!.most)
		.filter((place) => sheets[place]!.givesAcross[type]! || sheets[place]!.givesDown[type]!);
	return possible.sort((a, b) => priceOf(sheets[a]!) - priceOf(sheets[b]!))[0];
}

/** Cuts the blank out of the corner of a piece; the longer of the two rests stays whole. */
function place(piece: OpenPiece, width: number, height: number, type: number, isAcross: boolean): void {
	const restAcross = piece.width - width;
	const restDown = piece.height - height;
	if (restAcross === 0 && restDown === 0) piece.tree = { kind: 'blank', type, isAcross };
	else {
		const isAcrossFirst = restDown === 0 || (restAcross !== 0 && restAcross * piece.height >= restDown * piece.width);
		const [first, other] = isAcrossFirst
			? [openPiece(width, piece.height), openPiece(restAcross, piece.height)]
			: [openPiece(piece.width, height), openPiece(piece.width, restDown)];
		piece.parts = isAcrossFirst
			? { across: 'width', at: width, first, other }
			: { across: 'height', at: height, first, other };
		place(first, width, height, type, isAcross);
	}
}

function closed({ tree, parts }: OpenPiece): CutTree {
	if (tree) return tree;
	if (!parts) return left;
	return { kind: 'cut', across: parts.across, at: parts.at, first: closed(parts.first), other: closed(parts.other) };
}
