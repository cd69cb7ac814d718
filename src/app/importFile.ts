import { guessHeightFirst } from '../core/imports/guessHeightFirst.ts';
import { guessByContents } from '../core/imports/guessByContents.ts';
import type { ColumnMatching } from '../core/imports/columnMatching.ts';
import { isSameValue } from '../core/values/isSameValue.ts';
import { type FileReport, notRead, rowsImported, rowsWaiting, showOpened } from '../core/imports/fileReports.ts';
import { countPrints } from '../core/show/blankRow.ts';
import type { CellPlace } from '../core/show/cellPlace.ts';
import { isColumnName } from '../core/show/columns.ts';
import { difference, isEmpty } from '../core/show/edit.ts';
import { replaceShow } from '../core/commands/replaceShow.ts';
import { readSettings } from '../core/settings/readSettings.ts';
import { newShow } from '../core/show/newShow.ts';
import type { Row } from '../core/show/row.ts';
import { questionFirst } from '../core/imports/saidOfFiles.ts';
import { settingsOfRows } from '../core/imports/settingsOfRows.ts';
import type { Show } from '../core/show/show.ts';
import type { BackedUpShow } from '../files/backupFile.ts';
import { resultsOfFile } from './resultsOfFile.ts';
import { makeId } from '../files/makeId.ts';
import { type ColumnsOfFile, readColumns } from '../files/readColumns.ts';
import { readShowFile } from '../files/showFile.ts';
import example from '../../shared/samples/example.evenhang.json?raw';
import type { Step } from './history.svelte.ts';
import {
	type Incoming,
	type IncomingList,
	nameOfFile,
	nameOfPasted,
	openFile,
	openPasted,
	type Origin,
} from './incoming.ts';
import type { PicturesRead } from './importPictures.ts';
import { MergeReview } from './mergeReview.svelte.ts';
import { prepareRows } from './prepareRows.ts';
import type { Session } from './session.svelte.ts';

/** Where the meanings of columns are remembered, by the headers that stand together. */
export interface MatchingMemory {
	matching(headers: string): Promise<ColumnMatching | undefined>;
	keepMatching(headers: string, matching: ColumnMatching): Promise<void>;
}

/** How a file is imported. */
export interface ImportOptions {
	readonly memory?: MatchingMemory | undefined;
	/** What a person has just said that the columns mean. */
	readonly matching?: ColumnMatching | undefined;
	readonly signal?: AbortSignal | undefined;
	/** Told how many rows are read or worked out, or pictures unpacked, of how many. */
	readonly onProgress?:
		| ((doing: 'reading' | 'unpacking' | 'working out', done: number, of: number) => void)
		| undefined;
}

/** What comes of something that came in: there is a report, or something has to be asked first, with nothing changed so far. */
export type ImportOutcome =
	| { readonly kind: 'reported'; readonly report: FileReport; readonly step?: Step | undefined }
	| {
			readonly kind: 'columns';
			readonly incoming: IncomingList;
			readonly columns: ColumnsOfFile;
			/** What was said of them before, where they are asked about again. */
			readonly said?: ColumnMatching;
	  }
	| { readonly kind: 'review'; readonly review: MergeReview }
	| { readonly kind: 'pictures'; readonly pictures: PicturesRead }
	| { readonly kind: 'show'; readonly incoming: Origin; readonly show: Omit<Show, 'id'> }
	| { readonly kind: 'backup'; readonly incoming: Origin; readonly shows: readonly BackedUpShow[] };

const reported = (report: FileReport, step?: Step): ImportOutcome => ({ kind: 'reported', report, step });

/** Imports a file into the session; see `importIncoming`. */
export async function importFile(session: Session, file: File, options?: ImportOptions): Promise<ImportOutcome> {
	const incoming = await openFile(file, options?.signal);
	return 'problem' in incoming
		? reported(notRead(nameOfFile(file), incoming.problem))
		: importIncoming(session, incoming.value, options);
}

