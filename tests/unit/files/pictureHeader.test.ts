import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pictureHeader } from '../../../src/files/pictureHeader.ts';
import { uprightMatrix, uprightSize } from '../../../src/workers/upright.ts';
import {
	animatedGif,
	paintedAvif,
	plainJpeg,
	plainPng,
	plainTiff,
	pngHeader,
	stillHeader,
	withComment,
	withOrientation,
} from '../../browser/pictures/pictureFiles.ts';

const headerOf = (bytes: Uint8Array) => {
	const read = pictureHeader(bytes);
	return 'problem' in read
		? read.problem
		: [read.value.kind, read.value.stored?.width, read.value.stored?.height, read.value.exif?.value ?? 1].join(' ');
};

const tooLarge = 'it has 30000 × 20000 pixels, 600 megapixels; at most 250 can be opened';
const jpeg = plainJpeg(40, 24);
const ascii = (text: string) => Uint8Array.from(text, (sign) => sign.charCodeAt(0));
const latin = (bytes: Uint8Array) => String.fromCharCode(...bytes);
/** A file with some of its bytes replaced, which must be in it. */
function changed(bytes: Uint8Array, from: string, to: string): Uint8Array {
	const text = latin(bytes);
	if (!text.includes(from)) throw new Error('the sample has changed');
	return ascii(text.replace(from, to));
}
/** The segment with an orientation. */
const exifPart = (orientation: number) => withOrientation(jpeg, orientation).slice(2, -(jpeg.length - 2));
/** A JPEG whose first segment stands behind its frame. */
function moved(bytes: Uint8Array): Uint8Array {
	const text = latin(bytes);
	const first = text.slice(2, text.length - (jpeg.length - 2));
	return ascii(text.replace(first, '').replace('\xff\xda', `${first}\xff\xda`));
}
const turnedPng = plainPng(30, 20, { orientation: 5 });
function behindPixels(bytes: Uint8Array): Uint8Array {
	const text = latin(bytes);
	const from = text.indexOf('eXIf') - 4;
	const chunk = text.slice(from, from + 12 + 26);
	return ascii(text.replace(chunk, '').replace('\0\0\0\0IEND', `${chunk}\0\0\0\0IEND`));
}
const gifFrame = (width: number, height: number) =>
	changed(
		animatedGif(),
		'\x2c\0\0\0\0\x02\0\x01\0',
		`\x2c\0\0\0\0${String.fromCharCode(width)}\0${String.fromCharCode(height)}\0`,
	);
function bmp(width: number, height: number): Uint8Array {
	const bytes = new Uint8Array(54);
	bytes.set(ascii('BM'));
	const data = new DataView(bytes.buffer);
	data.setUint32(14, 40, true);
	data.setInt32(18, width, true);
	data.setInt32(22, height, true);
	return bytes;
}
function tiff(width: number, height: number): Uint8Array {
	const bytes = new Uint8Array(38);
	bytes.set(ascii('II*\0\x08\0\0\0\x02'));
	const data = new DataView(bytes.buffer);
	for (const [place, value] of [width, height].entries()) {
		data.setUint16(10 + place * 12, 256 + place, true);
		data.setUint16(12 + place * 12, 4, true);
		data.setUint32(14 + place * 12, 1, true);
		data.setUint32(18 + place * 12, value, true);
	}
	return bytes;
}
const avif = (brand: string, inside?: string) =>
	ascii(
		`\0\0\0\x18ftyp${brand}\0\0\0\0${inside === undefined ? 'nonenone' : 'miafavif'}${inside ?? ''}${'\0'.repeat(20)}`,
	);

