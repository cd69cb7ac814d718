import type { ColumnMatching } from '../core/show/columnMatching.ts';
import { isSameValue } from '../core/show/isSameValue.ts';
import { notTakenIn, rowsTakenIn, rowsWaiting, showTakenIn, type TakenIn } from '../core/show/takenIn.ts';
import type { CellPlace } from '../core/show/cellPlace.ts';
import { isColumnName } from '../core/show/columns.ts';
import { difference, isEmpty } from '../core/show/edit.ts';
import { replaceShow } from '../core/show/replaceShow.ts';
import { newShow } from '../core/show/newShow.ts';
import type { Row } from '../core/show/row.ts';
import { questionFirst } from '../core/show/saidOfFiles.ts';
import { settingsOfRows } from '../core/show/settingsOfRows.ts';
import type { Show } from '../core/show/show.ts';
import { judgeRow } from '../core/findings/judgeRow.ts';
import { type BackedUpShow, isBackup, readBackup } from '../files/backupFile.ts';
import { compareResults, readRows, type RowsOfFile } from '../files/csv.ts';
import { decodeText } from '../files/decodeText.ts';
import { tooLarge } from '../files/kindOfFile.ts';
import { makeId } from '../files/makeId.ts';
import { type ColumnsOfFile, readColumns } from '../files/readColumns.ts';
import { isShowFileText, readDocument, readShowFile } from '../files/showFile.ts';
import example from '../../shared/samples/example.evenhang.json?raw';
import { readInWorker } from '../workers/readInWorker.ts';
import type { Step } from './history.svelte.ts';
import { MergeReview } from './mergeReview.svelte.ts';
import type { Session } from './session.svelte.ts';

/** Where the meanings of columns are remembered, by the headers that stand together. */
export interface MatchingMemory {
	matching(headers: string): Promise<ColumnMatching | undefined>;
	keepMatching(headers: string, matching: ColumnMatching): Promise<void>;
}

/** How a file is taken in. */
export interface TakeOptions {
	readonly memory?: MatchingMemory | undefined;
	/** What a person has just said that the columns mean. */
	readonly matching?: ColumnMatching | undefined;
	readonly signal?: AbortSignal | undefined;
	/** Told how many rows are read or worked out, of how many. */
	readonly onProgress?: ((doing: 'reading' | 'working out', done: number, of: number) => void) | undefined;
}

/** Something that came in: a file's bytes, or a text. */
export interface Incoming {
	readonly content: Uint8Array<ArrayBuffer> | string;
	readonly fileName: string;
	/** How it is named in sentences. */
	readonly source: string;
	/** What taking its rows in is called in undo. */
	readonly label: string;
}

/** What comes of something that came in: it is told, or something has to be asked first, with nothing changed so far. */
export type Taken =
	| { readonly kind: 'told'; readonly report: TakenIn; readonly step?: Step | undefined }
	| {
			readonly kind: 'columns';
			readonly incoming: Incoming;
			readonly columns: ColumnsOfFile;
			/** What was said of them before, where they are asked about again. */
			readonly said?: ColumnMatching;
	  }
	| { readonly kind: 'review'; readonly review: MergeReview }
	| { readonly kind: 'show'; readonly incoming: Incoming; readonly show: Omit<Show, 'id'> }
	| { readonly kind: 'backup'; readonly incoming: Incoming; readonly shows: readonly BackedUpShow[] };

const told = (report: TakenIn, step?: Step): Taken => ({ kind: 'told', report, step });

/** A file that came in. @returns a sentence where the device does not give it to read */
export async function incomingFile(file: File): Promise<Incoming | { readonly report: TakenIn }> {
	const source = `“${file.name}”`;
	const problem = tooLarge(file.size);
	if (problem !== undefined) return { report: notTakenIn(source, problem) };
	try {
		const content = new Uint8Array(await file.arrayBuffer());
		return { content, fileName: file.name, source, label: `Import ${source}` };
	} catch (cause) {
		return {
			report: notTakenIn(source, `this device does not give the file to read (${(cause as Error).name})`),
		};
	}
}

/** A text that was pasted. */
export const incomingText = (content: string): Incoming => ({
	content,
	fileName: '',
	source: 'What was pasted',
	label: 'Paste rows',
});

/** Takes a file into the session; see `take`. */
export async function takeFile(session: Session, file: File, options?: TakeOptions): Promise<Taken> {
	const incoming = await incomingFile(file);
	return 'report' in incoming ? told(incoming.report) : take(session, incoming, options);
}

