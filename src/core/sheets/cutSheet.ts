import type { KnifeCut, Layout, PlacedBlank, Rectangle } from './layout.ts';
import type { Stock } from './stock.ts';

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

/** A sheet as it is planned round; a spoilt one gives neither blanks nor offcuts. */
export const layoutOf = ({ stock, blanks, cuts, offcuts, isSpoilt }: CutSheet, place: number): Layout => ({
	stock,
	pattern: place + 1,
	blanks: isSpoilt ? [] : blanks,
	cuts,
	offcuts: isSpoilt ? [] : offcuts,
	isCut: true,
});