/** Imports pasted text into the session; see `importIncoming`. */
export async function importText(session: Session, text: string, options?: ImportOptions): Promise<ImportOutcome> {
	const incoming = await openPasted(text, options?.signal);
	return 'problem' in incoming
		? reported(notRead(nameOfPasted, incoming.problem))
		: importIncoming(session, incoming.value, options);
}

/**
 * Imports what came: rows that only add to the show at once, as one edit; a show at once where nothing was typed yet.
 * Everything else is asked first. What cannot be read changes nothing.
 */
export async function importIncoming(
	session: Session,
	incoming: Incoming,
	options: ImportOptions = {},
): Promise<ImportOutcome> {
	const { opened, ...origin } = incoming;
	if (opened.kind === 'list') return importList(session, { ...origin, opened }, options);
	if (opened.kind !== 'show' || !isUntouched(session.show)) return { ...opened, incoming: origin };
	return reported(await replaceUntouched(session, opened.show, origin));
}

/** The example show, as its file has it. */
export function exampleShow(): Omit<Show, 'id'> {
	const show = readShowFile(example);
	if ('problem' in show) throw new Error(show.problem);
	return show.value;
}

/** Puts the example show in the place of one in which nothing was typed, as one edit. */
export function loadExample(session: Session): FileReport {
	const show = exampleShow();
	session.do((here) => replaceShow(here, show, session.makeId, 'Load the example'));
	return showOpened(show.name, countPrints(show.rows));
}

/** Puts a show of a file in the place of the one that is open, in which nothing was typed. */
async function replaceUntouched(
	session: Session,
	show: Omit<Show, 'id'>,
	{ fileName, source }: Origin,
): Promise<FileReport> {
	session.do((here) => replaceShow(here, show, session.makeId, `Open ${source}`));
	await keepImported(session, fileName);
	return showOpened(show.name, countPrints(show.rows));
}

/** Keeps that the show is now as a file has it. */
export async function keepImported(session: Session, fileName: string): Promise<void> {
	const { show, settings } = session;
	const mark = session.copies.mark();
	const at = Date.now();
	const exchange = { id: makeId(), direction: 'taken', fileName, at, unit: settings.unit, rows: show.rows } as const;
	await session.exchanges.keep(exchange, true).catch(() => undefined);
	await session.copies.note(mark, at);
}

/** Whether a show is as a new one is, but for its unit: nothing is lost if another takes its place. */
export const isUntouched = (show: Session['show']): boolean =>
	isEmpty(difference(newShow(show.id, readSettings(show.settings).settings.unit), show, ''));

async function importList(session: Session, incoming: IncomingList, options: ImportOptions): Promise<ImportOutcome> {
	const { list } = incoming.opened;
	let { matching } = options;
	if (matching === undefined) {
		const byContents = guessByContents(session.show.rows);
		const isHeightFirst = guessHeightFirst(session.show.rows);
		const columns = readColumns(list.beginning.text, undefined, byContents, isHeightFirst);
		if (columns?.isInDoubt) {
			matching = await options.memory?.matching(columns.key).catch(() => undefined);
			// What is under the same headers may leave more in doubt than what was under them before.
			const still =
				matching === undefined ? columns : readColumns(list.beginning.text, matching, byContents, isHeightFirst);
			if (still?.isInDoubt) return { kind: 'columns', incoming, columns };
		}
	}
	const { unit, sizes } = session.settings;
	const { signal = new AbortController().signal, onProgress } = options;
	const read = await list.read({ settings: { unit, sizes }, matching }, signal, (done, of) => {
		onProgress?.('reading', done, of);
	});
	const { opened: _, ...origin } = incoming;
	if ('problem' in read) return reported(notRead(origin.source, read.problem));
	const texts = read.results.map((cells) => cells.find(({ name }) => name === 'result settings')?.text ?? '');
	const settings = settingsOfRows(texts, session.show.settings);
	return compareWith(session, { ...origin, read, settings, list: incoming }, options);
}

