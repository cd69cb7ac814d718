import type { Reading } from '../core/length/reading.ts';
import type { Pixels } from '../core/length/parsePixels.ts';
import { checksum } from './checksum.ts';
import { type ExifOrientation, exifOrientation, tiffPixels } from './exifOrientation.ts';

/** What a picture file says of itself in its first bytes. Which of the kinds a browser reads is for it to say. */
export interface PictureHeader {
	readonly kind: 'JPEG' | 'PNG' | 'WebP' | 'GIF' | 'AVIF' | 'TIFF' | 'HEIC' | 'other';
	/** As they are stored, before the orientation; undefined where only the browser can say. */
	readonly stored: Pixels | undefined;
	/** How it is to be turned, and where that stands; undefined: it lies as it is stored. */
	readonly exif: ExifOrientation | undefined;
}

/** The most pixels that are opened: more would need more memory than a tablet gives a page. */
export const mostMegapixels = 250;

const isSvg = 'an SVG is a drawing that may hold programs, and is not opened as a picture. Export it as PNG or JPEG';
const noPicture = 'it is no picture';
const broken = 'it is damaged: its size cannot be read';

/** Reads what a picture file says of itself, whatever its name ends in. @returns a problem where it is none */
export function pictureHeader(bytes: Uint8Array): Reading<PictureHeader> {
	return bytes.length === 0 ? { problem: 'it is empty' } : headerOf(bytes);
}

/** A header of a picture of a size, unless it has none or too much of it. */
function found(value: PictureHeader, size: Pixels | undefined = value.stored): Reading<PictureHeader> {
	if (size && (size.width === 0 || size.height === 0)) return { problem: broken };
	const problem = size && pixelsProblem(size);
	return problem === undefined ? { value } : { problem };
}

/** One of which only the browser can say how large it is and how it lies. */
const unknown = (size?: Pixels, kind: PictureHeader['kind'] = 'other'): Reading<PictureHeader> =>
	found({ kind, stored: undefined, exif: undefined }, size);

/** Why a picture of so many pixels is not opened; undefined where it is. */
export function pixelsProblem({ width, height }: Pixels): string | undefined {
	const megapixels = (width * height) / 1e6;
	return megapixels > mostMegapixels
		? `it has ${width} × ${height} pixels, ${Math.round(megapixels)} megapixels; at most ${mostMegapixels} can be opened`
		: undefined;
}

function headerOf(bytes: Uint8Array): Reading<PictureHeader> {
	const start = text(bytes, 0, 512);
	if (start.startsWith('\xff\xd8\xff')) return jpeg(bytes);
	if (start.startsWith('\x89PNG\r\n\x1a\n')) return png(bytes);
	if (/^RIFF.{4}WEBP/s.test(start)) return webp(bytes);
	if (/^GIF8[79]a/.test(start)) return gif(bytes);
	if (/^.{4}ftyp/s.test(start)) return isoMedia(bytes, start);
	if (start.startsWith('BM')) return unknown(bmpPixels(bytes));
	if (/^(?:II\*\0|MM\0\*)/.test(start)) return unknown(tiffPixels(bytes), 'TIFF');
	// JPEG XL, and cameras' own kinds of TIFF: they are pictures, whether this browser reads them or not.
	if (/^(?:ÿ\n|\0\0\0\fJXL |IIU\0|IIR[OS]|MMOR)/.test(start)) return unknown();
	if (isDrawing(bytes)) return { problem: isSvg };
	if (start.startsWith('8BPS')) return { problem: 'it is a layered file of an image editor. Export it as JPEG or PNG' };
	return { problem: start.startsWith('%PDF-') ? 'it is a PDF' : noPicture };
}

/** So far into a text its first element is looked for, in bytes. */
const drawnWithin = 1 << 16;

/**
 * Whether it is a text of marks with an SVG in it, but no web page. It is not read as XML: a pattern for all that may stand
 * before its first element can be made to try for years.
 */
function isDrawing(bytes: Uint8Array): boolean {
	// Without the zeros that UTF-16 has beside its letters, and the marks of byte order.
	const start = new TextDecoder('latin1').decode(bytes.subarray(0, drawnWithin)).replace(/^(?:ï»¿|ÿþ|þÿ)|\0/g, '');
	return (
		/^\s*<[!?\w]/.test(start) && /<(?:\w{1,30}:)?svg[\s/>]/i.test(start) && !/<(?:!doctype )?html[\s>]/i.test(start)
	);
}

/** Bytes as signs of their own, one each. */
const text = (bytes: Uint8Array, from: number, length: number): string =>
	String.fromCharCode(...bytes.subarray(from, from + length));

const view = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** The frame headers of a JPEG: of all ways of compressing, but not the tables between them (C4, C8, CC). */
const isFrame = (marker: number): boolean =>
	marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

function jpeg(bytes: Uint8Array): Reading<PictureHeader> {
	const data = view(bytes);
	let stored: Pixels | undefined;
	let exif: ExifOrientation | undefined;
	let hasExif = false;
	for (let at = 2; at + 4 <= bytes.length;) {
		const marker = bytes[at + 1]!;
		// What stands between segments is passed over, as decoders do, and so are markers without a length.
		if (bytes[at] !== 0xff || marker <= 0x01 || marker === 0xff || (marker >= 0xd0 && marker <= 0xd8)) {
			at++;
			continue;
		}
		const length = data.getUint16(at + 2);
		if (length < 2 || marker === 0xd9 || marker === 0xda) break;
		if (isFrame(marker) && at + 9 <= bytes.length)
			stored ??= { height: data.getUint16(at + 5), width: data.getUint16(at + 7) };
		// The first alone decides, as for browsers, and whatever its sixth byte is.
		if (marker === 0xe1 && !hasExif && text(bytes, at + 4, 5) === 'Exif\0') {
			hasExif = true;
			exif = exifOrientation(bytes, at + 10, at + 2 + length);
		}
		at += 2 + length;
	}
	return stored ? found({ kind: 'JPEG', stored, exif }) : { problem: broken };
}

