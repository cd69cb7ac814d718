import type { Reading, Unit } from '../core/length/reading.ts';
import { isColumnName } from '../core/show/columns.ts';
import type { Row } from '../core/show/row.ts';
import type { TypedSettings } from '../core/show/settings.ts';
import type { Show } from '../core/show/show.ts';
import { readTicks, ticksJson } from './tickJson.ts';
import { storedVersion, type Stored, upgrade } from '../core/show/upgrade.ts';
import { cutSheetsJson, readCutSheets } from './cutSheetJson.ts';
import { decodeText } from './decodeText.ts';
import { jsonProblem } from './jsonProblem.ts';

/** What marks a show file. */
export const showFormat = 'evenhang-show';

/**
 * Writes everything that a show is: its name, its settings as typed (sizes, boards and frames among them), its rows,
 * what is ticked off at the bench, and the sheets that are cut.
 */
export const writeShowFile = (show: Omit<Show, 'id'>): string => `${JSON.stringify(showDocument(show), null, '\t')}\n`;

/** What a show file holds, before it is written as text. */
export const showDocument = ({ name, settings, rows, ticks = [], cutSheets = [] }: Omit<Show, 'id'>): Stored => ({
	format: showFormat,
	version: storedVersion,
	name,
	settings,
	rows,
	ticks: ticksJson(ticks),
	cutSheets: cutSheetsJson(cutSheets),
});

/**
 * Reads a show file of any version up to today's.
 * @returns a problem, one sentence that names the place, if it is damaged, newer, or no show file
 */
export function readShowFile(file: Uint8Array | string): Reading<Omit<Show, 'id'>> {
	const document = readDocument(file);
	return 'problem' in document ? document : readShowDocument(document.value);
}

/** Reads what a show file holds. */
export function readShowDocument(document: Stored): Reading<Omit<Show, 'id'>> {
	if (!isShowDocument(document)) return { problem: 'this is no show file: it is not marked as one' };
	const stored = upgrade(document);
	if ('problem' in stored) return { problem: `this show file cannot be opened: ${stored.problem}` };
	const show = readShow(stored.value);
	return 'problem' in show ? { problem: `this show file is damaged: ${show.problem}` } : show;
}

/** Reads settings from a file: a bare record of them, or those of a show file. */
export function readSettingsFile(file: Uint8Array | string): Reading<TypedSettings> {
	const document = readDocument(file);
	if ('problem' in document) return document;
	if (!isShowDocument(document.value)) {
		const { settings } = document.value;
		return { value: isRecord(settings) ? settings : document.value };
	}
	const show = readShowFile(file);
	return 'problem' in show ? show : { value: show.value.settings };
}

