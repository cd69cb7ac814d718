const asCsv = 'Save the list as CSV where it was made, and take that file';

const noText = 'the file is not text';
const noList = 'the file is not a list of rows';

/** Kinds of file that are no list, by how they begin. */
const kinds: readonly (readonly [begins: RegExp, problem: string])[] = [
	[/^PK[^ -~]{2}/, `${noText}: it is a packed file, as workbooks are. ${asCsv}`],
	[/^\xd0\xcf[^ -~]\xe0/, `${noText}: it is an old workbook or document. ${asCsv}`],
	[/^%PDF-/, `${noText}: it is a PDF. ${asCsv}`],
	[
		/^(?:\x89PNG|\xff\xd8\xff|GIF8|BM.{4}\0\0\0\0|RIFF.{4}WEBP|II\*\0|MM\0\*|.{4}ftyp)/s,
		`${noText}: it is a picture or a film`,
	],
	[/^\{\\rtf/, `${noList}: it is a text with formatting. ${asCsv}`],
	[/^(?:\xef\xbb\xbf)?\s*<(?:!doctype|html|head|body|table|meta)\b/i, `${noList}: it is a web page. ${asCsv}`],
	[/^(?:\xef\xbb\xbf)?\s*<\?xml\b/, `${noList}: it is XML. ${asCsv}`],
	[/^(?:\xef\xbb\xbf)?\s*\[\s*(?:[{[\]]|"[^"\n]*"\s*[,\]])/, `${noList}: it is JSON, but no show of this app`],
];

/**
 * Why a file is no list of rows, by how it begins.
 * @returns what it is and what to do, as a sentence without its place; undefined where it may be a list
 */
export function problemOfKind(file: Uint8Array | string): string | undefined {
	const start = typeof file === 'string' ? file.slice(0, 400) : String.fromCharCode(...file.subarray(0, 400));
	return kinds.find(([begins]) => begins.test(start))?.[1];
}

/** The most that a file may hold, in bytes or signs; 20,000 prints with all that is worked out are a quarter of it. */
export const mostOfFile = 50_000_000;

/** A sentence for a file that holds more than a list of prints does; undefined where it does not. */
export const tooLarge = (size: number): string | undefined =>
	size > mostOfFile
		? `it holds ${Math.round(size / 1e6)} MB, and a list or a show at most ${mostOfFile / 1e6}: is it the right file?`
		: undefined;