function png(bytes: Uint8Array): Reading<PictureHeader> {
	const data = view(bytes);
	if (bytes.length < 24 || text(bytes, 12, 4) !== 'IHDR') return { problem: broken };
	const stored = { width: data.getUint32(16), height: data.getUint32(20) };
	let exif: ExifOrientation | undefined;
	// Behind the pixels, or with a checksum that is wrong, an orientation counts for nothing in browsers.
	for (let at = 8; at + 12 <= bytes.length;) {
		const end = at + 8 + data.getUint32(at);
		const type = text(bytes, at + 4, 4);
		if (type === 'IDAT' || end + 4 > bytes.length) break;
		if (type === 'eXIf') {
			if (checksum(bytes.subarray(at + 4, end)) === data.getUint32(end)) exif = exifOrientation(bytes, at + 8, end);
			break;
		}
		at = end + 4;
	}
	return found({ kind: 'PNG', stored, exif });
}

function webp(bytes: Uint8Array): Reading<PictureHeader> {
	const data = view(bytes);
	let stored: Pixels | undefined;
	let hasExif = false;
	for (let at = 12; at + 8 <= bytes.length;) {
		const type = text(bytes, at, 4);
		const length = data.getUint32(at + 4, true);
		const body = at + 8;
		if (type === 'VP8X' && body + 10 <= bytes.length)
			stored = { width: 1 + uint24(bytes, body + 4), height: 1 + uint24(bytes, body + 7) };
		else if (type === 'VP8 ' && body + 10 <= bytes.length)
			stored ??= { width: data.getUint16(body + 6, true) & 0x3fff, height: data.getUint16(body + 8, true) & 0x3fff };
		else if (type === 'VP8L' && body + 5 <= bytes.length) {
			const bits = data.getUint32(body + 1, true);
			stored ??= { width: 1 + (bits & 0x3fff), height: 1 + ((bits >>> 14) & 0x3fff) };
		} else if (type === 'EXIF') hasExif = true;
		at = body + length + (length % 2);
	}
	if (!stored) return { problem: broken };
	// Browsers differ in whether they turn it, and what they show is what people know.
	return hasExif ? unknown(stored, 'WebP') : found({ kind: 'WebP', stored, exif: undefined });
}

const uint24 = (bytes: Uint8Array, at: number): number => bytes[at]! | (bytes[at + 1]! << 8) | (bytes[at + 2]! << 16);

function gif(bytes: Uint8Array): Reading<PictureHeader> {
	if (bytes.length < 13) return { problem: broken };
	const data = view(bytes);
	const stored = { width: data.getUint16(6, true), height: data.getUint16(8, true) };
	const coloursOf = (flags: number) => (flags & 0x80 ? 3 << ((flags & 7) + 1) : 0);
	for (let at = 13 + coloursOf(bytes[10]!); at + 9 <= bytes.length;) {
		if (bytes[at] === 0x2c) {
			// The first frame, which may be larger than the screen that it is said to lie on.
			stored.width = Math.max(stored.width, data.getUint16(at + 1, true) + data.getUint16(at + 5, true));
			stored.height = Math.max(stored.height, data.getUint16(at + 3, true) + data.getUint16(at + 7, true));
		}
		if (bytes[at] !== 0x21) break;
		for (at += 2; at < bytes.length && bytes[at] !== 0;) at += 1 + bytes[at]!;
		at++;
	}
	return found({ kind: 'GIF', stored, exif: undefined });
}

/** The pixels of a BMP, also of the old kind with a header of 12 bytes. */
function bmpPixels(bytes: Uint8Array): Pixels | undefined {
	if (bytes.length < 26) return undefined;
	const data = view(bytes);
	return data.getUint32(14, true) === 12
		? { width: data.getUint16(18, true), height: data.getUint16(20, true) }
		: { width: Math.abs(data.getInt32(18, true)), height: Math.abs(data.getInt32(22, true)) };
}

/** So far into a file of that family the sizes of its pictures stand, as a rule. */
const sizesWithin = 1 << 16;

/**
 * AVIF and its family. Which of the sizes in it is the picture's, and how that is turned, is for the browser to say; here
 * only whether one of them is too large to be opened.
 */
function isoMedia(bytes: Uint8Array, start: string): Reading<PictureHeader> {
	const data = view(bytes);
	// Its main brand and those that it agrees with; what stands between them is a version.
	const brands = start.slice(8, Math.min(data.getUint32(0), 512));
	const isStill = (most: RegExp) => brands.match(/.{4}/gs)?.some((brand) => most.test(brand)) ?? false;
	if (!isStill(/^(?:avi[fs]|mif1|miaf|msf1|hei[cx]|hev[cx]|crx )$/)) return { problem: `${noPicture}: it is a film` };
	const most = Math.min(bytes.length - 15, sizesWithin);
	for (let at = 4; at < most; at++) {
		if (bytes[at] !== 0x69 || text(bytes, at - 4, 12) !== '\0\0\0\x14ispe\0\0\0\0') continue; // a box, not a word
		const problem = pixelsProblem({ width: data.getUint32(at + 8), height: data.getUint32(at + 12) });
		if (problem !== undefined) return { problem };
	}
	if (isStill(/^avi[fs]$/)) return unknown(undefined, 'AVIF');
	return unknown(undefined, isStill(/^(?:hei[cx]|hev[cx])$/) ? 'HEIC' : 'other');
}