/** Whether a text looks like a show file, not like rows. */
export const isShowFileText = (text: string): boolean => /^\ufeff?\s*\{/.test(text);

/** Whether a value of a document is a record. */
export const isRecord = (value: unknown): value is Stored =>
	typeof value === 'object' && value !== null && !Array.isArray(value);

const isShowDocument = (document: Stored): boolean => document['format'] === showFormat;

/** A JSON document that is a record. @returns a problem that says where it is damaged */
export function readDocument(file: Uint8Array | string): Reading<Stored> {
	const decoded = typeof file === 'string' ? { value: file.replace(/^\ufeff/, '') } : decodeText(file);
	if ('problem' in decoded) return decoded;
	if (decoded.value.trim() === '') return { problem: 'the file is empty' };
	const document = parsed(decoded.value);
	if ('problem' in document) return document;
	return isRecord(document.value) ? { value: document.value } : { problem: 'this file holds no show and no settings' };
}

function parsed(text: string): Reading<unknown> {
	try {
		return { value: JSON.parse(text) as unknown };
	} catch (cause) {
		return { problem: `this file cannot be read: ${jsonProblem(text) ?? (cause as Error).message}` };
	}
}

function readShow({ name, settings = {}, rows = [], ticks = [], cutSheets = [] }: Stored): Reading<Omit<Show, 'id'>> {
	if (name !== undefined && typeof name !== 'string') return { problem: 'name is not a text' };
	if (!isRecord(settings)) return { problem: 'settings is not a record' };
	if (!isWithin(settings, deepest)) return { problem: `settings has lists in lists more than ${deepest} deep` };
	if (!Array.isArray(rows)) return { problem: 'rows is not a list' };
	const read: Row[] = [];
	const places = new Map<string, number>();
	for (const [place, stored] of rows.entries()) {
		const row = readRow(stored, place);
		if ('problem' in row) return { problem: `rows[${place}]${row.problem}` };
		const before = places.get(row.value.id);
		if (before !== undefined) return { problem: `rows[${place}].id is that of rows[${before}] too` };
		places.set(row.value.id, place);
		read.push(row.value);
	}
	const ticked = readTicks(ticks);
	if ('problem' in ticked) return ticked;
	const sheets = readCutSheets(cutSheets);
	if ('problem' in sheets) return sheets;
	return {
		value: {
			...{ name: name ?? 'Show', settings, rows: inOrder(read) },
			...(ticked.value.length > 0 && { ticks: ticked.value }),
			...(sheets.value.length > 0 && { cutSheets: sheets.value }),
		},
	};
}

/** Settings are a few levels deep; what goes on for ever can be neither kept nor written again. */
const deepest = 20;

const isWithin = (value: unknown, levels: number): boolean =>
	typeof value !== 'object' ||
	value === null ||
	(levels > 0 && Object.values(value).every((each) => isWithin(each, levels - 1)));

/** Rows by their order numbers; by their place where these are not all different. */
function inOrder(rows: readonly Row[]): readonly Row[] {
	if (new Set(rows.map(({ order }) => order)).size < rows.length)
		return rows.map((row, place) => ({ ...row, order: place + 1 }));
	return rows.toSorted((a, b) => a.order - b.order);
}

function readRow(stored: unknown, place: number): Reading<Row> {
	if (!isRecord(stored)) return { problem: ' is not a record' };
	const { id, order = place + 1 } = stored;
	if (typeof id !== 'string' || id === '') return { problem: '.id is not a text' };
	if (typeof order !== 'number' || !Number.isFinite(order)) return { problem: '.order is not a number' };
	const typed = readTexts(stored['typed'], '.typed');
	if ('problem' in typed) return typed;
	const extra = readTexts(stored['extra'], '.extra');
	if ('problem' in extra) return extra;
	const units = readTexts(stored['units'], '.units');
	if ('problem' in units) return units;
	const odd = units.value.find(([column, unit]) => !isColumnName(column) || !isUnit(unit));
	if (odd !== undefined) return { problem: `.units gives “${odd[0]}” the unit “${odd[1]}”` };
	// A column that this version does not have is kept as one of another program.
	const ours = typed.value.filter(([column, text]) => isColumnName(column) && text.trim() !== '');
	const others = [...typed.value.filter(([column]) => !isColumnName(column)), ...extra.value];
	return {
		value: {
			id,
			order,
			typed: Object.fromEntries(ours),
			...(units.value.length > 0 && { units: Object.fromEntries(units.value) }),
			...(others.length > 0 && { extra: Object.fromEntries(others) }),
		},
	};
}

const isUnit = (text: string): text is Unit => text === 'mm' || text === 'cm' || text === 'in';

function readTexts(stored: unknown, key: string): Reading<[string, string][]> {
	if (stored === undefined) return { value: [] };
	if (!isRecord(stored)) return { problem: `${key} is not a record` };
	const entries = Object.entries(stored);
	const odd = entries.find(([, text]) => typeof text !== 'string');
	return odd === undefined
		? { value: entries as [string, string][] }
		: { problem: `${key}[${JSON.stringify(odd[0])}] is not a text` };
}
