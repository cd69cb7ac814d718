import type { Blank } from '../show/blank.ts';
import type { CutSheet, KnifeCut, PlacedBlank, Rectangle } from '../show/cutSheet.ts';
import type { Stock } from '../stock/stock.ts';

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
export type NameOfBlank = (blank: Blank, sheet: { readonly stock: Pick<Stock, 'board' | 'material'> }) => string;

/** A sheet as it is planned round; a spoilt one gives neither blanks nor offcuts. */
export const layoutOf = ({ stock, blanks, cuts, offcuts, isSpoilt }: CutSheet, place: number): Layout => ({
	stock,
	pattern: place + 1,
	blanks: isSpoilt ? [] : blanks,
	cuts,
	offcuts: isSpoilt ? [] : offcuts,
	isCut: true,
});
