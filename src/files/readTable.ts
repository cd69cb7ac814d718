import Papa from 'papaparse';
import type { ColumnMatching } from '../core/imports/columnMatching.ts';
import { findDelimiter } from './findDelimiter.ts';
import { findHeaderRow } from './findHeaderRow.ts';
import { unguardCell } from './formulaGuard.ts';
import { joinHeaderLines } from './headerLines.ts';
import { type Header, readHeader } from './headers.ts';
import { kindOfText } from './kindOfFile.ts';
import { distinctHeaders, matchColumns, type MatchedColumn } from './matchColumns.ts';
import type { GuessByContents } from '../core/imports/guessByContents.ts';
import { isTotal, passedOver } from './passedOver.ts';
import { withPlainLineEnds } from './plainLineEnds.ts';
import { scanRecords } from './scanRecords.ts';

/** A delimited file as a table. */
export interface Table {
	/** What each column stands for; unknown ones have names that differ, or none where nothing stands in them. */
	readonly headers: readonly Header[];
	/** The columns that have a header, as it stands and as it was understood. */
	readonly columns: readonly (MatchedColumn & { readonly text: string; readonly at: number })[];
	/** The cells of each row, without the apostrophe that guards a formula. */
	readonly records: readonly (readonly string[])[];
	/** The line of the file on which each row begins, from 1. */
	readonly lines: readonly number[];
	/** The columns that are not known, by their headers. */
	readonly unknown: readonly string[];
	/** The rows that read like the sum under the list, by their place. */
	readonly totals: readonly number[];
	readonly notes: string[];
}

/** A line of a file with something in it. */
interface Line {
	readonly cells: readonly string[];
	/** Its number, from 1. */
	readonly line: number;
}

/** How many rows are looked at to see what a column holds. */
const mostSamples = 20;
/** How many rows are compared with those of a show, to see which column theirs is. */
const mostContents = 200;

/** How a text is read as a table. */
export interface TableOptions {
	/** What a person has said that its columns mean. */
	readonly matching?: ColumnMatching | undefined;
	/** Whether it is only to see what its columns may mean: headers in doubt are no problem then. */
	readonly isAsking?: boolean;
	/** What a column may mean by what stands in it, where its header says nothing. */
	readonly guessByContents?: GuessByContents | undefined;
	/** Whether it is only the beginning of a file, where a quote that is never closed is no problem: it is cut off. */
	readonly isBeginning?: boolean;
}

/**
 * Reads a delimited text as a table.
 * @returns a problem, `line N, column NAME: what is wrong`, where it is no list, is empty, has no known header or one twice,
 * or breaks the rules of quoting
 */