/** Takes pasted text into the session; see `take`. */
export const takeText = (session: Session, text: string, options?: TakeOptions): Promise<Taken> =>
	take(session, incomingText(text), options);

/**
 * Takes in what came: rows that only add to the show at once, as one edit; a show at once where nothing was typed yet.
 * Everything else is asked first. What cannot be read changes nothing.
 */
export async function take(session: Session, incoming: Incoming, options: TakeOptions = {}): Promise<Taken> {
	const { content, source } = incoming;
	const text = typeof content === 'string' ? { value: content } : decodeText(content);
	if (!('value' in text) || !isShowFileText(text.value)) return takeRows(session, incoming, options);
	const document = readDocument(text.value);
	if ('value' in document && isBackup(document.value)) {
		const shows = readBackup(text.value);
		return 'problem' in shows
			? told(notTakenIn(source, shows.problem))
			: { kind: 'backup', incoming, shows: shows.value };
	}
	const show = readShowFile(text.value);
	if ('problem' in show) return told(notTakenIn(source, show.problem));
	if (isUntouched(session.show)) return told(await takeShow(session, show.value, incoming));
	return { kind: 'show', incoming, show: show.value };
}

/** Puts the example show in the place of the one that is there, as one edit. */
export function takeExample(session: Session): TakenIn {
	const show = readShowFile(example);
	if ('problem' in show) throw new Error(show.problem);
	const before = session.show;
	session.do((here) => replaceShow(here, show.value, session.makeId, 'Load the example'));
	return showTakenIn(show.value.name, show.value.rows.length, !isUntouched(before));
}

/** Puts a show of a file in the place of the one that is open, in which nothing was typed. */
async function takeShow(session: Session, show: Omit<Show, 'id'>, { fileName, source }: Incoming): Promise<TakenIn> {
	session.do((here) => replaceShow(here, show, session.makeId, `Open ${source}`));
	await keepTaken(session, fileName);
	return showTakenIn(show.name, show.rows.length, false);
}

/** Keeps that the show is now as a file has it. */
export async function keepTaken(session: Session, fileName: string): Promise<void> {
	const { show, settings } = session;
	const mark = session.copies.mark();
	const at = Date.now();
	const exchange = { id: makeId(), direction: 'taken', fileName, at, unit: settings.unit, rows: show.rows } as const;
	await session.exchanges.keep(exchange, true).catch(() => undefined);
	await session.copies.note(mark, 'show', at);
}

/** Whether a show is as a new one is: nothing is lost if another takes its place. */
export const isUntouched = (show: Session['show']): boolean => isEmpty(difference(newShow(show.id), show, ''));

/** From this size on a file is read beside the page, which goes on answering. */
const largeFile = 300_000;

async function takeRows(session: Session, incoming: Incoming, options: TakeOptions): Promise<Taken> {
	const { content, source } = incoming;
	let { matching } = options;
	if (matching === undefined) {
		const columns = readColumns(content);
		if (columns?.isInDoubt) {
			matching = await options.memory?.matching(columns.key).catch(() => undefined);
			// What is under the same headers may leave more in doubt than what was under them before.
			const still = matching === undefined ? columns : readColumns(content, matching);
			if (still?.isInDoubt) return { kind: 'columns', incoming, columns };
		}
	}
	const read = await readAll(session, content, matching, options);
	if ('problem' in read) return told(notTakenIn(source, read.problem));
	const texts = read.results.map((cells) => cells.find(({ name }) => name === 'result settings')?.text ?? '');
	return compareWith(session, { ...incoming, read, settings: settingsOfRows(texts, session.show.settings) }, options);
}

/**
 * Asks again what the columns of something that came in hold, whatever was said before.
 * @returns undefined where there is nothing to be said: it is no list, or all its columns have our own names
 */
export async function askAgain({ content, ...more }: Incoming, memory?: MatchingMemory): Promise<Taken | undefined> {
	const columns = mayBeMatched(content) ? readColumns(content) : undefined;
	if (columns === undefined) return undefined;
	const said = (await memory?.matching(columns.key).catch(() => undefined)) ?? {};
	return { kind: 'columns', incoming: { content, ...more }, columns, said };
}

