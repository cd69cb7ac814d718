/** The words that `labels.name` may hold. */
export const labelNameWords = ['free', 'required', 'forbidden'] as const;

/** The words that `labels.corner` may hold, as seen from the back. */
export const labelCornerWords = ['top left', 'top right', 'bottom left', 'bottom right'] as const;

/** The words that `labelContents.wall` may hold: what stands on a label on the wall, in the order in which it stands there. */
export const wallLabelWords = ['title', 'maker', 'medium', 'year', 'size', 'number', 'edition', 'price'] as const;

/** The words that `labelContents.back` may hold: on the back, which way is up matters too. */
export const backLabelWords = ['this way up', ...wallLabelWords] as const;

/** Something that may stand on a label. */
export type LabelWord = (typeof backLabelWords)[number];

/** What the show's rules ask of the labels on the back. */
export interface Labels {
	/** Whether the maker's name must, may or must not stand on the back. */
	readonly name: (typeof labelNameWords)[number];
	/** The corner of the label; undefined where any will do. */
	readonly corner: (typeof labelCornerWords)[number] | undefined;
}

/** What was chosen to stand on labels; the rules of the show may add the maker's name on the back, or take it off. */
export interface LabelContents {
	readonly back: readonly LabelWord[];
	/** On the wall, beside the print. */
	readonly wall: readonly LabelWord[];
}
