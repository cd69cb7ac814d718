import type { Length } from '../length/length.ts';
import type { Blank } from './blank.ts';
import type { Stock } from './stock.ts';

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

/** One cut of the knife, from edge to edge through the piece in hand. */
export interface KnifeCut {
	/** The piece in hand before the cut. */
	readonly piece: Rectangle;
	/** `width`: the cut divides the width, from the top edge to the bottom one. `height`: from the left to the right. */
	readonly across: 'width' | 'height';
	/** The measure to set: from the left edge of the piece (`width`), or from its top edge (`height`). */
	readonly at: Length;
}

/** One piece of stock and how it is cut. */
export interface Layout {
	readonly stock: Stock;
	/**
	 * Layouts of a plan with the same number are cut alike, in the same places (the prints they are for differ), so a
	 * screen may draw them once. From 1, in the order of the plan. Sheets that are cut already have numbers of their own.
	 */
	readonly pattern: number;
	readonly blanks: readonly PlacedBlank[];
	/** In the order of the knife; none for a ready-cut blank. The factory edges come off first. */
	readonly cuts: readonly KnifeCut[];
	/** What is left and worth keeping, the largest first. */
	readonly offcuts: readonly Rectangle[];
	/** Whether it is cut already, and stays as it is. */
	readonly isCut: boolean;
}

/** Says whom a blank is for that is cut from a piece of stock, or is to be. */
export type NameOfBlank = (blank: Blank, sheet: { readonly stock: Pick<Stock, 'board'> }) => string;
