/** What is drawn of a record beside its name: what it is, how large in its list, and in which colour. */
export interface RecordSwatch {
	readonly kind: 'card' | 'frame' | 'glass' | 'paper';
	/** Its sides as shares of the longest in the list; undefined where it has no size of its own. */
	readonly size: { readonly width: number; readonly height: number } | undefined;
	/** As CSS writes it; undefined: the colour of card. */
	readonly colour?: string;
}

/** What the line of a record says while it is folded. */
export interface RecordLine {
	readonly name: string;
	/** What else it is known by: its thickness, its colour. */
	readonly more: string;
	readonly size: string;
	readonly price: string;
	readonly swatch?: RecordSwatch;
}
