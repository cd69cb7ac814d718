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

function listed<Item>(all: readonly Item[], words: (item: Item) => string): string {
	const named = all.slice(0, mostNamed).map(words);
	const rest = all.length - named.length;
	return [...named, ...(rest > 0 ? [`${rest} more`] : [])].join('; ');
}

const nameOf = (name: string): string => (name.trim() === '' ? 'Unnamed show' : `“${name}”`);

/** How times are written, in milliseconds since 1970. */
export interface TimeWords {
	readonly day: (at: number) => string;
	readonly moment: (at: number) => string;
}

function goneWords({ name, prints, copiedAt }: ShowGone, { day }: TimeWords): string {
	const saved = copiedAt === undefined ? 'never backed up' : `last file saved ${day(copiedAt)}`;
	return `${nameOf(name)} (${prints === 1 ? '1 print' : `${prints} prints`}, ${saved})`;
}

/** What is said of shows that the browser has lost, the most telling first. */
export function lostSentences({ putBack, gone }: LostReport, time: TimeWords): readonly string[] {
	const waiting = gone.filter(({ isCopied }) => isCopied);
	const missing = gone.filter(({ isCopied }) => !isCopied);
	return [
		'The browser lost what was stored on this device.',
		...(missing.length === 0
			? []
			: [
					`Missing: ${listed(missing, (show) => goneWords(show, time))}.`,
					'Open your last backup. If a show is still open in another tab, save it there as a file first.',
				]),
		...(waiting.length === 0
			? []
			: [
					`Not put back yet: ${listed(waiting, (show) => goneWords(show, time))}.`,
					'There is a second copy, but the browser could not save it. Free some space on this device, then reload this page.',
				]),
		...(putBack.length === 0
			? []
			: [
					`Put back from a second copy: ${listed(putBack, ({ name, at }) => `${nameOf(name)} as of ${time.moment(at)}`)}.`,
					'Check what you did last. Pictures, undo steps and half-cut sheet plans are not in the copy. Save a backup now.',
				]),
	];
}
