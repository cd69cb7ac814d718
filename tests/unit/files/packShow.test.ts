import { createHash } from 'node:crypto';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { kindOfBytes } from '../../../src/files/kindOfFile.ts';
import { imageEntry, mostPacked, type PackedPicture, packer, tooMuchToPack } from '../../../src/files/packShow.ts';
import { unpackShow } from '../../../src/files/unpackShow.ts';
import { plainPng } from '../../browser/pictures/pictureFiles.ts';

const hashOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
const image = (width: number, height: number) => ({ type: 'image/png', bytes: plainPng(width, height).slice().buffer });
const picture = (sign: string): PackedPicture => ({
	hash: sign.repeat(64),
	names: [`${sign}.jpg`],
	pixels: { width: 6000, height: 4000 },
	preview: image(30, 20),
	small: image(16, 8),
});
const show = JSON.stringify({ format: 'evenhang-show', rows: [] });

function listOf(pictures: readonly PackedPicture[]): string {
	return JSON.stringify(
		pictures.map(({ preview, small, ...each }) => {
			const said = ({ type, bytes }: typeof preview) => ({ type, hash: hashOf(new Uint8Array(bytes)) });
			return { ...each, preview: said(preview), small: said(small) };
		}),
	);
}

function packed(pictures: readonly PackedPicture[]): Uint8Array<ArrayBuffer> {
	const parts: Uint8Array[] = [];
	const to = packer((part) => parts.push(part));
	to.text('show.json', show);
	to.text('pictures/pictures.json', listOf(pictures));
	for (const { hash, preview, small } of pictures) {
		to.bytes(imageEntry(hash, 'preview', preview.type), preview.bytes);
		to.bytes(imageEntry(hash, 'small', small.type), small.bytes);
	}
	to.end();
	return new Uint8Array(Buffer.concat(parts));
}

async function unpacked(file: Uint8Array<ArrayBuffer>) {
	const read = await unpackShow(new Blob([file]), (bytes) => Promise.resolve(hashOf(bytes)));
	const pictures: unknown[] = [];
	if ('value' in read)
		for (let place = 0; place < read.value.count; place++) pictures.push(await read.value.pictureAt(place));
	return { read, pictures };
}
const problemOf = async (file: Uint8Array) => {
	const { read } = await unpacked(file.slice());
	return 'problem' in read ? read.problem : 'none';
};
/** A packed file of another program. */
const zipped = (entries: Record<string, Uint8Array | string>, level: 0 | 9 = 9) =>
	zipSync(
		Object.fromEntries(
			Object.entries(entries).map(([name, bytes]) => [name, typeof bytes === 'string' ? strToU8(bytes) : bytes]),
		),
		{ level },
	);

test('what is packed comes back byte for byte', async () => {
	const pictures = [picture('a'), picture('b')];
	const there = await unpacked(packed(pictures));
	expect(there.read).toMatchObject({ value: { text: show, count: 2 } });
	expect(there.pictures).toMatchObject(pictures.map((value) => ({ value })));
});

test('packed again by another program, in another order and with its folders, it opens', async () => {
	const entries = Object.entries(unzipSync(packed([picture('a')]))).toReversed();
	const again = zipped({
		...{ 'pictures/': '', '__MACOSX/._show.json': 'x', '.DS_Store': 'x', 'pictures/.DS_Store': 'x' },
		...Object.fromEntries(entries),
	});
	const there = await unpacked(again);
	expect(there.read).toMatchObject({ value: { text: show } });
	expect(there.pictures).toMatchObject([{ value: picture('a') }]);
});

