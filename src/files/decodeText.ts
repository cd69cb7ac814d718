import type { Reading } from '../core/length/reading.ts';

type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be';

/** Control characters that no text has: all but tab, line ends, form feed and record separator. */
// oxlint-disable-next-line no-control-regex -- they are what is looked for
const control = /[\0-\x08\x0e-\x1d\x1f\x7f]/g;

/**
 * The text of a file: UTF-8 or UTF-16, with a byte order mark or without, else Windows-1252. A zero byte here or there
 * in UTF-8 is read as the mark for a sign that is none, and so is a last sign in which the file breaks off.
 * @returns a problem if the bytes are no text (a picture, say)
 */
export function decodeText(bytes: Uint8Array): Reading<string> {
	const marked = encodingOfMark(bytes);
	if (marked !== undefined) return decode(bytes, marked) ?? notText;
	const utf8 = decode(bytes, 'utf-8', hasSignsOfUtf8);
	if (utf8 !== undefined && !bytes.includes(0)) return utf8;
	const strayed = utf8 && likelyText({ value: utf8.value.replaceAll('\0', noSign) }, utf8.value);
	if (strayed !== undefined && 'value' in strayed) return strayed;
	const unmarked = utf16WithoutMark(bytes);
	if (unmarked !== undefined) return likelyText(decode(bytes, unmarked));
	return bytes.includes(0) ? notText : likelyText({ value: decodeWindows(bytes) });
}

const notText = { problem: 'the file is not text' };

/**
 * A guess at the encoding holds only where it gives next to none of the signs that a text does not have.
 * @param asRead the text with those signs, where the guess has put others in their place
 */
function likelyText(text: { readonly value: string } | undefined, asRead = text?.value): Reading<string> {
	const controls = asRead?.match(control)?.length ?? 0;
	return text === undefined || controls > Math.max(1, text.value.length / 50) ? notText : text;
}

/** What stands in the place of a sign that is none. */
const noSign = '\ufffd';

/**
 * The text in an encoding, without its byte order mark; undefined where the bytes are not of that encoding.
 * @param mayBreakOff whether a text may end within a sign
 */
function decode(
	bytes: Uint8Array,
	encoding: Encoding,
	mayBreakOff: (text: string) => boolean = () => true,
): { readonly value: string } | undefined {
	try {
		const decoder = new TextDecoder(encoding, { fatal: true });
		const whole = decoder.decode(bytes, { stream: true });
		try {
			decoder.decode();
		} catch {
			return mayBreakOff(whole) ? { value: `${whole}${noSign}` } : undefined;
		}
		return { value: whole };
	} catch {
		return undefined;
	}
}

/** A first byte of UTF-8 at the end of a file is a letter of Windows-1252 where no sign of UTF-8 stands before it. */

const hasSignsOfUtf8 = (text: string): boolean => /[^\0-\x7f]/.test(text);

/** Windows-1252 from 80 to 9F; five of its bytes stand for nothing and stay as they are. */
const windowsSigns = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

/** Decoded here, since some engines take this encoding for Latin-1, which has controls for quotes and dashes. */
function decodeWindows(bytes: Uint8Array): string {
	const signs: string[] = [];
	for (const byte of bytes)
		signs.push(byte >= 0x80 && byte <= 0x9f ? windowsSigns[byte - 0x80]! : String.fromCharCode(byte));
	return signs.join('');
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
	if (bytes.length < 2) return undefined;
	let [inFirst, inSecond] = [0, 0];
	for (let at = 0; at + 1 < bytes.length; at += 2) {
		if (bytes[at] === 0) inFirst++;
		if (bytes[at + 1] === 0) inSecond++;
	}
	const fewest = bytes.length / 2 / 20;
	if (inSecond > fewest && inSecond > 4 * inFirst) return 'utf-16le';
	return inFirst > fewest && inFirst > 4 * inSecond ? 'utf-16be' : undefined;
}
