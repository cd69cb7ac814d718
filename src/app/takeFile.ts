import { isSameValue } from '../core/show/isSameValue.ts';
import {
	type CellPlace,
	notTakenIn,
	rowsTakenIn,
	rowsWaiting,
	showTakenIn,
	type TakenIn,
} from '../core/show/takenIn.ts';
import { isColumnName } from '../core/show/columns.ts';
import { newShow } from '../core/show/newShow.ts';
import type { Row } from '../core/show/row.ts';
import { settingsOfRows } from '../core/show/settingsOfRows.ts';
import { workOut } from '../core/row/workOut.ts';
import { compareResults, readRows, type RowsOfFile } from '../files/csv.ts';
import { decodeText } from '../files/decodeText.ts';
import { isShowFileText, readShowFile } from '../files/showFile.ts';
import { makeId } from './makeId.ts';
import type { Session } from './session.svelte.ts';

/**
 * Takes a file into the session, as one edit: the rows of a CSV into the show that is there, or a show in its place.
 * What cannot be read changes nothing.
 * @returns what is to be said about it
 */
export async function takeFile(session: Session, file: File): Promise<TakenIn> {
	const source = `“${file.name}”`;
	let bytes: Uint8Array;
	try {
		bytes = new Uint8Array(await file.arrayBuffer());
	} catch (cause) {
		return notTakenIn(source, `this device does not give the file to read (${(cause as Error).name})`);
	}
	const text = decodeText(bytes);
	const isShow = 'value' in text && isShowFileText(text.value);
	return isShow ? takeShow(session, text.value, source) : takeRows(session, bytes, source, `Import ${source}`);
}

/** Takes pasted text into the session, as one edit: rows with their column names, or a show. */
export const takeText = (session: Session, text: string): TakenIn =>
	isShowFileText(text)
		? takeShow(session, text, 'What was pasted')
		: takeRows(session, text, 'What was pasted', 'Paste rows');

/** Puts the example show in the place of the one that is there, as one edit. */
export async function takeExample(session: Session): Promise<TakenIn> {
	const { default: text } = await import('../../shared/samples/example.evenhang.json?raw');
	return takeShow(session, text, 'The example', 'Load the example');
}

function takeShow(session: Session, text: string, source: string, label = `Open ${source}`): TakenIn {
	const show = readShowFile(text);
	if ('problem' in show) return notTakenIn(source, show.problem);
	const before = session.show;
	session.replaceShow(show.value, label);
	return showTakenIn(show.value.name, show.value.rows.length, !isUntouched(before));
}

/** Whether a show is as a new one is: nothing is lost if another takes its place. */
function isUntouched({ id, name, rows, settings }: Session['show']): boolean {
	const fresh = newShow(id);
	return rows.length === 0 && isSameValue([name, settings], [fresh.name, fresh.settings]);
}

function takeRows(session: Session, file: Uint8Array | string, source: string, label: string): TakenIn {
	const read = readRows(file, session.settings, makeId);
	if ('problem' in read) return notTakenIn(source, read.problem);
	const before = new Map(session.show.rows.map((row) => [row.id, row]));
	session.importRows(read.rows, read.columns, label);
	if (session.question) return rowsWaiting(read.rows.length);
	const { rows } = session.show;
	const isTaken = (row: Row) => before.get(row.id) !== row;
	const counts = {
		read: read.rows.length,
		added: rows.length - before.size,
		replaced: rows.filter((row) => before.has(row.id) && isTaken(row)).length,
		differing: countDiffering(session, read),
		unknown: read.unknown,
		unread: unreadCells(session, isTaken),
		settings: settingsOfRows(
			read.results.map((cells) => cells.find(({ name }) => name === 'result settings')?.text ?? ''),
			session.show.settings,
		),
	};
	return rowsTakenIn(counts, read.notes);
}

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
		return [{ cells, result: isKnown ? results[places.get(row.id)!]! : workOut(row, settings) }];
	});
	return compareResults(
		compared.map(({ cells }) => cells),
		compared.map(({ result }) => result),
		settings.unit,
	);
}
