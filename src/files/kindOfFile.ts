const asCsv = 'Save the list as CSV where it was made, and open that file';

const noText = 'the file is not text';
const noList = 'the file is not a list of rows';

type Kind = readonly [begins: RegExp, problem: string];

/** Kinds of file that are no text, by their first bytes. */
const kindsOfBytes: readonly Kind[] = [
	[
		/^PK[^ -~]{2}.{26}(?:show\.json|pictures\/)/s,
		`${noText}: it is a show packed with its pictures. Save the show without them, and open that file`,
	],
	[/^PK[^ -~]{2}/, `${noText}: it is a packed file, as workbooks are. ${asCsv}`],
	[/^\xd0\xcf[^ -~]\xe0/, `${noText}: it is an old workbook or document. ${asCsv}`],
	[/^%PDF-/, `${noText}: it is a PDF. ${asCsv}`],
	[
		/^(?:\x89PNG|\xff\xd8\xff|GIF8|BM.{4}\0\0\0\0|RIFF.{4}WEBP|II\*\0|MM\0\*|.{4}ftyp)/s,
		`${noText}: it is a picture or a film`,
	],
];

/** Kinds of text that are no list, by how they begin. */
const kindsOfText: readonly Kind[] = [
	[/^\{\\rtf/, `${noList}: it is a text with formatting. ${asCsv}`],
	[/^\s*<(?:!doctype|html|head|body|table|meta)\b/i, `${noList}: it is a web page. ${asCsv}`],
	[/^\s*<\?xml\b/, `${noList}: it is XML. ${asCsv}`],
	[/^\s*\[\s*(?:[{[\]]|"[^"\n]*"\s*[,\]])/, `${noList}: it is JSON, but no show of this app`],
];

/** As much of a file as shows its kind. */
const mostLookedAt = 400;

/**
 * Why a file is no text, by its first bytes.
 * @returns what it is and what to do, as a sentence without its place; undefined where it may be a text
 */
export const kindOfBytes = (file: Uint8Array): string | undefined =>
	problemOf(String.fromCharCode(...file.subarray(0, mostLookedAt)), kindsOfBytes);

/** Why a text is no list of rows, by how it begins; as `kindOfBytes`, for a text may be the inside of such a file. */
export const kindOfText = (text: string): string | undefined =>
	problemOf(text.slice(0, mostLookedAt), [...kindsOfBytes, ...kindsOfText]);

const problemOf = (start: string, kinds: readonly Kind[]): string | undefined =>
	kinds.find(([begins]) => begins.test(start))?.[1];

/** Where the device does not let a file be read. */
export const notGiven = (errorName: string): string => `this device does not give the file to read (${errorName})`;

/** The most that a file may hold, in bytes or signs; 20,000 prints with all that is worked out are a quarter of it. */
export const mostOfFile = 50_000_000;

/** A sentence for a file that holds more than a list of prints does; undefined where it does not. */
export const tooLarge = (size: number): string | undefined =>
	size > mostOfFile
		? `it holds ${Math.ceil(size / 1e6)} MB, and a list or a show at most ${mostOfFile / 1e6}: is it the right file?`
		: undefined;