test.each([
	['JPEG', plainJpeg(40, 24), 'JPEG 40 24 1'],
	['four inks', plainJpeg(40, 24, { components: 4 }), 'JPEG 40 24 1'],
	['progressive', plainJpeg(41, 23, { isProgressive: true }), 'JPEG 41 23 1'],
	['turned', withOrientation(plainJpeg(40, 24), 6), 'JPEG 40 24 6'],
	['turned, the other byte order', withOrientation(plainJpeg(40, 24), 8, true), 'JPEG 40 24 8'],
	['an orientation that is none', withOrientation(plainJpeg(40, 24), 9), 'JPEG 40 24 1'],
	['of two orientations the first, though it is none', withOrientation(withOrientation(jpeg, 6), 9), 'JPEG 40 24 1'],
	['an orientation behind the frame', moved(withOrientation(jpeg, 6)), 'JPEG 40 24 6'],
	['an orientation behind the scan', Uint8Array.from([...jpeg, ...exifPart(6)]), 'JPEG 40 24 1'],
	['another sixth byte', changed(withOrientation(jpeg, 6), 'Exif\0\0', 'Exif\0\xff'), 'JPEG 40 24 6'],
	['another magic number', changed(withOrientation(jpeg, 6), 'MM\0\x2a', 'MM\0\x2b'), 'JPEG 40 24 1'],
	[
		'two orientations in one',
		changed(withOrientation(jpeg, 6), '\0\0\0\x01\0\x06', '\0\0\0\x02\0\x06'),
		'JPEG 40 24 1',
	],
	['zeros between its parts', changed(jpeg, '\xff\xc0', '\0\0\0\xff\xc0'), 'JPEG 40 24 1'],
	['of two orientations the first', withOrientation(withOrientation(plainJpeg(40, 24), 3), 5), 'JPEG 40 24 5'],
	['a comment that looks like an end', withComment(plainJpeg(40, 24), '\xff\xd9\xff\xc0'), 'JPEG 40 24 1'],
	['PNG', plainPng(30, 20), 'PNG 30 20 1'],
	['turned PNG', plainPng(30, 20, { orientation: 5 }), 'PNG 30 20 5'],
	['PNG turned behind its pixels', behindPixels(plainPng(30, 20, { orientation: 5 })), 'PNG 30 20 1'],
	['PNG cut off in its orientation', plainPng(30, 20, { orientation: 5 }).slice(0, 67), 'PNG 30 20 1'],
	['PNG that lies about its orientation', changed(turnedPng, '\0\0\0\x1aeXIf', '\0\0\x01\x1aeXIf'), 'PNG 30 20 1'],
	['PNG with a wrong checksum', changed(turnedPng, '\0\x05\0\0\0\0\0\0', '\0\x06\0\0\0\0\0\0'), 'PNG 30 20 1'],
	['GIF', animatedGif(), 'GIF 2 1 1'],
	['GIF with a larger frame', gifFrame(60, 40), 'GIF 60 40 1'],
	['GIF of no screen', animatedGif().fill(0, 6, 10), 'GIF 2 1 1'],
	['BMP', bmp(30, -20), 'other   1'],
	['BMP too large', bmp(30_000, -20_000), tooLarge],
	['TIFF', tiff(30, 20), 'TIFF   1'],
	['a whole TIFF', plainTiff(30, 20), 'TIFF   1'],
	['TIFF too large', tiff(30_000, 20_000), tooLarge],
	['AVIF with a word in a caption', avif('avif', 'they whisperedABCDEFGH12'), 'AVIF   1'],
	['AVIF too large', avif('avif', '\0\0\0\x14ispe\0\0\0\0\0\0\x75\x30\0\0\x4e\x20'), tooLarge],
	['AVIF by its second brand', avif('MA1A', ''), 'AVIF   1'],
	['a real AVIF', paintedAvif(1), 'AVIF   1'],
	['HEIC', stillHeader('heic', 30, 20), 'HEIC   1'],
	['HEIC too large', stillHeader('heix', 30_000, 20_000), tooLarge],
	['a camera’s own', avif('crx '), 'other   1'],
	['a film', avif('isom'), 'it is no picture: it is a film'],
	['JPEG XL', ascii('\xff\x0a\0\0'), 'other   1'],
	['JPEG XL in boxes', ascii('\0\0\0\x0cJXL \r\n\x87\n'), 'other   1'],
	['a camera’s TIFF', ascii('IIU\0\0\0'), 'other   1'],
	['another camera’s', ascii('IIRO\0\0'), 'other   1'],
	[
		'larger than is opened',
		pngHeader(30_000, 20_000),
		'it has 30000 × 20000 pixels, 600 megapixels; at most 250 can be opened',
	],
	['of no size', pngHeader(0, 20), 'it is damaged: its size cannot be read'],
])('%s', (_what, bytes, expected) => {
	expect(headerOf(bytes)).toBe(expected);
});

