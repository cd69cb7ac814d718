/** A show that was put back from its second copy. */
export interface ShowPutBack {
	readonly id: string;
	readonly name: string;
	/** When the copy was made, in milliseconds since 1970. */
	readonly at: number;
}

/** A show that is gone. */
export interface ShowGone {
	readonly id: string;
	readonly name: string;
	readonly prints: number;
	/** When a file of it was last saved, in milliseconds since 1970; undefined where none was. */
	readonly copiedAt?: number;
	/** Whether there is a second copy of it, from which it could not be put back yet. */
	readonly isCopied?: boolean;
}

/** What the browser has lost of what was kept on this device, and what of it was put back. */
export interface LostReport {
	readonly putBack: readonly ShowPutBack[];
	readonly gone: readonly ShowGone[];
}

/** How many shows are named before the rest is counted. */
const mostNamed = 5;

function listed<Item>(all: readonly Item[], words: (item: Item) => string): readonly string[] {
	const rest = all.length - mostNamed;
	return [...all.slice(0, mostNamed).map(words), ...(rest > 0 ? [`${rest} more`] : [])].map((line) => `${line}.`);
}

const nameOf = (name: string): string => (name.trim() === '' ? 'Unnamed show' : name);

/** How times are written, in milliseconds since 1970. */
export interface TimeWords {
	readonly day: (at: number) => string;
	readonly moment: (at: number) => string;
}

/** What is said of shows that have fared alike. */
export interface LostGroup {
	readonly title: string;
	/** One for each show. */
	readonly lines: readonly string[];
}

/** What is said of shows that the browser has lost. */
export interface LostWords {
	/** The most telling first; none is empty. */
	readonly groups: readonly LostGroup[];
	/** What has happened and what to know of it, for who asks. */
	readonly more: readonly string[];
}

const shows = (count: number, then: string) => (count === 1 ? `1 show is ${then}` : `${count} shows are ${then}`);

/** What is said of shows that the browser has lost. */
export function lostWords({ putBack, gone }: LostReport, { day, moment }: TimeWords): LostWords {
	const waiting = gone.filter(({ isCopied }) => isCopied);
	const missing = gone.filter(({ isCopied }) => !isCopied);
	const goneWords = ({ name, prints, copiedAt, isCopied }: ShowGone) =>
		`${nameOf(name)}, ${prints === 1 ? '1 print' : `${prints} prints`}, ${copiedAt !== undefined ? `backed up ${day(copiedAt)}` : isCopied ? 'never backed up' : 'in no backup'}`;
	return {
		groups: [
			{ title: shows(missing.length, 'missing from this device'), lines: listed(missing, goneWords) },
			{
				title: shows(waiting.length, 'not restored yet'),
				lines: listed(waiting, (show) => `${goneWords(show)}. Free some space on this device, then reload this page`),
			},
			{
				title: shows(putBack.length, 'restored'),
				lines: listed(
					putBack,
					({ name, at }) => `${nameOf(name)} was restored as of ${moment(at)}. Pictures may be missing`,
				),
			},
		].filter(({ lines }) => lines.length > 0),
		more: [
			'The browser lost what was stored on this device.',
			...(missing.length > 0 ? ['If a show is still open in another tab, back it up there first.'] : []),
			...(waiting.length > 0 ? ['There is a second copy, but the browser could not save it.'] : []),
			...(putBack.length > 0
				? ['Restored from a second copy, without pictures, undo steps and half-cut sheet plans. Back up all shows.']
				: []),
		],
	};
}