export function readTable(
	given: string,
	{ matching, guessByContents, isAsking = false, isBeginning = false }: TableOptions = {},
): Table | { readonly problem: string } {
	const kind = kindOfText(given);
	if (kind !== undefined) return { problem: `line 1, column 1: ${kind}` };
	const text = withPlainLineEnds(withoutEndMark(given));
	if (/^[,;\t|"'\s]*$/.test(text)) return { problem: 'line 1, column 1: the file is empty' };
	const { delimiter, skippedLines } = findDelimiter(text);
	const scanned = scanRecords(text, delimiter);
	const all = Papa.parse<string[]>(scanned.text, { delimiter, newline: '\n' }).data.map((cells, index) => ({
		cells: cells.map(unguardCell),
		line: scanned.lines[index] ?? 1,
	}));
	const filled = all.filter(({ cells, line }) => line > skippedLines && cells.some((cell) => cell.trim() !== ''));
	const headerRow = findHeaderRow(filled.map(({ cells }) => cells));
	const above = filled.slice(0, headerRow);
	const [first, rows] = headerAndRows(filled.slice(headerRow));
	if (first === undefined) return { problem: 'line 1, column 1: the file is empty' };
	const [rest, ruledOut] = withoutRules(rows, first.cells);
	const sampled = rest.slice(0, mostSamples);
	const samples = first.cells.map((_, at) => sampled.map(({ cells }) => cells[at] ?? ''));
	const contents =
		guessByContents &&
		((header: string, at: number, taken: ReadonlySet<string>) => {
			const cells = rest.slice(0, mostContents).map((each) => each.cells[at] ?? '');
			return guessByContents(header, cells, taken);
		});
	const matched = matchColumns(first.cells, samples, matching, contents);
	const isAsked = isAsking && matched.some(({ guesses }) => guesses.length > 0);
	const headerProblem = isAsked ? undefined : problemOfHeaders(first.cells, matched, first.line);
	const { quoteProblem } = scanned;
	if (!isBeginning && quoteProblem !== undefined && !(headerProblem !== undefined && quoteProblem.line > first.line)) {
		const name = quoteProblem.line === first.line ? '' : shortened(first.cells[quoteProblem.field] ?? '');
		const column = name === '' ? `${quoteProblem.field + 1}` : name;
		return { problem: `line ${quoteProblem.line}, column ${column}: ${quoteProblem.problem}` };
	}
	if (headerProblem !== undefined) return { problem: headerProblem };
	const distinct = distinctHeaders(first.cells);
	const { headers, notes } = nameAll(first.cells, matched, rest);
	const totals = rest.flatMap(({ cells }, at) => {
		const isLast = at === rest.length - 1;
		const above = isLast ? rest.slice(0, -1).map((each) => each.cells) : [];
		return isTotal(cells, above, isLast, (column) => !isCounted(headers[column])) ? [at] : [];
	});
	const unknown = headers.flatMap(({ kind, name }, at) =>
		kind === 'unknown' && at < first.cells.length && first.cells[at]!.trim() !== '' ? [name] : [],
	);
	return {
		headers,
		columns: matched.flatMap((column, at) =>
			first.cells[at]!.trim() === '' ? [] : [{ ...column, at, text: distinct[at]! }],
		),
		unknown,
		records: rest.map(({ cells }) => cells),
		lines: rest.map(({ line }) => line),
		totals,
		notes: [
			...above.map(({ cells, line }) => noteOfTitle(cells, line)),
			...ruledOut,
			...notes,
			...notesOfLost([first, ...rest], text.endsWith(lostSign)),
			...totals.map((at) => `line ${rest[at]!.line} reads like a total`),
		],
	};
}

/** What stands where a file has no character: a zero byte, one that breaks off, or what another program could not read. */
const lostSign = '\ufffd';

/** What is said of characters that are lost: of the first, and of one in the middle of which the file breaks off. */
function notesOfLost(lines: readonly Line[], isBrokenOff: boolean): readonly string[] {
	const notes: string[] = [];
	const whole = isBrokenOff ? lines.slice(0, -1) : lines;
	const lost = whole.find(({ cells }) => cells.some((cell) => cell.includes(lostSign)));
	if (lost) notes.push(`line ${lost.line}: a damaged character is shown as ${lostSign}`);
	if (isBrokenOff)
		notes.push(
			`line ${lines.at(-1)!.line}: the file breaks off in the middle of its last character, shown as ${lostSign}`,
		);
	return notes;
}

/** The line of the column names, of one line or two, and the rows under it. */
function headerAndRows([first, second, ...rest]: readonly Line[]): [Line | undefined, readonly Line[]] {
	if (first === undefined || second === undefined) return [first, []];
	const joined = joinHeaderLines(first.cells, second.cells);
	return joined === undefined ? [first, [second, ...rest]] : [{ ...first, cells: joined }, rest];
}

/** The rows, and what is to be said of the lines between them that are none. */
function withoutRules(lines: readonly Line[], headers: readonly string[]): [readonly Line[], readonly string[]] {
	const rows: Line[] = [];
	const notes: string[] = [];
	for (const each of lines) {
		const why = passedOver(each.cells, headers);
		if (why === undefined) rows.push(each);
		else notes.push(`line ${each.line} ${why}`);
	}
	return [rows, notes];
}

/** Whether the figures of a column only count the rows. */
const isCounted = (header: Header | undefined): boolean =>
	header?.kind === 'typed' && ['print id', 'number', 'hang order'].includes(header.name);

/** Old systems end a text with a control character, which is no row. */
const withoutEndMark = (text: string): string => text.replace(/\x1a\s*$/, ''); // oxlint-disable-line no-control-regex -- it is what is looked for

const noteOfTitle = (cells: readonly string[], line: number): string =>
	`line ${line}, above the column names, is passed over: “${shortened(cells.filter((cell) => cell.trim() !== '').join(' '))}”`;

const shortened = (text: string): string => {
	const shown = text.trim();
	return shown.length > 40 ? `${shown.slice(0, 39)}…` : shown;
};

function problemOfHeaders(
	cells: readonly string[],
	matched: readonly MatchedColumn[],
	line: number,
): string | undefined {
	const seen = new Set<string>();
	for (const { header } of matched) {
		if (header.kind === 'unknown') continue;
		if (seen.has(header.name)) return `line ${line}, column ${header.name}: this header stands twice`;
		seen.add(header.name);
	}
	if (seen.size > 0) return undefined;
	const name = shortened(cells.find((cell) => cell.trim() !== '')!);
	return `line ${line}, column ${name}: no header is known; put a line above the rows that names the columns, such as title, picture width, picture height`;
}

/**
 * Headers for all cells: unknown ones get names that differ, so that each column is kept and given back; so do cells
 * past the last header. A column without a header and without a cell is none.
 */
function nameAll(
	cells: readonly string[],
	matched: readonly MatchedColumn[],
	records: readonly Line[],
): { headers: Header[]; notes: string[] } {
	const notes: string[] = [];
	const names = new Set<string>();
	const copies = new Map<string, number>();
	const width = records.reduce((most, record) => Math.max(most, record.cells.length), cells.length);
	const headers = Array.from({ length: width }, (_, at): Header => {
		const text = cells[at]?.trim() ?? '';
		const header = matched[at]?.header ?? readHeader(text);
		if (header.kind !== 'unknown') return header;
		const first = records.find((record) => (record.cells[at] ?? '').trim() !== '');
		if (text === '' && first !== undefined)
			notes.push(`line ${first.line}, column ${at + 1}: this cell has no header; it is kept as “column ${at + 1}”`);
		const wanted = text === '' ? `column ${at + 1}` : text;
		let name = wanted;
		let copy = copies.get(wanted) ?? 1; // where the last of that name was
		while (names.has(name)) name = `${wanted} (${++copy})`;
		copies.set(wanted, copy);
		if (text !== '' || first !== undefined) names.add(name);
		return { kind: 'unknown', name: text === '' && first === undefined ? '' : name };
	});
	return { headers, notes };
}
