import type { CellPlace } from '../show/cellPlace.ts';
import { listed } from '../values/listed.ts';
import { shownText } from '../values/shownText.ts';
import type { SettingsOfRows } from './settingsOfRows.ts';
import { countOf } from '../values/countOf.ts';

/** What is said after something was imported or given out, or could not be. */
export interface FileReport {
	readonly title: string;
	/** Whether nothing was imported. */
	readonly isProblem: boolean;
	readonly sentences: readonly string[];
	/** Whether it only says that what was asked for is done: nothing was left out, and it need not be closed. */
	readonly isBrief?: boolean;
	/** The first of the imported cells that could not be read; undefined where all could. */
	readonly unread?: CellPlace | undefined;
	/** The change of settings that works the rows out as the file says; undefined where nothing is to be changed. */
	readonly settings?: Readonly<Record<string, unknown>> | undefined;
}

/** What came of a file of rows. */
export interface RowCounts {
	/** Rows in the file. */
	readonly read: number;
	/** Rows that the show did not have. */
	readonly added: number;
	/** Rows that were there, and in which cells of the file were applied. */
	readonly changed: number;
	/** Rows that were there, and that the file no longer has. */
	readonly removed: number;
	/** Rows of the file that the show has not, as it was chosen. */
	readonly leftOut: number;
	/** Rows whose results in the file are not what is worked out here. */
	readonly differing: number;
	/** Results of the file that somebody has typed over: they are not imported. */
	readonly edited: readonly EditedCell[];
	/** The columns of the file that are not known. */
	readonly unknown: readonly string[];
	/** The cells of these rows that could not be read. */
	readonly unread: readonly CellPlace[];
	/** How the settings that the file says differ from the show's; undefined where it says none. */
	readonly settings: SettingsOfRows | undefined;
}

/** A result of a file that somebody has typed over. */
export interface EditedCell {
	/** `window width`. */
	readonly name: string;
	readonly text: string;
	readonly row: { readonly typed: { readonly number?: string; readonly title?: string } };
	/** The place of the row in the file, from 0. */
	readonly place: number;
}

/** What is said of results that somebody has typed over; nothing where there are none. */
export function editedResults(edited: readonly EditedCell[]): string {
	if (edited.length === 0) return '';
	const said = edited.slice(0, mostNames).map(({ name, text, row: { typed }, place }) => {
		const print = [typed.number, typed.title].filter((each) => each !== undefined).join(' ') || `row ${place + 1}`;
		return `result ${name} of ${shownText(print)} (${text === '' ? 'blank' : shownText(text)})`;
	});
	const more = edited.length - said.length;
	const all = more > 0 ? `${said.join(', ')} and ${more} more` : listed(said);
	return `${edited.length === 1 ? 'A result was' : `${edited.length} results were`} typed over in the file: ${all}. Results are worked out and never imported; to set one, type it into its own column.`;
}

const rows = (count: number) => countOf(count, 'row');

/** The most names that are said one by one. */
const mostNames = 6;

/** After a file of rows: how many came, what is to be known about them. */
export function rowsImported(counts: RowCounts, notes: readonly string[]): FileReport {
	const { read, added, changed, removed, leftOut, differing, edited, unknown, unread, settings } = counts;
	const same = Math.max(0, read - added - changed - leftOut);
	const done = [
		added > 0 ? `${rows(added)} added.` : '',
		changed > 0 ? `${rows(changed)} changed as chosen.` : '',
		removed > 0 ? `${rows(removed)} removed.` : '',
		same > 0 ? `${rows(same)} already here, left as ${same === 1 ? 'it is' : 'they are'}.` : '',
	];
	const toRead = [
		leftOut > 0 ? `${rows(leftOut)} of the file ${leftOut === 1 ? 'is' : 'are'} not here, as chosen.` : '',
		read === 0 ? 'The file has column names, but no rows.' : '',
		unread.length > 0 ? `${countOf(unread.length, 'cell')} not understood, kept as typed and marked.` : '',
		unknownColumns(unknown),
		differing > 0
			? `The results of ${rows(differing)} in the file are not what is worked out here${settings ? '.' : ': the file was made with other settings, or changed since.'}`
			: '',
		editedResults(edited),
		settings?.sentence ?? '',
		...notesInWords(notes),
	].filter((sentence) => sentence !== '');
	return {
		title: `${rows(read)} read`,
		isProblem: false,
		isBrief: toRead.length === 0,
		sentences: [...done.filter((sentence) => sentence !== ''), ...toRead],
		unread: unread[0],
		settings: settings?.change,
	};
}

/** The most notes on a file that are said one by one; a page of thousands takes seconds to lay out. */
const mostNotes = 200;

const notesInWords = (notes: readonly string[]): readonly string[] => [
	...notes.slice(0, mostNotes).map(asSentence),
	...(notes.length > mostNotes
		? [
				notes.length - mostNotes === 1
					? 'And 1 more note like these.'
					: `And ${notes.length - mostNotes} more notes like these.`,
			]
		: []),
];

