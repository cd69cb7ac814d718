import { catalogueOf } from '../core/lists/catalogue.ts';
import { recordOf } from '../core/lists/recordOf.ts';
import { packPrints } from '../core/packing/packPrints.ts';
import { nameOfPrint } from '../core/show/nameOfPrint.ts';
import { hangingList } from '../core/walls/hangingList.ts';
import { writeCatalogue } from '../files/catalogueCsv.ts';
import { writeHangingList } from '../files/hangingCsv.ts';
import { writePackingList } from '../files/packingCsv.ts';
import { type FileReport, givenOut, notGivenOut, notPacked } from '../core/imports/fileReports.ts';
import type { ToGet } from '../core/order/whatToGet.ts';
import type { ToPrint } from '../core/order/whatToPrint.ts';
import type { RegisteredTitle } from '../core/record/editionRegister.ts';
import type { Sales } from '../core/record/sales.ts';
import type { Row } from '../core/show/row.ts';
import type { BoardToCut } from '../core/sheets/cutList.ts';
import type { NameOfBlank } from '../core/sheets/layout.ts';
import { writeCutList } from '../files/cutListCsv.ts';
import { writeToGet } from '../files/getCsv.ts';
import { writeEditions } from '../files/editionsCsv.ts';
import { writePrintList } from '../files/printListCsv.ts';
import { writeSales } from '../files/salesCsv.ts';
import { writingBackup } from '../files/backupFile.ts';
import { writingRows } from '../files/csv.ts';
import { saysBuyer } from '../files/headers.ts';
import { makeId } from '../files/makeId.ts';
import { writePutAside } from '../files/putAsideFile.ts';
import { writingShowFile } from '../files/showFile.ts';
import type { CopyMark } from './copyCount.svelte.ts';
import { download } from './download.ts';
import { packedFile, type Packing, picturesOfRows, TooMuchToPack } from './packedFile.ts';
import { writtenInSlices } from './inSlices.ts';
import type { Pictures } from './pictures.svelte.ts';
import type { Session } from './session.svelte.ts';
import { copyAll } from './copyOfAll.ts';
import type { Shelf } from './shelf.svelte.ts';

/** How a file leaves: saved where the person wants, or handed to another app of the device. */
export type Way = 'save' | 'share';

/** Whether this device can hand files to other apps. */
export const canShare = (): boolean =>
	typeof navigator !== 'undefined' &&
	typeof navigator.canShare === 'function' &&
	navigator.canShare({ files: [new File([''], 'rows.csv', { type: 'text/csv' })] });

/** What a list of rows is for: to be read here or by other programs, or to be opened in a spreadsheet with a double click. */
export type ListFor = 'any program' | 'spreadsheet';

/**
 * Hands out the rows as CSV, with everything that is worked out from them.
 * @returns the name of the file; undefined where the person has put it off
 */
export async function giveRows(
	session: Session,
	way: Way = 'save',
	listFor: ListFor = 'any program',
): Promise<string | undefined> {
	if (!session.isJudged || !session.isWorkedOut) await session.whenJudged;
	const { show, results, bench, settings } = session;
	const mark = session.copies.mark();
	const isForSpreadsheet = listFor === 'spreadsheet';
	const options = { hasIds: true, isForSpreadsheet, delimiter: isForSpreadsheet ? delimiterHere() : ',' } as const;
	session.costs.now();
	const costOf = (row: Row) => session.costs.costOf(row);
	const written = writingRows({ rows: show.rows, results, bench, settings, costOf }, options);
	const text = await writtenInSlices(written, session.signal).catch(andForget(() => session.copies.forget(mark)));
	const given = await handOut([new File([text], fileName(show.name, 'csv'), { type: 'text/csv' })], way);
	await noteGiven(session, mark, show.rows, given, false);
	return given;
}

/** What a spreadsheet of this device expects between cells: a semicolon where the comma is that of a decimal. */
const delimiterHere = (): ',' | ';' => (new Intl.NumberFormat().format(1.5).includes(',') ? ';' : ',');

/** Hands out what is to be got as CSV: no copy of the show. @returns the name of the file */
export async function giveToGet(session: Session, toGet: ToGet): Promise<string | undefined> {
	const { show, settings } = session;
	const text = writeToGet(toGet, settings, (place) => nameOfPrint(show.rows[place]!, place));
	return handOut([new File([text], fileName(`${show.name} to get`, 'csv'), { type: 'text/csv' })], 'save');
}

/** Hands out the print list as CSV: no copy of the show. @returns the name of the file */
export async function givePrintList(session: Session, toPrint: ToPrint): Promise<string | undefined> {
	const { show, results, settings } = session;
	const text = writePrintList(toPrint, { rows: show.rows, results, settings });
	return handOut([new File([text], fileName(`${show.name} pictures to print`, 'csv'), { type: 'text/csv' })], 'save');
}

