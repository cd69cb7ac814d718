/** What is said after something was taken in from outside, or could not be. */
export interface TakenIn {
	readonly title: string;
	/** Whether nothing was taken in. */
	readonly isProblem: boolean;
	readonly sentences: readonly string[];
}

/** What came of a file of rows. */
export interface RowCounts {
	/** Rows in the file. */
	readonly read: number;
	/** Rows that the show did not have. */
	readonly added: number;
	/** Rows that were there, and are now as the file has them. */
	readonly replaced: number;
	/** Rows whose results in the file are not what is worked out here. */
	readonly differing: number;
}

const rows = (count: number) => (count === 1 ? '1 row' : `${count} rows`);

/** After a file of rows: how many came, what is to be known about them. */
export function rowsTakenIn({ read, added, replaced, differing }: RowCounts, notes: readonly string[]): TakenIn {
	const same = read - added - replaced;
	const sentences = [
		added > 0 ? `${rows(added)} added at the end.` : '',
		replaced > 0 ? `${rows(replaced)} put in the place of the same print.` : '',
		same > 0 ? `${rows(same)} already here, the same.` : '',
		read === 0 ? 'The file has column names, but no rows.' : '',
		differing > 0
			? `The results of ${rows(differing)} in the file are not what is worked out here: the file was made with other settings, or changed since.`
			: '',
	];
	return {
		title: `${rows(read)} read`,
		isProblem: false,
		sentences: [...sentences.filter((sentence) => sentence !== ''), ...notes.map(asSentence)],
	};
}

/** After a show was opened in the place of the one that was there. */
export const showTakenIn = (name: string, read: number): TakenIn => ({
	title: `“${name}” opened`,
	isProblem: false,
	sentences: [`${rows(read)}, in the place of the show that was here. Undo brings that one back.`],
});

/**
 * Where nothing could be taken in.
 * @param source what it came from: the name of a file, or what was pasted
 */
export const notTakenIn = (source: string, problem: string): TakenIn => ({
	title: `${source} could not be read`,
	isProblem: true,
	sentences: [asSentence(problem), 'Nothing here has changed.'],
});

const asSentence = (text: string): string => {
	const sentence = text.charAt(0).toUpperCase() + text.slice(1);
	return /[.?!]$/.test(sentence) ? sentence : `${sentence}.`;
};