/** Whether something that came in has columns of which one might say more, or something else. */
export function mayBeMatched(content: Incoming['content']): boolean {
	const text = typeof content === 'string' ? { value: content } : decodeText(content);
	if (!('value' in text) || isShowFileText(text.value)) return false;
	const columns = readColumns(content)?.columns ?? [];
	return columns.some(({ guesses, meaning }) => guesses.length > 0 || meaning === 'none');
}

/** Compares rows with the show: those that only add to it are taken at once. */
export async function compareWith(
	session: Session,
	file: MergeReview['file'],
	options: TakeOptions = {},
): Promise<Taken> {
	const exchanges = await session.exchanges.all().catch(() => []);
	const review = new MergeReview(session, file, exchanges);
	return review.isToBeSeen ? { kind: 'review', review } : takeReviewed(session, review, options);
}

function readAll(
	{ settings: { unit, sizes } }: Session,
	content: Uint8Array<ArrayBuffer> | string,
	matching: ColumnMatching | undefined,
	{ signal = new AbortController().signal, onProgress }: TakeOptions,
): Promise<RowsOfFile | { readonly problem: string }> {
	if (content.length < largeFile || typeof Worker === 'undefined')
		return Promise.resolve(readRows(content, { unit, sizes }, makeId, { matching }));
	const job = { file: content, settings: { unit, sizes }, matching };
	return readInWorker(job, signal, (done, of) => onProgress?.('reading', done, of));
}

/** Takes a file in as it was chosen, as one edit. */
export async function takeReviewed(session: Session, review: MergeReview, options: TakeOptions = {}): Promise<Taken> {
	const { read, settings } = review.file;
	const { signal } = session;
	review.refresh();
	const edit = review.edit();
	const rows = edit.rows.flatMap(({ after }) => after ?? []);
	const onProgress = (done: number) => options.onProgress?.('working out', done, rows.length);
	await session.prepare(rows, options.signal, onProgress);
	if (session.question) return told(notTakenIn(review.file.source, questionFirst));
	const before = session.show;
	const step = await review.take(edit);
	signal.throwIfAborted();
	if (step === undefined && !isEmpty(edit)) return told(rowsWaiting(read.rows.length));
	const known = new Map(before.rows.map((row) => [row.id, row]));
	const isTaken = (row: Row) => known.get(row.id) !== row;
	const after = session.show.rows;
	const isThere = new Set(after.map(({ id }) => id));
	const { fileRows } = review.merge;
	const counts = {
		read: read.rows.length,
		added: after.filter(({ id }) => !known.has(id)).length,
		changed: after.filter((row) => known.has(row.id) && isTaken(row) && !isOnlyMoved(row, known.get(row.id)!)).length,
		removed: before.rows.filter(({ id }) => !isThere.has(id)).length,
		leftOut: fileRows.filter(({ id }) => !isThere.has(id)).length,
		differing: countDiffering(session, read),
		unknown: read.unknown,
		unread: unreadCells(session, isTaken),
		settings,
	};
	return told(rowsTakenIn(counts, read.notes), step);
}

const isOnlyMoved = (row: Row, before: Row): boolean => isSameValue({ ...row, order: 0 }, { ...before, order: 0 });

/** The cells that could not be read, in the rows that were taken in. */
const unreadCells = ({ show, results }: Session, isTaken: (row: Row) => boolean): readonly CellPlace[] =>
	show.rows.flatMap((row, index): CellPlace[] => {
		const unread = isTaken(row) ? results[index]!.findings.filter(({ code }) => code === 'not-read') : [];
		return unread.flatMap(({ cells: [column = ''] }) => (isColumnName(column) ? [{ id: row.id, column }] : []));
	});

/** Counts the rows whose results in the file are not what is worked out here; only those that came with some. */
function countDiffering({ show, results, settings }: Session, { rows, results: fromFile }: RowsOfFile): number {
	const places = new Map(show.rows.map(({ id }, place) => [id, place]));
	const compared = rows.flatMap((row, index) => {
		const cells = fromFile[index] ?? [];
		if (cells.every(({ text }) => text.trim() === '')) return [];
		const here = show.rows[places.get(row.id) ?? -1];
		const isKnown = here && isSameValue([here.typed, here.units], [row.typed, row.units]);
		return [{ cells, result: isKnown ? results[places.get(row.id)!]! : judgeRow(row, settings) }];
	});
	return compareResults(
		compared.map(({ cells }) => cells),
		compared.map(({ result }) => result),
		settings.unit,
	);
}
