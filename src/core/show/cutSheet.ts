import type { Length } from '../length/length.ts';
import type { Stock } from '../stock/stock.ts';
import type { Blank } from './blank.ts';

/** A rectangle on a sheet, from the top left corner of the untrimmed sheet. */
export interface Rectangle {
	readonly x: Length;
	readonly y: Length;
	readonly width: Length;
	readonly height: Length;
}

/** A blank on its sheet. `width` and `height` are as it lies there: turned, they are the mount's height and width. */
export interface PlacedBlank extends Blank, Rectangle {
	readonly turned: boolean;
}

/** One cut of the knife, from edge to edge through one piece. */
export interface KnifeCut {
	/** The piece before the cut. */
	readonly piece: Rectangle;
	/** `width`: the cut divides the width, from the top edge to the bottom one. `height`: from the left to the right. */
	readonly across: 'width' | 'height';
	/** The measure to set: from the left edge of the piece (`width`), or from its top edge (`height`). */
	readonly at: Length;
}

/**
 * A sheet that the knife has begun: it stays as it was planned, and the rest is planned round it. Plain data, kept in
 * the show.
 */
export interface CutSheet {
	/** Names it within its show. */
	readonly id: string;
	readonly stock: Stock;
	/** The places of the rows in the show (`row`) are those of when it was begun; `rowId` tells whose they are. */
	readonly blanks: readonly PlacedBlank[];
	readonly cuts: readonly KnifeCut[];
	readonly offcuts: readonly Rectangle[];
	/** Places in `cuts`, from 0, of those that are made, ascending. */
	readonly made: readonly number[];
	/** Whether it is spoilt: it is used up, and gives nothing. */
	readonly isSpoilt: boolean;
}

/** Whether every cut of a sheet is made; a ready-cut blank has none. */
export const isWholeCut = ({ cuts, made }: CutSheet): boolean => made.length === cuts.length;
