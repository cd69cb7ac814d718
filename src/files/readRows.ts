import Papa from 'papaparse';
import type { Unit } from '../core/length/reading.ts';
import { type ColumnName, kindOf } from '../core/show/columns.ts';
import { isMadeId } from '../core/show/madeId.ts';
import type { Row, RowId, Typed } from '../core/show/row.ts';
import type { NamedSize, Settings } from '../core/show/settings.ts';
import { sizePairs, splitSize } from '../core/show/splitSize.ts';
import { barenessOf } from './bareness.ts';
import { decodeText } from './decodeText.ts';
import { findDelimiter } from './findDelimiter.ts';
import { unguardCell } from './formulaGuard.ts';
import { type Header, type HeaderUnit, readHeader } from './headers.ts';
import { scanRecords } from './scanRecords.ts';

/** A result that came with a row: it is compared, never taken. */
export interface ResultCell {
	/** `result mount width`, without its unit. */
	readonly name: string;
	readonly unit: HeaderUnit | undefined;
	readonly text: string;
}

/** The rows of a file. */
export interface RowsOfFile {
	readonly rows: readonly Row[];
	/** The typed columns that the file has, blank or not. */
	readonly columns: readonly ColumnName[];
	/** The columns that are not known, by their headers; they are kept with the rows. */
	readonly unknown: readonly string[];
	/** For each row, the line of the file on which it begins, from 1. */
	readonly lines: readonly number[];
	/** For each row, the results that came with it. */
	readonly results: readonly (readonly ResultCell[])[];
	/** What the person should know, each with its line and column; nothing is lost by it. */
	readonly notes: readonly string[];
}

/** Names a row of a file that has no name, or that of a row before it. */
export type MakeId = (place: number, attempt: number) => RowId;

/**
 * Reads rows from a delimited file: cells as typed, whatever they hold, in the order of the file.
 *
 * @param file its bytes, or its text
 * @param makeId names a row whose print id is blank, or that of a row before it, by its place from 1; asked again, with
 * the next attempt, while the name is taken
 * @returns a problem, `line N, column NAME: what is wrong`, where the file is not text, is empty, has no known header or
 * one twice, or breaks the rules of quoting
 */
export function readRows(
	file: Uint8Array | string,
	settings: Pick<Settings, 'unit' | 'sizes'>,
	makeId: MakeId,
): RowsOfFile | { readonly problem: string } {
	const decoded = typeof file === 'string' ? { value: file.replace(/^\ufeff/, '') } : decodeText(file);
	if ('problem' in decoded) return { problem: `line 1, column 1: ${decoded.problem}` };
	const table = readTable(decoded.value);
	if ('problem' in table) return table;
	const { headers, records, lines, notes, unknown } = table;
	const printIdAt = headers.findIndex(({ kind, name }) => kind === 'typed' && name === 'print id');
	const printIds = records.map((cells) => cells[printIdAt]?.trim() ?? '');
	const taken = new Set<RowId>(printIds);
	const seen = new Set<RowId>(['']);
	const rows = records.map((cells, index) => {
		const printId = printIds[index]!;
		const isFirst = !seen.has(printId);
		if (!isFirst && printId !== '')
			notes.push(`line ${lines[index]!}, column print id: “${printId}” names a row before it too`);
		const id = isFirst ? printId : freeId(makeId, index + 1, taken);
		seen.add(printId);
		taken.add(id);
		return { id, order: index + 1, ...readRow(cells, headers, settings) };
	});
	const results = records.map((cells) =>
		headers.flatMap((header, at) => (header.kind === 'result' ? [{ ...header, text: cells[at] ?? '' }] : [])),
	);
	const columns = headers.flatMap((header) => (header.kind === 'typed' ? [header.name] : []));
	return { rows, columns, unknown, lines, results, notes };
}

function freeId(makeId: MakeId, place: number, taken: ReadonlySet<RowId>): RowId {
	for (let attempt = 1; ; attempt++) {
		const id = makeId(place, attempt);
		if (!taken.has(id)) return id;
	}
}

interface Table {
	readonly headers: readonly Header[];
	/** The cells of each row, without the apostrophe that guards a formula. */
	readonly records: readonly (readonly string[])[];
	readonly lines: readonly number[];
	readonly unknown: readonly string[];
	readonly notes: string[];
}

