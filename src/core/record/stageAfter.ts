/** What a print was before it was sold, and before it was collected: the text of its stage cell. */
export interface FormerStages {
	readonly unsold?: string | undefined;
	readonly uncollected?: string | undefined;
}

/** What a tap on Sold or Collected comes to. */
export interface StageChange {
	readonly stage: string;
	readonly former: FormerStages;
}

/**
 * The stage of a print after a tap on Sold. Tapped again, it is what it was before it was sold, collected or not.
 * @param stage the text of its cell
 * @param known what it was before, as far as that is known: else it was nothing
 */
export function afterSold(stage: string, isSold: boolean, known: FormerStages): StageChange {
	return isSold ? { stage: known.unsold ?? '', former: {} } : { stage: 'sold', former: { unsold: stage } };
}

/** The same for Collected. What is collected is sold; tapped again, it is what it was before: sold, unless known otherwise. */
export function afterCollected(
	stage: string,
	{ isSold, isCollected }: { readonly isSold: boolean; readonly isCollected: boolean },
	known: FormerStages,
): StageChange {
	if (isCollected) return { stage: known.uncollected ?? 'sold', former: { unsold: known.unsold } };
	return { stage: 'collected', former: { unsold: isSold ? known.unsold : stage, uncollected: stage } };
}