const svg = (text: string) => new TextEncoder().encode(text);
const utf16 = (text: string) => Uint8Array.from([0xff, 0xfe, ...[...text].flatMap((sign) => [sign.charCodeAt(0), 0])]);

test.each([
	['plain', svg('<svg xmlns="http://www.w3.org/2000/svg"/>')],
	['without a name space', svg('<svg/>')],
	['with its own prefix', svg('<?xml version="1.0"?>\n<svg:svg xmlns:svg="http://www.w3.org/2000/svg"/>')],
	['in two bytes a sign', utf16('<?xml version="1.0" encoding="UTF-16"?><svg></svg>')],
	['behind a long comment', svg(`\ufeff<!-- ${'words '.repeat(900)}--><svg></svg>`)],
	['behind entities', svg('<!DOCTYPE svg [ <!ENTITY a "<b>"> <!ENTITY c "d"> ]><svg></svg>')],
	['behind many comments', svg(`${'<!---->'.repeat(5000)}<svg></svg>`)],
])('a drawing, %s, is named as one', (_what, bytes) => {
	expect(headerOf(bytes)).toMatch(/^an SVG is a drawing/);
});

test.each([
	['comments that lead nowhere', svg(`${'<!---->'.repeat(70)}x`)],
	['a web page with a drawing in it', svg('<!doctype html><p><svg></svg>')],
	['words on one', svg('use <svg> here')],
])('%s: no picture', (_what, bytes) => {
	expect(headerOf(bytes)).toBe('it is no picture');
});

test('whatever the bytes, it says what they are or what is wrong', () => {
	const samples = [
		plainJpeg(8, 8),
		withOrientation(plainJpeg(8, 8), 6),
		plainPng(8, 8, { orientation: 3 }),
		animatedGif(),
	];
	const harmed = fc
		.tuple(fc.constantFrom(...samples), fc.array(fc.tuple(fc.nat(), fc.nat(255)), { maxLength: 8 }), fc.nat(400))
		.map(([sample, changes, length]) => {
			const bytes = sample.slice(0, length);
			for (const [at, value] of changes) if (bytes.length > 0) bytes[at % bytes.length] = value;
			return bytes;
		});
	fc.assert(
		fc.property(fc.oneof(harmed, fc.uint8Array({ maxLength: 64 })), (bytes) => {
			const read = pictureHeader(bytes);
			expect('problem' in read ? read.problem : read.value.kind).not.toBe('');
		}),
	);
});

test.each([1, 2, 3, 4, 5, 6, 7, 8])('orientation %i fills its canvas, no more and no less', (orientation) => {
	const [width, height] = [30, 20];
	const [a, b, c, d, e, f] = uprightMatrix(orientation, width, height);
	const corners = [0, width].flatMap((x) => [0, height].map((y) => [a * x + c * y + e, b * x + d * y + f] as const));
	const size = uprightSize(orientation, width, height);
	expect([...new Set(corners.map(([x]) => x))].sort((m, n) => m - n)).toEqual([0, size.width]);
	expect([...new Set(corners.map(([, y]) => y))].sort((m, n) => m - n)).toEqual([0, size.height]);
});