/** Hands out what is to be cut, by size, as CSV: no copy of the show. @returns the name of the file */
export async function giveCutList(
	session: Session,
	boards: readonly BoardToCut[],
	nameOf: NameOfBlank,
): Promise<string | undefined> {
	const { show, settings } = session;
	const text = writeCutList(boards, settings.unit, nameOf);
	return handOut([new File([text], fileName(`${show.name} cut list`, 'csv'), { type: 'text/csv' })], 'save');
}

/** Hands out the hanging list as CSV: no copy of the show. @returns the name of the file */
export async function giveHangingList(session: Session): Promise<string | undefined> {
	const { show, results, settings } = session;
	const nameOf = (place: number) => nameOfPrint(show.rows[place]!, place);
	const text = writeHangingList(hangingList(results, settings), settings, nameOf);
	return handOut([new File([text], fileName(`${show.name} hanging list`, 'csv'), { type: 'text/csv' })], 'save');
}

/** Hands out the catalogue as CSV: no copy of the show. @returns the name of the file */
export async function giveCatalogue(session: Session): Promise<string | undefined> {
	const { show, results, settings } = session;
	const { rows } = show;
	const hasPrices = settings.catalogue.prices === 'shown';
	session.costs.now();
	const record = recordOf({ rows, results, settings, costOf: (row) => session.costs.costOfRow(row) });
	const lines = catalogueOf({ rows, results, ...record }, { hasPrices });
	const text = writeCatalogue(lines, settings, { hasPrices });
	return handOut([new File([text], fileName(`${show.name} catalogue`, 'csv'), { type: 'text/csv' })], 'save');
}

/** Whether rows say who bought a print, in the cell for it or in a column of others. */
export const namesBuyers = (rows: readonly Row[]): boolean =>
	rows.some(({ typed, extra }) => (typed.buyer ?? '').trim() !== '' || Object.keys(extra ?? {}).some(saysBuyer));

/** Hands out the packing list as CSV: no copy of the show. @returns the name of the file */
export async function givePackingList(session: Session): Promise<string | undefined> {
	const { show, results, settings } = session;
	const nameOf = (place: number) => nameOfPrint(show.rows[place]!, place);
	const text = writePackingList(packPrints(results, settings), settings, nameOf);
	return handOut([new File([text], fileName(`${show.name} packing list`, 'csv'), { type: 'text/csv' })], 'save');
}

/** Hands out what was sold as CSV: no copy of the show. @param hasBuyers whether who bought it stands in it */
export async function giveSales(session: Session, sales: Sales, hasBuyers: boolean): Promise<string | undefined> {
	const name = fileName(`${session.show.name} sales`, 'csv');
	return handOut([new File([writeSales(sales, hasBuyers)], name, { type: 'text/csv' })], 'save');
}

/** Hands out the edition register as CSV: no copy of the show. @returns the name of the file */
export async function giveEditions(
	session: Session,
	register: readonly RegisteredTitle[],
): Promise<string | undefined> {
	const name = fileName(`${session.show.name} editions`, 'csv');
	return handOut([new File([writeEditions(register)], name, { type: 'text/csv' })], 'save');
}

/**
 * Hands out the whole show as one file.
 * @param hasPictures whether its pictures go with it, packed
 * @returns its name; undefined where the person has put it off
 */
export async function giveShow(
	session: Session,
	way: Way = 'save',
	hasPictures = false,
	packing = unendingPacking,
): Promise<string | undefined> {
	const { show, pictures } = session;
	const mark = session.copies.mark();
	const text = await writtenInSlices(writingShowFile(show), session.signal).catch(
		andForget(() => session.copies.forget(mark)),
	);
	const files = hasPictures
		? [
				await packed(await text.text(), pictures, show.rows, fileName(show.name, 'evenhang.zip'), packing).catch(
					andForget(() => session.copies.forget(mark)),
				),
			]
		: forms(text, fileName(show.name, 'evenhang.json'));
	const isWhole = hasPictures || show.rows.every((row) => !pictures.of(row));
	const given = await handOut(files, way);
	await noteGiven(session, mark, show.rows, given, isWhole);
	return given;
}

/**
 * Hands out all shows of this device in one file, packed with their pictures where they have any.
 * @returns its name; undefined where the person has put it off
 */