/**
 * Asks again what the columns of a list hold, whatever was said before.
 * @returns undefined where there is nothing to be said: all its columns have our own names
 */
export async function askAgain(
	{ show }: Pick<Session, 'show'>,
	incoming: IncomingList,
	memory?: MatchingMemory,
): Promise<ImportOutcome | undefined> {
	const { text } = incoming.opened.list.beginning;
	const columns = readColumns(text, undefined, guessByContents(show.rows), guessHeightFirst(show.rows));
	if (columns === undefined) return undefined;
	const said = (await memory?.matching(columns.key).catch(() => undefined)) ?? {};
	return { kind: 'columns', incoming, columns, said };
}

/** Whether a list has columns of which one might say more, or something else. */
export function mayBeMatched({ opened }: IncomingList): boolean {
	const columns = readColumns(opened.list.beginning.text)?.columns ?? [];
	return columns.some(({ guesses, meaning }) => guesses.length > 0 || meaning === 'none');
}

/** Compares rows with the show: those that only add to it come in at once. */
export async function compareWith(
	session: Session,
	file: MergeReview['file'],
	options: ImportOptions = {},
): Promise<ImportOutcome> {
	await session.whenSaved().catch(() => undefined); // an edit before this one may name what it was exchanged as
	const exchanges = await session.exchanges.all().catch(() => []);
	const review = new MergeReview(session, file, exchanges);
	return review.isToBeSeen ? { kind: 'review', review } : importReviewed(session, review, options);
}

/** Imports a file as it was chosen, as one edit. */
export async function importReviewed(
	session: Session,
	review: MergeReview,
	options: ImportOptions = {},
): Promise<ImportOutcome> {
	const { read, settings } = review.file;
	const { signal } = session;
	review.refresh();
	const edit = review.edit();
	const rows = edit.rows.flatMap(({ after }) => after ?? []);
	const onProgress = (done: number) => options.onProgress?.('working out', done, rows.length);
	await prepareRows(session, rows, options.signal, onProgress);
	if (session.question) return reported(notRead(review.file.source, questionFirst));
	const before = session.show;
	const step = await review.import(edit, options.signal);
	signal.throwIfAborted();
	if (step === undefined && !isEmpty(edit)) return reported(rowsWaiting(read.rows.length));
	const known = new Map(before.rows.map((row) => [row.id, row]));
	const isImported = (row: Row) => known.get(row.id) !== row;
	const after = session.show.rows;
	const isThere = new Set(after.map(({ id }) => id));
	const { fileRows } = review.merge;
	const counts = {
		read: read.rows.length,
		added: after.filter(({ id }) => !known.has(id)).length,
		changed: after.filter((row) => known.has(row.id) && isImported(row) && !isOnlyMoved(row, known.get(row.id)!))
			.length,
		removed: before.rows.filter(({ id }) => !isThere.has(id)).length,
		leftOut: fileRows.filter(({ id }) => !isThere.has(id)).length,
		...resultsOfFile(session, review),
		unknown: read.unknown,
		unread: unreadCells(session, isImported),
		settings,
	};
	return reported(rowsImported(counts, read.notes), step);
}

const isOnlyMoved = (row: Row, before: Row): boolean => isSameValue({ ...row, order: 0 }, { ...before, order: 0 });

/** The cells that could not be read, in the rows that came in. */
const unreadCells = ({ show, results }: Session, isImported: (row: Row) => boolean): readonly CellPlace[] =>
	show.rows.flatMap((row, index): CellPlace[] => {
		const unread = isImported(row) ? results[index]!.findings.filter(({ code }) => code === 'not-read') : [];
		return unread.flatMap(({ cells: [column = ''] }) => (isColumnName(column) ? [{ id: row.id, column }] : []));
	});
