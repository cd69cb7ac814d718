import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeText } from '../../../src/files/decodeText.ts';
import { encode, encodeWindows, encodings } from './encode.ts';

const text = 'title,note\r\nBlüte,„Ansicht“ 5 € – ½ ″\r\n漢字,Привет\r\n';

test.each(encodings)('%s', (encoding) => expect(decodeText(encode(text, encoding))).toEqual({ value: text }));

test.each(['utf-16le', 'utf-16be'] as const)(
	'%s without its mark, nearly all of it in letters of two bytes',
	(encoding) => {
		const far = `title,note\r\n${'桟橋,干潮の塩の道\r\n潮汐,港の部屋の展示\r\n'.repeat(20)}`;
		expect(decodeText(encode(far, encoding))).toEqual({ value: far });
	},
);

test('Windows-1252, with the signs that Latin-1 does not have', () => {
	const windows = 'title;note\r\nBlüte;„Ansicht“ 5 € – ½ Šž\r\n';
	expect(decodeText(encodeWindows(windows))).toEqual({ value: windows });
});

test('an accent alone is enough to tell Windows-1252 from UTF-8', () => {
	expect(decodeText(Uint8Array.of(0x63, 0x61, 0x66, 0xe9))).toEqual({ value: 'café' });
	expect(decodeText(Uint8Array.of(0x63, 0x61, 0x66, 0xc3, 0xa9))).toEqual({ value: 'café' });
});

test('a zero byte that strayed into UTF-8 is a mark, and makes it no UTF-16', () => {
	const strayed = 'title,note\nBlüte\0,b\nQuay,c\n';
	expect(decodeText(encode(strayed, 'utf-8'))).toEqual({ value: strayed.replace('\0', '\ufffd') });
});

describe('what is not text', () => {
	test.each<[string, number[]]>([
		[
			'the first bytes of a PNG',
			[0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d, 0x49, 0x48, 0x44, 0x52],
		],
		['the first bytes of a JPEG', [0xff, 0xd8, 0xff, 0xe0, 0, 0x10, 0x4a, 0x46, 0x49, 0x46, 0, 1]],
		['the first bytes of a ZIP, which a workbook is', [0x50, 0x4b, 3, 4, 0x14, 0, 6, 0, 8, 0, 0, 0, 0x21, 0]],
		['zero bytes', [0, 0, 0, 0]],
	])('%s', (_, bytes) => expect(decodeText(Uint8Array.from(bytes))).toEqual({ problem: 'the file is not text' }));
});

test('nothing is an empty text', () => expect(decodeText(new Uint8Array())).toEqual({ value: '' }));

test('no bytes make it throw', () =>
	fc.assert(
		fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
			const reading = decodeText(bytes);
			expect('value' in reading || reading.problem !== '').toBe(true);
		}),
		{ numRuns: 1000 },
	));
