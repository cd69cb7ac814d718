/** Where a file breaks the rules of quoting. */
export interface QuoteProblem {
	/** From 1. */
	readonly line: number;
	/** The field of the record, from 0. */
	readonly field: number;
	readonly problem: string;
}

/** The records of a delimited text. */
export interface Records {
	/** The text with one line feed after each record; line ends inside quotes stay as they are. */
	readonly text: string;
	/** The line on which each record begins, from 1. */
	readonly lines: readonly number[];
	/** The first breach of the rules of quoting. */
	readonly quoteProblem: QuoteProblem | undefined;
}

const quote = '"';

/**
 * Finds where the records of a delimited text end, be it with CRLF, LF or CR, and on which line each begins. A field
 * that begins with a quote ends with one; whatever stands between them, delimiters and line ends too, belongs to it.
 */
export function scanRecords(text: string, delimiter: string): Records {
	const records: string[] = [];
	const lines: number[] = [];
	let quoteProblem: QuoteProblem | undefined;
	let line = 1;
	// One quote behind blanks that is never closed is one sign too many; looking on for each would take for ever.
	let looksPastBlanks = true;
	for (let start = 0; start < text.length;) {
		const record = recordAt(text, start, delimiter, looksPastBlanks);
		looksPastBlanks &&= !record.isLeftOpen;
		if (record.problem !== undefined)
			quoteProblem ??= { ...record.problem, line: line + lineEndsIn(text, start, record.problem.at) };
		records.push(without(text, start, record.end, record.blanks));
		lines.push(line);
		const next = record.end + lineEndAt(text, record.end).length;
		line += lineEndsIn(text, start, next);
		start = next;
	}
	return { text: records.join('\n'), lines, quoteProblem };
}

/** A part of a text but for some stretches of it. */
function without(text: string, start: number, end: number, stretches: readonly (readonly [number, number])[]): string {
	const parts: string[] = [];
	let from = start;
	for (const [left, right] of stretches) {
		parts.push(text.slice(from, left));
		from = right;
	}
	return parts.join('') + text.slice(from, end);
}

/**
 * The end of the record that begins at a place, the blanks in it round quoted fields, which some programs write and
 * which belong to none, and where it first breaks the rules of quoting.
 */
function recordAt(text: string, start: number, delimiter: string, looksPastBlanks: boolean) {
	let isLeftOpen = false;
	const blanks: [number, number][] = [];
	let problem: { readonly at: number; readonly field: number; readonly problem: string } | undefined;
	let at = start;
	for (let field = 0; ; field++) {
		const opened = looksPastBlanks && !isLeftOpen ? at + blanksAt(text, at) : at;
		if (opened > at && text[opened] === quote) {
			const { problem: breach, end } = quotedField(text, opened, delimiter);
			isLeftOpen = breach !== undefined && end === text.length;
			if (breach === undefined) {
				blanks.push([at, opened]);
				at = opened;
			}
		}
		if (text[at] === quote) {
			const quoted = quotedField(text, at, delimiter);
			if (quoted.problem !== undefined) problem ??= { at, field, problem: quoted.problem };
			else if (quoted.close < quoted.end) blanks.push([quoted.close, quoted.end]);
			at = quoted.end;
		} else at = unquotedEnd(text, at, delimiter);
		if (text[at] !== delimiter) return { end: at, blanks, isLeftOpen, problem };
		at++;
	}
}

/** Where a quoted field is closed, its end past the blanks behind that, and what is wrong with it. */
function quotedField(
	text: string,
	start: number,
	delimiter: string,
): { close: number; end: number; problem: string | undefined } {
	let close = text.indexOf(quote, start + 1);
	while (close >= 0 && text[close + 1] === quote) close = text.indexOf(quote, close + 2); // a quote written twice
	if (close < 0) return { close: text.length, end: text.length, problem: 'a quote is opened and never closed' };
	close++;
	const end = close + blanksAt(text, close);
	if (end >= text.length || text[end] === delimiter || lineEndAt(text, end) !== '')
		return { close, end, problem: undefined };
	return {
		close,
		end: unquotedEnd(text, end, delimiter),
		problem: 'text follows a closing quote (inside quotes, a quote is written twice)',
	};
}

function blanksAt(text: string, start: number): number {
	let end = start;
	while (text[end] === ' ') end++;
	return end - start;
}

function unquotedEnd(text: string, start: number, delimiter: string): number {
	let end = start;
	while (end < text.length && text[end] !== delimiter && text[end] !== '\n' && text[end] !== '\r') end++;
	return end;
}

function lineEndAt(text: string, at: number): string {
	if (text[at] === '\r') return text[at + 1] === '\n' ? '\r\n' : '\r';
	return text[at] === '\n' ? '\n' : '';
}

function lineEndsIn(text: string, start: number, end: number): number {
	let count = 0;
	for (let at = start; at < end;) {
		const lineEnd = lineEndAt(text, at);
		if (lineEnd !== '') count++;
		at += lineEnd.length || 1;
	}
	return count;
}