test('a byte that was changed anywhere in the texts is seen, and so is a length that was changed', async () => {
	const texts = { 'show.json': show, 'pictures/pictures.json': listOf([]) };
	for (const level of [0, 9] as const) {
		const file = zipped(texts, level);
		const ends = file.length - 22;
		for (let at = 0; at < ends; at++) {
			const changed = file.slice();
			changed[at]! ^= 4;
			const { read } = await unpacked(changed);
			if ('value' in read) expect(read.value.text).toBe(show);
		}
		const figures = zipped({ ...texts, 'show.json': show.replace('rows', 'Rows') }, 0);
		const stored = zipped(texts, 0);
		const swapped = stored.slice();
		swapped[figures.findIndex((byte, at) => byte !== stored[at] && at > 40)]! ^= 32;
		expect(await problemOf(swapped)).toBe('it is damaged: “show.json” in it cannot be read');
	}
});

test('sizes that stand only behind an entry, as streams have them, are those of the directory', async () => {
	const file = zipped({ 'show.json': show, 'pictures/pictures.json': listOf([]) });
	file.fill(0, 14, 26); // checksum and sizes before the first entry
	file[6]! |= 8;
	expect((await unpacked(file)).read).toMatchObject({ value: { text: show } });
});

test('what is locked is refused as that', async () => {
	const file = zipped({ 'show.json': show, 'pictures/pictures.json': listOf([]) });
	const directory = file.findLastIndex((byte, at) => byte === 0x50 && file[at + 2] === 1);
	file[file.findIndex((byte, at) => byte === 0x50 && file[at + 2] === 1 && at <= directory) + 8]! |= 1;
	expect(await problemOf(file)).toBe('it is locked with a password');
});

test('where only texts are read, it is said what it is', () => {
	expect(kindOfBytes(packed([]))).toContain('it is a show packed with its pictures');
	expect(kindOfBytes(zipped({ 'xl/workbook.xml': 'x' }))).toContain('it is a packed file, as workbooks are');
});

test('other programs open it', () => {
	const entries = unzipSync(packed([picture('a')]));
	expect(Object.keys(entries)).toEqual([
		'show.json',
		'pictures/pictures.json',
		`pictures/${'a'.repeat(64)}.png`,
		`pictures/${'a'.repeat(64)}.small.png`,
	]);
	expect(new TextDecoder().decode(entries['show.json'])).toBe(show);
	expect(entries[`pictures/${'a'.repeat(64)}.png`]).toEqual(new Uint8Array(picture('a').preview.bytes));
});

test('wherever it is cut short, it is refused', async () => {
	const file = packed([picture('a'), picture('b')]);
	for (let length = 0; length < file.length; length += 13)
		expect(await problemOf(file.subarray(0, length))).not.toBe('none');
	expect(await problemOf(file.subarray(0, file.length - 1))).toBe('it is cut short: the end of it is missing');
});

test('a byte that was changed in an image is seen', async () => {
	const file = packed([picture('a')]);
	const at = unzippedAt(file, new Uint8Array(picture('a').preview.bytes));
	file[at + 40]! ^= 1;
	expect(await problemOf(file)).toContain('it is damaged: “pictures/aaa');
});

function unzippedAt(file: Uint8Array, part: Uint8Array): number {
	for (let at = 0; at < file.length; at++) if (part.every((byte, place) => file[at + place] === byte)) return at;
	throw new Error('not there');
}

