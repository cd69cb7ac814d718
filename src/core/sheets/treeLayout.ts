import { type Length, length, mm } from '../length/length.ts';
import type { Blank } from '../show/blank.ts';
import type { KnifeCut, PlacedBlank, Rectangle } from '../show/cutSheet.ts';
import type { Stock } from '../stock/stock.ts';
import type { CutTree } from './cutTree.ts';
import type { Layout } from './layout.ts';
import type { Problem } from './problem.ts';

/** What is narrower than this, in either way, is not worth keeping as an offcut. */
export const leastOffcutSide = mm(100);

/** Takes the next blank of a type that still has no place. */
export type TakeBlank = (type: number) => Blank;

interface Drawing {
	readonly blanks: PlacedBlank[];
	readonly cuts: KnifeCut[];
	readonly leftOver: Rectangle[];
}

/** The layout of one piece of stock cut by a tree, its blanks taken one by one in the order in which they fall. */
export function treeLayout(tree: CutTree, stock: Stock, scale: number, take: TakeBlank, pattern: number): Layout {
	const drawing: Drawing = { blanks: [], cuts: [], leftOver: [] };
	const sheet = takeTrimOff(stock, drawing);
	draw(tree, sheet, scale, take, drawing);
	return {
		stock,
		pattern,
		blanks: drawing.blanks,
		cuts: drawing.cuts,
		offcuts: drawing.leftOver
			.filter(({ width, height }) => Math.min(width, height) >= leastOffcutSide)
			.sort((a, b) => b.width * b.height - a.width * a.height),
		isCut: false,
	};
}

/** Cuts the factory edge off, side by side, and gives the piece that is left. */
function takeTrimOff({ width, height, trim }: Stock, { cuts }: Drawing): Rectangle {
	let piece: Rectangle = { x: length(0), y: length(0), width, height };
	if (trim === 0) return piece;
	cuts.push({ piece, across: 'width', at: trim });
	piece = { ...piece, x: trim, width: length(width - trim) };
	cuts.push({ piece, across: 'width', at: length(width - 2 * trim) });
	piece = { ...piece, width: length(width - 2 * trim) };
	cuts.push({ piece, across: 'height', at: trim });
	piece = { ...piece, y: trim, height: length(height - trim) };
	cuts.push({ piece, across: 'height', at: length(height - 2 * trim) });
	return { ...piece, height: length(height - 2 * trim) };
}

/** The cut first, then all of the first piece, then the other: the knife finishes a piece before the next. */
function draw(tree: CutTree, piece: Rectangle, scale: number, take: TakeBlank, drawing: Drawing): void {
	if (tree.kind === 'left') drawing.leftOver.push(piece);
	else if (tree.kind === 'blank') {
		const blank = take(tree.type);
		drawing.blanks.push({ ...blank, ...piece, turned: blank.width !== piece.width });
	} else {
		const at = length(tree.at * scale);
		drawing.cuts.push({ piece, across: tree.across, at });
		const [first, other] = halves(piece, tree.across, at);
		draw(tree.first, first, scale, take, drawing);
		draw(tree.other, other, scale, take, drawing);
	}
}

function halves(piece: Rectangle, across: 'width' | 'height', at: Length): readonly [Rectangle, Rectangle] {
	const { x, y, width, height } = piece;
	return across === 'width'
		? [
				{ ...piece, width: at },
				{ ...piece, x: length(x + at), width: length(width - at) },
			]
		: [
				{ ...piece, height: at },
				{ ...piece, y: length(y + at), height: length(height - at) },
			];
}

/** Hands out the blanks of each type in order: those of the show first, spares last. */
export function blanksInOrder({ types }: Problem): TakeBlank {
	const next = types.map(() => 0);
	return (type) => types[type]!.blanks[next[type]!++]!;
}
