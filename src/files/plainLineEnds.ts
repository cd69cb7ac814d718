/** What ends the lines of some old systems and programs: vertical tab, form feed, record separator, NEL, LS and PS. */
const otherEnds = /[\v\f\x1e\u0085\u2028\u2029]/g; // oxlint-disable-line no-control-regex -- they are what is looked for

/** A quoted cell, with whatever stands in it. */
const quotedCell = /"[^"]*"/g;

/**
 * A text whose lines end with a line feed or carriage return, as they do elsewhere. Where they all end with another
 * sign, each of them outside quotes becomes a line feed; in other texts such a sign is part of a cell.
 */
export function withPlainLineEnds(text: string): string {
	if (text.search(otherEnds) < 0) return text;
	if (/[\r\n]/.test(text.replace(quotedCell, '').trimEnd())) return text;
	let plain = '';
	let from = 0;
	for (const { index, 0: cell } of text.matchAll(quotedCell)) {
		plain += text.slice(from, index).replace(otherEnds, '\n') + cell;
		from = index + cell.length;
	}
	return plain + text.slice(from).replace(otherEnds, '\n');
}