const list = listOf([]);
test.each([
	[
		'a path that climbs',
		zipped({ 'show.json': show, '../show.json': show }),
		'it holds “../show.json”, which is no part of a show with pictures',
	],
	[
		'a path from the root',
		zipped({ 'show.json': show, '/etc/passwd': 'x' }),
		'it holds “/etc/passwd”, which is no part of a show with pictures',
	],
	[
		'a picture with another name',
		zipped({ 'show.json': show, 'pictures/pictures.json': list, 'pictures/a.webp': 'x' }),
		'it holds “pictures/a.webp”, which is no part of a show with pictures',
	],
	[
		'a program',
		zipped({ 'show.json': show, 'pictures/pictures.json': list, 'run.exe': 'x' }),
		'it holds “run.exe”, which is no part of a show with pictures',
	],
	[
		'a picture that is not listed',
		zipped({ 'show.json': show, 'pictures/pictures.json': list, [`pictures/${'c'.repeat(64)}.webp`]: 'x' }),
		'which its list of pictures does not name',
	],
	['no list', zipped({ 'show.json': show }), 'it lacks “pictures/pictures.json”'],
	['no show', zipped({ 'pictures/pictures.json': list }), 'it lacks “show.json”'],
	[
		'an image less than the list names',
		zipped({ 'show.json': show, 'pictures/pictures.json': listOf([picture('a')]) }),
		`it lacks “pictures/${'a'.repeat(64)}.png”`,
	],
	[
		'a sound image that is not the one of the list',
		zipped({
			...{ 'show.json': show, 'pictures/pictures.json': listOf([picture('a')]) },
			[imageEntry('a'.repeat(64), 'preview', 'image/png')]: plainPng(20, 30),
			[imageEntry('a'.repeat(64), 'small', 'image/png')]: plainPng(16, 8),
		}),
		`it is damaged: “pictures/${'a'.repeat(64)}.png” in it cannot be read`,
	],
	[
		'a list that is none',
		zipped({ 'show.json': show, 'pictures/pictures.json': '[{"hash":"../x"}]' }),
		'it is damaged: “pictures/pictures.json” in it cannot be read',
	],
	[
		'a show that is no text',
		zipped({ 'show.json': Uint8Array.of(0xff, 0xfe, 0x00), 'pictures/pictures.json': list }),
		'it is damaged: “show.json” in it cannot be read',
	],
	['nothing', new Uint8Array(), 'it is no packed file'],
	['no packed file', strToU8('title,shape'), 'it is no packed file'],
])('%s is refused in words', async (_what, file, problem) => {
	expect(await problemOf(file)).toContain(problem);
});

test('a bomb is left before it has unpacked', async () => {
	const bomb = zipped({ 'show.json': show, 'pictures/pictures.json': new Uint8Array(mostPacked.list + 1) });
	expect(bomb.length).toBeLessThan(100_000);
	expect(await problemOf(bomb)).toBe('“pictures/pictures.json” in it unpacks to more than a show of this app holds');
});

test('ten thousand entries are refused', async () => {
	const entries: Record<string, string> = { 'show.json': show, 'pictures/pictures.json': list };
	for (let at = 0; at < 10_000; at++) entries[`pictures/${at.toString(16).padStart(64, '0')}.webp`] = '';
	expect(await problemOf(zipped(entries, 0))).not.toBe('none');
	const many = JSON.stringify(Array.from({ length: 30_001 }, () => 0));
	const problem = await problemOf(zipped({ 'show.json': show, 'pictures/pictures.json': many }));
	expect(problem).toBe('it holds more than 30000 pictures');
});

test('what could not be opened again is not packed', () => {
	const large = Array.from({ length: 60_000 }, () => 60_000);
	expect(tooMuchToPack(30_000, 20_000_000, large)).toBeUndefined();
	expect(tooMuchToPack(30_001, 0, [])).toBe('more than 30000 pictures');
	expect(tooMuchToPack(1, 40_000_001, [])).toBe('too many names of pictures');
	expect(tooMuchToPack(1, 0, [5_000_001])).toBe('an image that is too large');
	expect(tooMuchToPack(1, 0, [...large, ...large])).toBe('too many bytes of pictures');
});

test('more than four thousand pictures come back', async () => {
	const many = Array.from({ length: 4001 }, (_, at) => ({ ...picture('a'), hash: at.toString(16).padStart(64, '0') }));
	expect(await unpackShow(new Blob([packed(many)]), (bytes) => Promise.resolve(hashOf(bytes)))).toMatchObject({
		value: { count: 4001 },
	});
});

test('an image that is larger than it says to be is refused', async () => {
	const large = { ...picture('a'), small: image(400, 400) };
	expect(await problemOf(packed([large]))).toContain('.small.png” in it cannot be read');
	const none = { ...picture('a'), preview: { type: 'image/png', bytes: strToU8('<svg xmlns="x"/>').slice().buffer } };
	expect(await problemOf(packed([none]))).toContain('cannot be read');
});
