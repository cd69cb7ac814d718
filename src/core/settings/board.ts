import type { Length } from '../length/length.ts';

/** A sheet of board, or a ready-cut blank, that can be bought or is there. */
export interface Board {
	readonly name: string;
	readonly kind: 'sheet' | 'blank';
	readonly width: Length;
	readonly height: Length;
	readonly thickness?: Length;
	/** Weight of a square metre of 1 mm, in kg. */
	readonly density?: number;
	/** In words, to know it by in the rack; nothing is worked out from it. */
	readonly colour?: string;
	/** Whole minor units of the show's currency, for one pack. */
	readonly price?: number;
	readonly pack?: number;
	readonly count?: number;
	/** Whether the long side of a blank must lie along the grain; blank: it may be turned. */
	readonly grain?: 'width' | 'height';
	readonly trim?: Length;
}

/** The words that `material` of a glazing may hold. */
export const glazingMaterials = ['glass', 'acrylic'] as const;

/** What glazing is made of. */
export type GlazingMaterial = (typeof glazingMaterials)[number];

/** A sheet of glass or acrylic, or a piece bought ready cut. It has no grain. */
export interface Glazing extends Board {
	readonly material: GlazingMaterial;
}

/** Offcuts of one size kept from earlier: there already, at no price. */
export interface Offcut {
	/** The name of the board that they are of. */
	readonly board: string;
	readonly width: Length;
	readonly height: Length;
	/** How many there are. Blank: one. */
	readonly count?: number;
	/** The side that the grain runs along; blank: none, blanks may be turned. */
	readonly grain?: 'width' | 'height';
}
