/** What the edition cell says: `3/25`, `AP 1/3` (an artist's proof), `open`. */
export type Edition =
	| { readonly kind: 'numbered'; readonly isProof: boolean; readonly number: number; readonly size: number }
	| { readonly kind: 'open' };

/** Reads an edition; undefined where it is blank or says something else, which is kept as typed. */
export function parseEdition(text: string): Edition | undefined {
	const words = text.trim().toLowerCase();
	if (words === 'open') return { kind: 'open' };
	const match = /^(a\.?\s?p\.?\s*)?(\d{1,6})\s*(?:\/|of)\s*(\d{1,6})$/.exec(words);
	if (!match) return undefined;
	return { kind: 'numbered', isProof: match[1] !== undefined, number: Number(match[2]), size: Number(match[3]) };
}
