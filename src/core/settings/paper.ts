import type { Length } from '../length/length.ts';

/** The words that `surface` may hold. */
export const surfaceWords = [
	'gloss',
	'resin-coated',
	'lustre',
	'baryta',
	'satin',
	'matt',
	'fine art',
	'pastel',
	'charcoal',
] as const;

/** The edges that a paper may have: cut, or as it leaves the mould. */
export const paperEdges = ['straight', 'deckle'] as const;

/** The edge of a paper, which is seen where it floats. */
export type PaperEdge = (typeof paperEdges)[number];

/** A paper to print on: sheets of one size, or a roll. */
export interface Paper {
	readonly name: string;
	/** Of a sheet, or across a roll. */
	readonly width: Length;
	/** Of a sheet; undefined for a roll, which is cut as long as the picture asks. */
	readonly height?: Length;
	/** Length of the roll; undefined for sheets. */
	readonly roll?: Length;
	/** What the printer leaves blank on each side: zero prints to the edge. */
	readonly margin: Length;
	/** In words, as in the rows' cells. */
	readonly surface?: (typeof surfaceWords)[number];
	/** Left out: straight. */
	readonly edge?: PaperEdge;
	/** Whole minor units of the show's currency, for a pack or a roll. */
	readonly price?: number;
	readonly pack?: number;
	readonly count?: number;
}
