import { namedSize } from '../core/length/paperSizes.ts';
import { splitSizeText } from '../core/length/parseSize.ts';
import { tokenize } from '../core/length/tokens.ts';
import type { Unit } from '../core/length/reading.ts';
import type { ColumnMatching } from '../core/imports/columnMatching.ts';
import { type ColumnName, hasUnit, kindOf } from '../core/show/columns.ts';
import { isMadeId } from '../core/values/madeId.ts';
import type { Row, RowId, Typed } from '../core/show/row.ts';
import type { NamedSize } from '../core/length/size.ts';
import type { Settings } from '../core/settings/settings.ts';
import { groupBy } from '../core/values/groupBy.ts';
import { shownText } from '../core/values/shownText.ts';
import { sizePairs, splitSize } from '../core/show/splitSize.ts';
import { barenessOf } from '../core/show/bareness.ts';
import { dimensionsIn } from './dimensions.ts';
import { type Header, type HeaderUnit, unitIn } from './headers.ts';
import { readTable } from './readTable.ts';

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
	/** The rows that the file gives no print id of their own. */
	readonly unnamed: readonly RowId[];
	/** The rows that read like the sum under the list. */
	readonly totals: readonly RowId[];
	/** For each row, the line of the file on which it begins, from 1. */
	readonly lines: readonly number[];
	/** For each row, the results that came with it. */
	readonly results: readonly (readonly ResultCell[])[];
	/** What the person should know, each with its line and column; nothing is lost by it. */
	readonly notes: readonly string[];
}

/** How a file is read. */
export interface ReadOptions {
	/** What a person has said that its columns mean. */
	readonly matching?: ColumnMatching | undefined;
	/** Told, every now and then, how many rows have been read, of how many. */
	readonly onProgress?: (done: number, of: number) => void;
	/** Whether it is only the beginning of a file, whose last cell may break off. */
	readonly isBeginning?: boolean;
}

/** How many rows are read before that is reported. */
const progressStep = 250;

/** Names a row of a file that has no name, or that of a row before it. */
export type MakeId = (place: number, attempt: number) => RowId;

/**
 * Reads rows from the text of a delimited file: cells as typed, whatever they hold, in the order of the file.
 *
 * @param makeId names a row whose print id is blank, or that of a row before it, by its place from 1; asked again, with
 * the next attempt, while the name is taken
 * @returns a problem, `line N, column NAME: what is wrong`, where it is no list, is empty, has no known header or
 * one twice, or breaks the rules of quoting
 */
export function readRows(
	text: string,
	settings: Pick<Settings, 'unit' | 'sizes'>,
	makeId: MakeId,
	{ matching, onProgress, isBeginning = false }: ReadOptions = {},
): RowsOfFile | { readonly problem: string } {
	const table = readTable(text, { matching, isBeginning });
	if ('problem' in table) return table;
	const { headers, records, lines, notes, unknown } = table;
	const textOfColumn = new Map(table.columns.map((column) => [column.at, column.text]));
	const headerTexts = headers.map((_, at) => textOfColumn.get(at));
	const printIdAt = headers.findIndex(({ kind, name }) => kind === 'typed' && name === 'print id');
	const printIds = records.map((cells) => cells[printIdAt]?.trim() ?? '');
	const unnamed: RowId[] = [];
	/** The lines whose print id a row before has, by the id. */
	const repeated = new Map<string, number[]>();
	const taken = new Set<RowId>(printIds);
	const seen = new Set<RowId>(['']);
	const rows = records.map((cells, index) => {
		const printId = printIds[index]!;
		const isFirst = !seen.has(printId);
		if (!isFirst && printId !== '') {
			const others = repeated.get(printId);
			if (others) others.push(lines[index]!);
			else repeated.set(printId, [lines[index]!]);
		}
		const id = isFirst ? printId : freeId(makeId, index + 1, taken);
		seen.add(printId);
		taken.add(id);
		if (id !== printId) unnamed.push(id);
		if (index % progressStep === 0) onProgress?.(index, records.length);
		return { id, order: index + 1, ...readCellsOfRow(cells, headers, headerTexts, settings) };
	});
	for (const [printId, repeats] of repeated)
		notes.push(noteOnLines('print id', `“${shownText(printId)}” names a row before it too`, 'so it does', repeats));
	const unitAt = headers.findIndex(({ kind }) => kind === 'units');
	for (const [text, own] of unknownUnits(records, lines, unitAt)) {
		const said = `“${shownText(text)}” is no unit that is read; numbers without a unit count as ${settings.unit}`;
		notes.push(noteOnLines(headerTexts[unitAt] ?? 'unit', said, 'so they do', own));
	}
	const ofResults = headers.flatMap((header, at) => (header.kind === 'result' ? [{ header, at }] : []));
	const results = records.map((cells) => ofResults.map(({ header, at }) => ({ ...header, text: cells[at] ?? '' })));
	const columns = headers.flatMap((header) => (header.kind === 'typed' ? [header.name] : []));
	return { rows, columns, unknown, unnamed, totals: table.totals.map((at) => rows[at]!.id), lines, results, notes };
}

/** The most lines that are named one by one. */
const mostLines = 6;