function readTable(text: string): Table | { readonly problem: string } {
	if (/^[,;\t|"'\s]*$/.test(text)) return { problem: 'line 1, column 1: the file is empty' };
	const { delimiter, skippedLines } = findDelimiter(text);
	const scanned = scanRecords(text, delimiter);
	const all = Papa.parse<string[]>(scanned.text, { delimiter, newline: '\n' }).data.map((cells, index) => ({
		cells: cells.map(unguardCell),
		line: scanned.lines[index] ?? 1,
	}));
	const filled = all.filter(({ cells, line }) => line > skippedLines && cells.some((cell) => cell.trim() !== ''));
	const [first, ...rest] = filled;
	if (first === undefined) return { problem: 'line 1, column 1: the file is empty' };
	const headerProblem = problemOfHeaders(first.cells, first.line);
	const { quoteProblem } = scanned;
	if (quoteProblem !== undefined && !(headerProblem !== undefined && quoteProblem.line > first.line)) {
		const name = quoteProblem.line === first.line ? '' : (first.cells[quoteProblem.field]?.trim() ?? '');
		const column = name === '' ? `${quoteProblem.field + 1}` : name;
		return { problem: `line ${quoteProblem.line}, column ${column}: ${quoteProblem.problem}` };
	}
	if (headerProblem !== undefined) return { problem: headerProblem };
	const { headers, notes } = nameAll(first.cells, rest);
	const unknown = headers.flatMap(({ kind, name }, at) =>
		kind === 'unknown' && at < first.cells.length && first.cells[at]!.trim() !== '' ? [name] : [],
	);
	return { headers, unknown, records: rest.map(({ cells }) => cells), lines: rest.map(({ line }) => line), notes };
}

function problemOfHeaders(cells: readonly string[], line: number): string | undefined {
	const seen = new Set<string>();
	for (const cell of cells) {
		const header = readHeader(cell);
		if (header.kind === 'unknown') continue;
		if (seen.has(header.name)) return `line ${line}, column ${header.name}: this header stands twice`;
		seen.add(header.name);
	}
	if (seen.size > 0) return undefined;
	const shown = cells.find((cell) => cell.trim() !== '')!.trim();
	const name = shown.length > 40 ? `${shown.slice(0, 39)}…` : shown;
	return `line ${line}, column ${name}: no header is known; the first line must name columns such as title, picture width, picture height`;
}

/**
 * Headers for all cells: unknown ones get names that differ, so that each column is kept and given back; so do cells
 * past the last header. A column without a header and without a cell is none.
 */
function nameAll(
	cells: readonly string[],
	records: readonly { readonly cells: readonly string[]; readonly line: number }[],
): { headers: Header[]; notes: string[] } {
	const notes: string[] = [];
	const names = new Set<string>();
	const width = Math.max(cells.length, ...records.map((record) => record.cells.length));
	const headers = Array.from({ length: width }, (_, at): Header => {
		const text = cells[at]?.trim() ?? '';
		const header = readHeader(text);
		if (header.kind !== 'unknown') return header;
		const first = records.find((record) => (record.cells[at] ?? '').trim() !== '');
		if (text === '' && first !== undefined)
			notes.push(`line ${first.line}, column ${at + 1}: this cell has no header; it is kept as “column ${at + 1}”`);
		const wanted = text === '' ? `column ${at + 1}` : text;
		let name = wanted;
		for (let copy = 2; names.has(name); copy++) name = `${wanted} (${copy})`;
		if (text !== '' || first !== undefined) names.add(name);
		return { kind: 'unknown', name: text === '' && first === undefined ? '' : name };
	});
	return { headers, notes };
}

function readRow(
	cells: readonly string[],
	headers: readonly Header[],
	{ unit, sizes }: Pick<Settings, 'unit' | 'sizes'>,
): Pick<Row, 'typed' | 'units' | 'extra'> {
	const typed: Partial<Record<ColumnName, string>> = {};
	const units: Partial<Record<ColumnName, Unit>> = {};
	const extra: [string, string][] = [];
	headers.forEach((header, at) => {
		const text = cells[at] ?? '';
		if (header.kind === 'unknown' && header.name !== '') extra.push([header.name, text]);
		if (header.kind !== 'typed' || text.trim() === '') return;
		if (header.name === 'print id' && isMadeId(text)) return;
		typed[header.name] = text;
		if (header.unit === undefined || header.unit === '%') return;
		const bareness = barenessOf(header.name, text, sizes);
		if (bareness === undefined) return;
		// Metres and feet are no unit that a cell may have of its own, so they are spelled out.
		if (header.unit === 'm' || header.unit === 'ft') typed[header.name] = `${text.trim()} ${header.unit}`;
		else units[header.name] = header.unit;
	});
	for (const pair of sizePairs) splitPair(pair, typed, units, unit, sizes);
	const own = (Object.entries(units) as [ColumnName, Unit][]).filter(
		([column, stated]) =>
			barenessOf(column, typed[column], sizes) !== undefined &&
			(stated !== unit || needsOwnUnit(column, typed, units, sizes)),
	);
	return {
		typed,
		...(own.length > 0 && { units: Object.fromEntries(own) }),
		...(extra.length > 0 && { extra: Object.fromEntries(extra) }),
	};
}

/** Two lengths in one cell of a pair whose other cell is blank go into both, as when they are typed there. */
function splitPair(
	[width, height]: (typeof sizePairs)[number],
	typed: Partial<Record<ColumnName, string>>,
	units: Partial<Record<ColumnName, Unit>>,
	unit: Unit,
	sizes: readonly NamedSize[],
): void {
	const column = typed[height] === undefined ? width : height;
	const text = typed[column];
	if (text === undefined || typed[column === width ? height : width] !== undefined) return;
	const stated = units[column];
	// Under a metric header a bare fraction is not read: neither half is.
	if (stated !== undefined && stated !== 'in' && barenessOf(column, text, sizes) === 'fraction') return;
	const halves = splitSize(column, text, stated ?? unit, sizes);
	for (const [part, half] of Object.entries(halves) as [ColumnName, string][]) {
		typed[part] = half;
		if (stated !== undefined) units[part] = stated;
	}
}

/**
 * Whether a cell's unit must stay with it though it is the show's: a fraction would be inches without it, a bottom
 * weight per cent, and a number inches where the other length of its size is a fraction by itself.
 */
function needsOwnUnit(column: ColumnName, typed: Typed, units: Row['units'], sizes: readonly NamedSize[]): boolean {
	if (kindOf(column) === 'weight' || barenessOf(column, typed[column], sizes) === 'fraction') return true;
	const pair: readonly ColumnName[] = sizePairs.find((pair) => pair.some((name) => name === column)) ?? [];
	return pair.some((name) => units?.[name] === undefined && barenessOf(name, typed[name], sizes) === 'fraction');
}
