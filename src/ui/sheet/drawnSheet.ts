import { type Length, toMm } from '../../core/length/length.ts';
import type { KnifeCut, Rectangle } from '../../core/show/cutSheet.ts';

/** A piece on the drawing of a sheet, in millimetres from its top left corner. */
export interface Place {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

/** Where a piece is on the drawing of its sheet. */
export const inMm = ({ x, y, width, height }: Rectangle): Place => ({
	x: toMm(x),
	y: toMm(y),
	width: toMm(width),
	height: toMm(height),
});

/**
 * The path of a mark on the edge of a blank that is the mount's bottom: the lower one, or the left one of a blank that lies
 * turned, as its picture does. It is the head of an arrow: its point touches that edge.
 * @param half of its base, in millimetres on the sheet
 */
export const bottomMark = ({ x, y, width, height }: Place, isTurned: boolean, half: number): string =>
	isTurned
		? `M${x} ${y + height / 2}l${half} ${-half}v${2 * half}Z`
		: `M${x + width / 2} ${y + height}l${-half} ${-half}h${2 * half}Z`;

/** A line on the drawing of a sheet, in millimetres from its top left corner. */
export interface CutLine {
	readonly x1: number;
	readonly y1: number;
	readonly x2: number;
	readonly y2: number;
}

/** The line along which the knife cuts, from the top or from the left of the piece that it divides. */
export function cutLine({ piece, across, at }: KnifeCut): CutLine {
	const { x, y, width, height } = inMm(piece);
	const far = toMm(at);
	return across === 'width'
		? { x1: x + far, y1: y, x2: x + far, y2: y + height }
		: { x1: x, y1: y + far, x2: x + width, y2: y + far };
}

/**
 * Where the number of a cut stands: near where its line begins, on its middle where it is short; a third along it where a
 * factory edge comes off, away from the corners in which four such lines meet.
 * @param letter height of the letters, in millimetres on the sheet
 */
export function numberPlace(
	cut: KnifeCut,
	letter: number,
	isTrim: boolean,
): { readonly x: number; readonly y: number } {
	const { x1, y1, x2, y2 } = cutLine(cut);
	const long = Math.max(x2 - x1, y2 - y1);
	const along = isTrim ? long / 3 : Math.min(letter * 1.1, long / 2);
	return cut.across === 'width' ? { x: x1, y: y1 + along } : { x: x1 + along, y: y1 };
}

/** What the knife is set to, from the left or the top edge of the piece that it divides, on the drawing of its sheet. */
export interface SetNow {
	readonly across: KnifeCut['across'];
	/** Its ends along the sheet's edge, in millimetres. */
	readonly from: number;
	readonly to: number;
	readonly at: Length;
}

/**
 * What the knife is set to for the cuts of a step, each place once.
 * @param now places of the cuts among those of the sheet, from 0
 */
export function setsNow(cuts: readonly KnifeCut[], now: readonly number[]): readonly SetNow[] {
	const all = now.map((place): SetNow => {
		const { piece, across, at } = cuts[place]!;
		const from = toMm(across === 'width' ? piece.x : piece.y);
		return { across, from, to: from + toMm(at), at };
	});
	return all.filter(
		(each, place) => all.findIndex((other) => other.across === each.across && other.from === each.from) === place,
	);
}