/** What is said of a cell of a column, and of the lines in which it says the same. */
function noteOnLines(column: string, said: string, again: string, [first, ...others]: readonly number[]): string {
	const note = `line ${first}, column ${column}: ${said}`;
	if (others.length === 0) return note;
	const more = others.length - mostLines;
	const named = others.slice(0, mostLines).join(', ');
	return `${note}; ${again} in line${others.length === 1 ? '' : 's'} ${named}${more > 0 ? ` and ${more} more` : ''}`;
}

/** The lines in which the column of units says what is none, by what it says. @param unitAt its place; below 0: there is none */
function unknownUnits(
	records: readonly (readonly string[])[],
	lines: readonly number[],
	unitAt: number,
): readonly (readonly [text: string, lines: readonly number[]])[] {
	const unknown = records.flatMap((cells, at) => {
		const text = cells[unitAt]?.trim() ?? '';
		return text === '' || unitIn(text) !== undefined ? [] : [{ text, line: lines[at]! }];
	});
	return [...groupBy(unknown, ({ text }) => text)].map(([text, own]) => [text, own.map(({ line }) => line)]);
}

function freeId(makeId: MakeId, place: number, taken: ReadonlySet<RowId>): RowId {
	for (let attempt = 1; ; attempt++) {
		const id = makeId(place, attempt);
		if (!taken.has(id)) return id;
	}
}

/**
 * Reads the cells of a row.
 * @param headerTexts the headers as they stand
 */
export function readCellsOfRow(
	cells: readonly string[],
	headers: readonly Header[],
	headerTexts: readonly (string | undefined)[],
	{ unit, sizes }: Pick<Settings, 'unit' | 'sizes'>,
): Pick<Row, 'typed' | 'units' | 'extra'> {
	const typed: Partial<Record<ColumnName, string>> = {};
	const units: Partial<Record<ColumnName, Unit>> = {};
	const extra: [string, string][] = [];
	const unitAt = headers.findIndex(({ kind }) => kind === 'units');
	const unitOfRow = unitAt < 0 ? undefined : unitIn(cells[unitAt] ?? '');
	const type = (name: ColumnName, text: string, stated: HeaderUnit | undefined) => {
		typed[name] = text;
		const headerUnit = stated ?? (hasUnit(name) && kindOf(name) !== 'weight' ? unitOfRow : undefined);
		if (headerUnit === undefined || headerUnit === '%') return;
		const bareness = barenessOf(name, text, sizes);
		if (bareness === undefined) return;
		// Metres and feet are no unit that a cell may have of its own, so they are spelled out.
		if (headerUnit === 'm' || headerUnit === 'ft') typed[name] = `${text.trim()} ${headerUnit}`;
		else units[name] = headerUnit;
	};
	// A file with print ids or results was written here: what a cell of it says stands as it was typed.
	const isWrittenHere = headers.some(({ kind, name }) => kind === 'result' || name === 'print id');
	const named = new Set(headers.flatMap((header) => (header.kind === 'typed' ? [header.name] : [])));
	headers.forEach((header, at) => {
		const cell = cells[at] ?? '';
		if (header.kind === 'unknown' && header.name !== '') extra.push([header.name, cell]);
		// A unit that is none is kept as it came.
		if (header.kind === 'units' && cell.trim() !== '' && unitOfRow === undefined) extra.push([header.name, cell]);
		if (header.kind !== 'typed' || cell.trim() === '') return;
		if (header.name === 'print id' && isMadeId(cell)) return;
		const among = isWrittenHere ? undefined : sizesAmongWords(header, cell, sizes);
		if (among === undefined) return type(header.name, header.isHeightFirst ? widthFirst(cell) : cell, header.unit);
		for (const [name, size] of among)
			if (name === header.name || (!named.has(name) && typed[name] === undefined)) type(name, size, header.unit);
		extra.push([headerTexts[at] ?? header.name, cell]); // with all its words
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

/** Whether a cell holds more than lengths, their units and what stands between them. */
const hasOtherWords = (cell: string): boolean =>
	tokenize(cell).tokens.some(({ kind }) => kind === 'unknown' || kind === 'colon');

/** The column into which a size goes that is said to be of something. */
const columnsOfSizes = { picture: 'picture width', paper: 'paper', mount: 'mount' } as const;

/**
 * The sizes of a cell that gives them among words, by the columns that they go into: the cell's own for the one that is
 * said to be of it, or of nothing. Undefined where the cell is a size, or has none.
 */
function sizesAmongWords(
	{ name, isHeightFirst }: Header & { readonly kind: 'typed' },
	cell: string,
	sizes: readonly NamedSize[],
): ReadonlyMap<ColumnName, string> | undefined {
	const isSize = kindOf(name) === 'size' || kindOf(name) === 'mount' || sizePairs.some(([width]) => width === name);
	if (!isSize || namedSize(cell, sizes) !== undefined || !hasOtherWords(cell)) return undefined;
	const found = new Map<ColumnName, string>();
	for (const { of, size } of dimensionsIn(cell, isHeightFirst)) {
		const column = of === undefined ? name : of === 'frame' ? undefined : columnsOfSizes[of];
		if (column !== undefined && !found.has(column)) found.set(column, size);
	}
	return found.size > 0 ? found : undefined;
}

/** A size that was written height first, as every size is here; everything else as it stands. */
function widthFirst(text: string): string {
	const sides = splitSizeText(text);
	return sides === undefined ? text : `${sides.height} x ${sides.width}`;
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