export async function giveBackup(
	shelf: Shelf,
	way: Way = 'save',
	now = new Date(),
	packing = unendingPacking,
): Promise<string | undefined> {
	const at = now.getTime();
	const { shows, note, forget } = await copyAll(shelf);
	const { pictures } = shelf.session;
	const rows = shows.flatMap(({ show }) => show.rows);
	const text = await writtenInSlices(writingBackup(shows)).catch(andForget(forget));
	const name = `All shows ${dayOf(now)}`;
	const files =
		(await picturesOfRows(pictures, rows)).length > 0
			? [
					await packed(await text.text(), pictures, rows, fileName(name, 'evenhang.zip'), packing).catch(
						andForget(forget),
					),
				]
			: forms(text, fileName(name, 'evenhang.json'));
	const given = await handOut(files, way);
	if (given === undefined) forget();
	else await note(at);
	return given;
}

const unendingPacking: Packing = { signal: new AbortController().signal, onProgress: () => undefined };

/** Forgets what was marked for a copy that was not made. */
const andForget =
	(forget: () => void) =>
	(cause: unknown): never => {
		forget();
		throw cause;
	};

/** A text packed with the pictures of rows. */
async function packed(
	text: string,
	pictures: Pictures,
	rows: Iterable<Row>,
	name: string,
	packing: Packing,
): Promise<File> {
	const wanted = await picturesOfRows(pictures, rows);
	const blob = await packedFile(text, wanted, pictures, packing);
	return new File([blob], name, { type: 'application/zip' });
}

/** Hands out the damaged records of this device, as they are. @returns the name of the file */
export async function givePutAside(shelf: Shelf, now = new Date()): Promise<string | undefined> {
	const name = fileName(`Damaged records ${dayOf(now)}`, 'evenhang-damaged.json');
	const given = await handOut(forms(writePutAside(shelf.putAside.records), name), 'save');
	await shelf.putAside.noteReported();
	return given;
}

/** The day where one is, as it stands in the names of files. */
const dayOf = (time: Date): string =>
	[time.getFullYear(), time.getMonth() + 1, time.getDate()].map((part) => String(part).padStart(2, '0')).join('-');

/** Not every device shares JSON; all share plain text, and what a file is stands in it, not in its name. */
const forms = (text: string | Blob, name: string): readonly File[] => [
	new File([text], name, { type: 'application/json' }),
	new File([text], name.replace(/json$/, 'txt'), { type: 'text/plain' }),
];

/**
 * Keeps what was given, as the show was when it was marked; or forgets the mark, where nothing was.
 * @param isWhole whether it brings back all of the show: what brings back less is no backup, and the changes still count
 */
async function noteGiven(
	session: Session,
	mark: CopyMark,
	rows: Session['show']['rows'],
	name: string | undefined,
	isWhole: boolean,
): Promise<void> {
	if (name === undefined) return session.copies.forget(mark);
	const at = Date.now();
	const { unit } = session.settings;
	const exchange = { id: makeId(), direction: 'given', fileName: name, at, unit, rows } as const;
	// Where it cannot be kept, the next file is compared with an older one: more is asked, and nothing is lost.
	await session.exchanges.keep(exchange, true).catch(() => undefined);
	if (isWhole) await session.copies.note(mark, at);
	else session.copies.forget(mark);
}

/** Most systems allow a file's name 255 bytes: so many letters of two bytes, with the ending, stay below that. */
const longestName = 100;

/** The name of a show as the name of a file, on every system; `show` where nothing of it can stand in one. */
export function fileName(showName: string, ending: string): string {
	const name = showName
		.replace(/[\p{Cc}\\/:*?"<>|]+/gu, ' ')
		.replace(/\s+/g, ' ')
		.replace(/^[. ]+|[. ]+$/g, '')
		.slice(0, longestName);
	return `${name || 'show'}.${ending}`;
}

/** @param files the same file in several forms, the best first */
async function handOut(files: readonly File[], way: Way): Promise<string | undefined> {
	const shared = way === 'share' ? files.find((file) => navigator.canShare({ files: [file] })) : undefined;
	if (!shared) return download(files[0]!);
	try {
		await navigator.share({ files: [shared], title: shared.name });
		return shared.name;
	} catch (cause) {
		if ((cause as DOMException).name === 'AbortError') return undefined;
		return download(files[0]!); // the device offered to share it, and then would not
	}
}

/**
 * What there is to say of something that is given out; undefined where the person has called it off.
 * @param sentences what there is to know of it
 */
export const reportOfGiving = (
	what: string,
	given: Promise<string | undefined>,
	sentences: readonly string[] = [],
): Promise<FileReport | undefined> =>
	given.then(
		(fileName) => (fileName === undefined ? undefined : givenOut(what, fileName, sentences)),
		(cause: unknown) =>
			cause instanceof TooMuchToPack ? notPacked(what, cause.message) : notGivenOut(what, (cause as Error).name),
	);
