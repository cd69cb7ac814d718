/**
 * Cells as the text that spreadsheets put on the clipboard: tabs between cells, a line a row. A cell with a tab, a line
 * end or a quotation mark in it stands in quotation marks. Each line is ended, so that blank cells at the end are not
 * lost; one cell alone is its bare text, to be pasted into any field.
 */
export function writeClipboard(cells: readonly (readonly string[])[]): string {
	const lines = cells.map((row) => row.map(quoted).join('\t'));
	return cells.length === 1 && cells[0]!.length === 1 ? lines[0]! : lines.map((line) => `${line}\n`).join('');
}

const quoted = (text: string): string => (/["\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/**
 * The cells of a text from the clipboard, whatever its line ends; a line end after the last row is not a row. A mark
 * that only begins a cell, or stands within it, is an inch mark and stays. Rows may be of different lengths.
 */
export function readClipboard(text: string): readonly (readonly string[])[] {
	const rows: string[][] = [[]];
	let place = 0;
	for (;;) {
		const cell = cellAt(text, place);
		rows.at(-1)!.push(cell.text);
		const end = lineEnd.exec(text.slice(cell.end, cell.end + 2))?.[0];
		place = cell.end + (end?.length ?? 1);
		if (cell.end >= text.length || (end !== undefined && place >= text.length)) return rows;
		if (end !== undefined) rows.push([]);
	}
}

const lineEnd = /^(?:\r\n|\n|\r)/;
const inQuotes = /"([^"]*(?:""[^"]*)*)"(?=[\t\r\n]|$)/y;
const bare = /[^\t\r\n]*/y;

function cellAt(text: string, start: number): { readonly text: string; readonly end: number } {
	inQuotes.lastIndex = start;
	const found = inQuotes.exec(text);
	if (found) return { text: found[1]!.replaceAll('""', '"'), end: start + found[0].length };
	bare.lastIndex = start;
	const plain = bare.exec(text)![0];
	return { text: plain, end: start + plain.length };
}
