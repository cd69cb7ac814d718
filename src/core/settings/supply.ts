/** The words that `kind` of a supply may hold. */
export const supplyKinds = ['spacer', 'tape', 'cord', 'rings', 'bumpers', 'hinges', 'labels'] as const;

/** What kind of supply it is. */
export type SupplyKind = (typeof supplyKinds)[number];

/** The kinds that are got by length: what one print needs, a pack and what is there are lengths. */
export const suppliesByLength: readonly SupplyKind[] = ['spacer', 'tape', 'cord'];

/** What is used up with each print. Amounts are pieces, or a `Length` for what is got by length. */
export interface Supply {
	readonly kind: SupplyKind;
	readonly name: string;
	/** What one print needs of it. Blank: the figure of common practice. */
	readonly each?: number;
	/** Whole minor units of the show's currency, for one pack. */
	readonly price?: number;
	/** Blank: one piece, or one metre. */
	readonly pack?: number;
	/** What is there. Blank: nothing. */
	readonly count?: number;
}
