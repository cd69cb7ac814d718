/**
 * What prints of one title are counted in by themselves: the edition, one numbered in Roman numerals beside it, artist's
 * proofs, prints out of the trade (hors commerce), printer's proofs, and the one good to print from (bon à tirer).
 */
export type Series = '' | 'roman' | 'AP' | 'HC' | 'PP' | 'BAT';

/** What the edition cell says: `3/25`, `III/X`, `AP 1/3`, `HC`, `open`. */
export type Edition =
	| { readonly kind: 'numbered'; readonly series: Series; readonly number: number; readonly size: number }
	| { readonly kind: 'proof'; readonly series: Series }
	| { readonly kind: 'open' };

/** An apostrophe as it is typed, or left out. */
const s = String.raw`['’]?s?`;

/** The marks of proofs as they are written: `AP`, `A.P.`, `A/P`, in French (`E.A.`, épreuve d'artiste), and in full. */
const proofs = [
	['AP', String.raw`(?:a[./]?\s?p\.?|[eé][./]?\s?a\.?|artist${s} proof|[eé]preuve d['’]artiste)`],
	['HC', String.raw`(?:h[./]?\s?c\.?|hors[ -]commerce)`],
	['PP', String.raw`(?:p[./]?\s?p\.?|printer${s} proof)`],
	['BAT', String.raw`(?:b[./]?\s?a[./]?\s?t\.?|bon [aà] tirer)`],
] as const;

/** An edition without an end, as people write it. */
const open = /^(?:open|unlimited)(?:\s+ed(?:ition|n)?\.?)?$/;

/** Reads an edition; undefined where it is blank or says something else, which is kept as typed. */
export function parseEdition(text: string): Edition | undefined {
	const words = text.trim().toLowerCase().replaceAll(/\s+/g, ' ');
	if (words === '') return undefined;
	if (open.test(words)) return { kind: 'open' };
	for (const [series, mark] of proofs) {
		const proof = new RegExp(`^${mark}(?:\\s*(?=\\d)|\\s+|$)(.*)$|^(.*\\S)\\s+${mark}$`).exec(words);
		if (!proof) continue;
		const rest = proof[1] ?? proof[2] ?? '';
		if (rest === '') return { kind: 'proof', series };
		const numbered = numberOf(rest);
		return numbered && { kind: 'numbered', series, number: numbered.number, size: numbered.size };
	}
	const numbered = numberOf(words);
	if (!numbered) return undefined;
	const { isRoman, ...figures } = numbered;
	return { kind: 'numbered', series: isRoman ? 'roman' : '', ...figures };
}

/** `3/25`, `3 of 25` or `III/X`, both figures written the same way. */
function numberOf(text: string): { number: number; size: number; isRoman: boolean } | undefined {
	const match = /^(?:(\d{1,6})\s*(?:\/|of)\s*(\d{1,6})|([ivxlc]+)\s*(?:\/|of)\s*([ivxlc]+))$/.exec(text);
	if (!match) return undefined;
	const isRoman = match[3] !== undefined;
	const [number, size] = isRoman ? [fromRoman(match[3]!), fromRoman(match[4]!)] : [Number(match[1]), Number(match[2])];
	return number === undefined || size === undefined ? undefined : { number, size, isRoman };
}

/** A number in Roman numerals, under 400; undefined where they are not written as a number is. */
function fromRoman(text: string): number | undefined {
	const figures = /^(c{0,3})(xc|xl|l?x{0,3})(ix|iv|v?i{0,3})$/.exec(text);
	if (!figures || text === '') return undefined;
	const values: Readonly<Record<string, number>> = { c: 100, l: 50, x: 10, v: 5, i: 1 };
	const signs = [...text].map((sign) => values[sign]!);
	return signs.reduce((sum, value, i) => sum + (value < (signs[i + 1] ?? 0) ? -value : value), 0);
}
