import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pictureHeader } from '../../../src/files/pictureHeader.ts';
import { uprightMatrix, uprightSize } from '../../../src/workers/upright.ts';
import {
	animatedGif,
	plainJpeg,
	plainPng,
	pngHeader,
	withComment,
	withOrientation,
} from '../../browser/pictures/pictureFiles.ts';

const headerOf = (bytes: Uint8Array) => {
	const read = pictureHeader(bytes);
	return 'problem' in read
		? read.problem
		: [read.value.kind, read.value.stored?.width, read.value.stored?.height, read.value.exif?.value ?? 1].join(' ');
};

test.each([
	['JPEG', plainJpeg(40, 24), 'JPEG 40 24 1'],
	['four inks', plainJpeg(40, 24, { components: 4 }), 'JPEG 40 24 1'],
	['progressive', plainJpeg(41, 23, { isProgressive: true }), 'JPEG 41 23 1'],
	['turned', withOrientation(plainJpeg(40, 24), 6), 'JPEG 40 24 6'],
	['turned, the other byte order', withOrientation(plainJpeg(40, 24), 8, true), 'JPEG 40 24 8'],
	['an orientation that is none', withOrientation(plainJpeg(40, 24), 9), 'JPEG 40 24 1'],
	['of two orientations the first', withOrientation(withOrientation(plainJpeg(40, 24), 3), 5), 'JPEG 40 24 5'],
	['a comment that looks like an end', withComment(plainJpeg(40, 24), '\xff\xd9\xff\xc0'), 'JPEG 40 24 1'],
	['PNG', plainPng(30, 20), 'PNG 30 20 1'],
	['turned PNG', plainPng(30, 20, { orientation: 5 }), 'PNG 30 20 5'],
	['GIF', animatedGif(), 'GIF 2 1 1'],
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
	const changed = fc
		.tuple(fc.constantFrom(...samples), fc.array(fc.tuple(fc.nat(), fc.nat(255)), { maxLength: 8 }), fc.nat(400))
		.map(([sample, changes, length]) => {
			const bytes = sample.slice(0, length);
			for (const [at, value] of changes) if (bytes.length > 0) bytes[at % bytes.length] = value;
			return bytes;
		});
	fc.assert(
		fc.property(fc.oneof(changed, fc.uint8Array({ maxLength: 64 })), (bytes) => {
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