function unknownColumns(names: readonly string[]): string {
	const said = names.slice(0, mostNames).map((name) => `“${shownText(name)}”`);
	const all = names.length > mostNames ? `${said.join(', ')} and ${names.length - mostNames} more` : said.join(', ');
	if (names.length === 0) return '';
	return names.length === 1
		? `Column ${all} is not known; it is left as it is.`
		: `Columns ${all} are not known; they are left as they are.`;
}

/** Where what came would make cuts wrong: it waits for a word. */
export const decideFirst = 'Nothing has changed yet. First decide about the cuts already made.';

/** After rows that would make cuts wrong. */
export const rowsWaiting = (read: number): FileReport => ({
	title: `${rows(read)} read`,
	isProblem: false,
	sentences: [decideFirst],
});

/** After files whose import was not done when another show was opened. @param source `“l.csv”`, `3 files` */
export const leftBehind = (source: string): FileReport => ({
	title: `${source} ${/^\d/.test(source) ? 'were' : 'was'} not imported`,
	isProblem: true,
	sentences: ['Another show was opened before the import was done. Import again into the show that it is for.'],
});

/** After columns that were kept were made columns of ours. */
export const columnsMatched = (changed: number): FileReport => ({
	title: changed === 0 ? 'No columns matched' : 'Columns matched',
	isProblem: false,
	sentences: [
		changed === 0
			? 'Nothing here has changed. What is typed stays, and the kept columns stay beside it.'
			: `${rows(changed)} changed. What was typed stayed. Undo reverses it.`,
	],
});

/** After something was written to a file. @param sentences what there is to know of it */
export const givenOut = (what: string, fileName: string, sentences: readonly string[] = []): FileReport => ({
	title: `${what} written to “${fileName}”`,
	isProblem: false,
	isBrief: sentences.length === 0,
	sentences,
});

/** What is said of a list of rows that leaves: nothing where nobody has bought anything. */
export const buyersLeftOut = (hasBuyers: boolean): readonly string[] =>
	hasBuyers ? ['Buyers are left out. They stay in this show, in its file and in backups.'] : [];

/** What is said of rows with nothing in them, which a list of rows has not: nothing where there are none. */
export const blankLeftOut = (count: number): readonly string[] =>
	count === 0 ? [] : [`${countOf(count, 'blank row')} left out.`];

/** After what was to be given out, and could not be made. */
export const notGivenOut = (what: string, errorName: string): FileReport => ({
	title: `${what} could not be saved`,
	isProblem: true,
	sentences: [
		`No file was made (${errorName}). What is on this device is as it was. Try again, or load the page again.`,
	],
});

/** After what was to be packed with its pictures, and could not be opened again. @param holds what it would hold */
export const notPacked = (what: string, holds: string): FileReport => ({
	title: `${what} could not be saved`,
	isProblem: true,
	sentences: [
		`No file was made. It would hold ${holds}. Save each show as a file of its own, without its pictures where it must be.`,
	],
});

/** After the settings of a file were made those of the show. */
export const settingsApplied: FileReport = {
	title: 'The settings of the file are used',
	isProblem: false,
	isBrief: true,
	sentences: ['Undo brings back those that were here.'],
};

/**
 * After shows of a backup were put back.
 * @param problem why the others were not; undefined where all were
 */
export const restored = (names: readonly string[], problem?: string): FileReport => ({
	title: countOf(names.length, 'show restored', 'shows restored'),
	isProblem: problem !== undefined,
	isBrief: problem === undefined,
	sentences: [
		...(names.length > 0 ? [`In the list of shows: ${names.map((name) => `“${name}”`).join(', ')}.`] : []),
		...(problem === undefined ? [] : ['The others were not.', problem]),
	],
});

/** How many rows, for `givenOut`. */
export const rowsInWords = rows;

/**
 * After a show was opened.
 * @param isInPlace whether there was something, in the place of which it stands now
 */
export const showOpened = (name: string, read: number): FileReport => ({
	title: `“${name}” opened`,
	isProblem: false,
	isBrief: true,
	sentences: [`${countOf(read, 'print')}.`],
});

/**
 * Where nothing could be imported. What is said of the file as a whole needs no place in it.
 * @param source what it came from: the name of a file, or what was pasted
 */
export const notRead = (source: string, problem: string): FileReport => ({
	title: `${source} could not be read`,
	isProblem: true,
	sentences: [asSentence(problem.replace(/^line 1, column 1: (?=the file )/, '')), 'Nothing here has changed.'],
});

/** A remark without its capital and full stop, as a sentence. */
export const asSentence = (text: string): string => {
	const sentence = text.charAt(0).toUpperCase() + text.slice(1);
	return /[.?!]$/.test(sentence) ? sentence : `${sentence}.`;
};
