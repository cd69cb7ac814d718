/** The encodings in which the tests write a file, each with a byte order mark or without. */
export const encodings = ['utf-8', 'utf-8 bom', 'utf-16le', 'utf-16le bom', 'utf-16be', 'utf-16be bom'] as const;

/** An encoding, with its byte order mark if it has one. */
export type TestEncoding = (typeof encodings)[number];

/** The bytes of a text in an encoding. */
export function encode(text: string, encoding: TestEncoding): Uint8Array {
	const marked = encoding.endsWith('bom') ? `\ufeff${text}` : text;
	if (encoding.startsWith('utf-8')) return new TextEncoder().encode(marked);
	const bytes = new DataView(new ArrayBuffer(marked.length * 2));
	for (let at = 0; at < marked.length; at++)
		bytes.setUint16(at * 2, marked.charCodeAt(at), encoding.startsWith('utf-16le'));
	return new Uint8Array(bytes.buffer);
}

/** The signs of Windows-1252, by byte: its upper half begins with 27 signs that Latin-1 does not have. */
const upperHalf = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

/** The bytes of a text in Windows-1252. */
export const encodeWindows = (text: string): Uint8Array =>
	Uint8Array.from(text, (sign) => {
		const place = upperHalf.indexOf(sign);
		const byte = place < 0 ? sign.codePointAt(0)! : 0x80 + place;
		if (byte > 255 || (place < 0 && byte >= 0x80 && byte < 0xa0)) throw new RangeError(`not in Windows-1252: ${sign}`);
		return byte;
	});
