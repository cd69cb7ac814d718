import type { Reading } from '../core/length/reading.ts';

/** The encodings in which a file of rows is read. */
export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** Control characters that no text has: all but tab, line ends and form feed. */
// eslint-disable-next-line no-control-regex -- they are what is looked for
const control = /[\0-\x08\x0b\x0e-\x1f\x7f]/;

/**
 * The text of a file: UTF-8 or UTF-16, with a byte order mark or without, else Windows-1252.
 * @returns a problem if the bytes are no text (a picture, say)
 */
export function decodeText(bytes: Uint8Array): Reading<string> {
	const marked = encodingOfMark(bytes);
	if (marked !== undefined) return decode(bytes, marked) ?? notText;
	const unmarked = utf16WithoutMark(bytes);
	if (unmarked !== undefined) return decode(bytes, unmarked) ?? notText;
	if (bytes.includes(0)) return notText;
	const utf8 = decode(bytes, 'utf-8');
	if (utf8 !== undefined) return utf8;
	const windows = decode(bytes, 'windows-1252');
	return windows === undefined || control.test(windows.value) ? notText : windows;
}

const notText = { problem: 'the file is not text' };

/** The text in an encoding, without its byte order mark; undefined where the bytes are not of that encoding. */
function decode(bytes: Uint8Array, encoding: Encoding): { readonly value: string } | undefined {
	try {
		return { value: new TextDecoder(encoding, { fatal: true }).decode(bytes) };
	} catch {
		return undefined;
	}
}

function encodingOfMark([first, second, third]: Uint8Array): Encoding | undefined {
	if (first === 0xff && second === 0xfe) return 'utf-16le';
	if (first === 0xfe && second === 0xff) return 'utf-16be';
	return first === 0xef && second === 0xbb && third === 0xbf ? 'utf-8' : undefined;
}

/**
 * UTF-16 shows by its zero bytes: each letter, digit, delimiter and line end of a Western text has one, always on the
 * same side, and the file has some of these whatever its language.
 */
function utf16WithoutMark(bytes: Uint8Array): Encoding | undefined {
	if (bytes.length === 0 || bytes.length % 2 !== 0) return undefined;
	let [inFirst, inSecond] = [0, 0];
	for (let at = 0; at < bytes.length; at += 2) {
		if (bytes[at] === 0) inFirst++;
		if (bytes[at + 1] === 0) inSecond++;
	}
	const fewest = bytes.length / 2 / 20;
	if (inSecond > fewest && inFirst === 0) return 'utf-16le';
	return inFirst > fewest && inSecond === 0 ? 'utf-16be' : undefined;
}
