import { expect, test } from 'vitest';
import { applyPictures } from '../../../../src/core/pictures/applyPictures.ts';
import { matchPictures, type PictureFile } from '../../../../src/core/pictures/matchPictures.ts';
import { knownPictures, pictureOfRow } from '../../../../src/core/pictures/picture.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { apply, invert } from '../../../../src/core/show/edit.ts';
import { newShow } from '../../../../src/core/show/newShow.ts';
import type { Row, Typed } from '../../../../src/core/show/row.ts';

const { settings } = readSettings({});
const hashOf = (name: string) =>
	[...name]
		.map((sign) => sign.codePointAt(0)!.toString(16))
		.join('')
		.padEnd(64, '0')
		.slice(0, 64);
const file = (name: string, width = 6000, height = 4000): PictureFile => ({
	name,
	hash: hashOf(name),
	pixels: { width, height },
});
const rowsOf = (...typed: Typed[]): Row[] =>
	typed.map((each, place) => ({ id: `r${place + 1}`, order: place, typed: each }));
/** `r2 by title`, `new`, `twice`. */
const matched = (rows: readonly Row[], ...names: string[]) =>
	matchPictures(
		rows,
		names.map((name) => file(name)),
	).map((match) => (match.kind === 'row' ? `${match.id} by ${match.by}` : match.kind));

const list = rowsOf(
	{ number: '1', title: 'Tide', maker: 'Ines Arden' },
	{ number: '02', title: 'Tide at dusk', maker: 'Ines Arden' },
	{ number: '3', title: 'Salt’s edge' },
	{ number: '4' },
	{ number: '5', title: 'Harbour', maker: 'Ines Arden' },
	{ number: '6', title: 'Harbour', maker: 'Tom Bray' },
);

test.each([
	['Tide.jpg', 'r1 by title'],
	['tide_at-dusk.jpg', 'r2 by title'],
	['Arden - Tide at Dusk (1).tif', 'r2 by title'],
	['Salts Edge.png', 'r3 by title'],
	['003.jpg', 'r3 by number'],
	['2 IMG_1234.jpg', 'r2 by number'],
	['4 Forest.jpg', 'r4 by number'],
	['3 Forest.jpg', 'new'], // row 3 has another title
	['3 Tide.jpg', 'r1 by title'], // the title is surer than the number
	['Harbour.jpg', 'new'], // two of that title
	['Harbour Tom Bray.jpg', 'r6 by title'],
	['5 Harbour.jpg', 'r5 by title'],
	['IMG_0003.jpg', 'new'],
	['2_Tide.jpg', 'new'], // the title says one row, the number another
	['Riptide.jpg', 'new'], // a title is words, not letters
])('%s: %s', (name, expected) => {
	expect(matched(list, name)).toEqual([expected]);
});

test.each([
	'7 Sisters',
	'1984',
	'McLeod',
	'Untitled 3',
	'Sam',
	'Long title here final',
	'Long title_final',
	'Study 300dpi',
	'Ebb (2)',
])('%s is found by its title, as it stands', (title) => {
	const rows = rowsOf({ number: '4', title: 'Ebb' }, { number: '5', title });
	expect(matched(rows, `${title}.jpg`)).toEqual(['r2 by title']);
	expect(matched(rows, `005 ${title}.jpg`)).toEqual(['r2 by title']);
});

test.each([
	[{ title: 'Dépôt' }, 'Depot.jpg', 'r1 by title'],
	[{ title: 'Ann’s sea' }, 'Ann_s sea.jpg', 'r1 by title'],
	[{ title: 'Ann’s sea', number: '3' }, '03 Ann_s sea.jpg', 'r1 by title'],
	[{ number: 'No. 7' }, '7.jpg', 'r1 by number'],
	[{ number: '#07' }, '007 Gulls.jpg', 'r1 by number'],
	[{ number: '12', 'picture file': '012.tif' }, '012.jpg', 'r1 by number'],
	[{ number: '12', 'picture file': '011.tif' }, '012.jpg', 'new'],
] as [Typed, string, string][])('%j by %s: %s', (typed, name, expected) => {
	expect(matched(rowsOf(typed), name)).toEqual([expected]);
});

test.each([
	['Study 300dpi.jpg', 'r2 by title'],
	['03 Study 300 dpi.jpg', 'r2 by title'],
	['Study 300px.jpg', 'r2 by title'],
	['Study 600dpi.jpg', 'r1 by title'],
])('a figure with its unit may be the last word of a title: %s', (name, expected) => {
	expect(matched(rowsOf({ title: 'Study' }, { title: 'Study 300', number: '3' }), name)).toEqual([expected]);
});

test('of titles that differ in accents, the one as it is written', () => {
	expect(matched(rowsOf({ title: 'Dépôt' }, { title: 'Depot' }), 'Depot.jpg', 'Dépôt.jpg')).toEqual([
		'r2 by title',
		'r1 by title',
	]);
});

test('rows of one picture all have it: no row is made', () => {
	const named = { 'picture file': 'IMG_1.jpg', pixels: '6000 x 4000' };
	const rows = rowsOf({ title: 'A', ...named }, { title: 'A', ...named });
	expect(matched(rows, 'IMG_1.jpg')).toEqual(['r1 by file name']);
	const given = (name: string) => ({ picture: { hash: hashOf(name), file: 'IMG_1.jpg' } });
	const [one, two] = [
		{ ...rows[0]!, ...given('IMG_1.jpg') },
		{ ...rows[1]!, ...given('IMG_1.jpg') },
	];
	expect(matched([one, two], 'IMG_1.jpg')).toEqual(['r1 by picture']);
	// Two pictures of that name, and a third: nothing says which it is.
	expect(
		matched(
			[
				{ ...one, ...given('x') },
				{ ...two, ...given('y') },
			],
			'IMG_1.jpg',
		),
	).toEqual(['new']);
});

test('a new row of a number only has no title', () => {
	const files = ['10.jpg', '1.5 Miles.jpg', 'IMG_0012.jpg'].map((name) => file(name));
	const { rows } = applyPictures(newShow('s'), matchPictures([], files), ['a', 'b', 'c'], settings);
	expect(rows.map(({ after }) => [after!.typed.number, after!.typed.title])).toEqual([
		['10', undefined],
		[undefined, '1.5 Miles'],
		[undefined, 'IMG_0012'],
	]);
});

test('a row gets one file: of two that are as sure, none', () => {
	expect(matched(list, 'Tide (2).jpg', 'Tide (1).png')).toEqual(['new', 'new']);
	expect(matched(list, 'Tide.jpg', 'Tide (1).png')).toEqual(['r1 by title', 'new']); // the first is its title
	expect(matched(list, 'Tide.jpg', 'Tide.jpg')).toEqual(['r1 by title', 'twice']);
	expect(matched(list, '1.jpg', 'Tide.jpg')).toEqual(['new', 'r1 by title']);
});

test('a file that the list names is found by its name, with its pixels', () => {
	const rows = rowsOf(
		{ title: 'A', 'picture file': 'IMG_1.jpg', pixels: '6000 x 4000' },
		{ title: 'B', 'picture file': 'img_1.JPG', pixels: '4000 x 6000' },
	);
	expect(matched(rows, 'IMG_1.jpg')).toEqual(['r1 by file name']);
});

test('pictures go in as one edit, are undone by its inverse, and are known again', () => {
	const show = { ...newShow('s'), rows: list };
	const files = [file('4 Forest.jpg'), file('New one.jpg', 3000, 3000)];
	const edit = applyPictures(show, matchPictures(show.rows, files), ['n1', 'n2'], settings);
	const after = apply(show, edit);
	expect(after.rows.map(({ typed }) => typed.title)).toEqual([
		...list.slice(0, 3).map(({ typed }) => typed.title),
		'Forest',
		'Harbour',
		'Harbour',
		'New one',
	]);
	expect(after.rows[6]).toMatchObject({
		typed: { title: 'New one', 'picture file': 'New one.jpg', pixels: '3000 x 3000' },
		picture: { hash: hashOf('New one.jpg'), file: 'New one.jpg' },
	});
	expect(apply(after, invert(edit))).toEqual(show);
	// Given once more, nothing changes.
	expect(applyPictures(after, matchPictures(after.rows, files), ['m1', 'm2'], settings).rows).toEqual([]);
});

test('the picture of a row: that which it was given, else the only one of that name and those pixels', () => {
	const [one, other] = [
		{ hash: hashOf('a'), names: ['IMG_1.jpg'], pixels: { width: 6000, height: 4000 } },
		{ hash: hashOf('b'), names: ['IMG_1.jpg', 'b.jpg'], pixels: { width: 6000, height: 4000 } },
	];
	const row = (typed: Typed, picture?: Row['picture']): Row => ({
		id: 'r',
		order: 0,
		typed,
		...(picture && { picture }),
	});
	const known = knownPictures([one, other]);
	const given = { hash: one.hash, file: 'IMG_1.jpg' };
	const of = (each: Row) => pictureOfRow(each, known)?.hash;
	expect(of(row({ 'picture file': 'IMG_1.jpg' }, given))).toBe(one.hash);
	expect(of(row({ 'picture file': 'IMG_1.jpg' }))).toBe(one.hash); // of two, the one first kept
	expect(of(row({ 'picture file': 'B.JPG' }))).toBe(other.hash);
	expect(of(row({ 'picture file': 'B.JPG' }, given))).toBe(other.hash); // typed over
	expect(of(row({ 'picture file': 'b.jpg', pixels: '4000 x 6000' }))).toBeUndefined();
	expect(of(row({}, given))).toBeUndefined(); // cleared
	expect(of(row({ 'picture file': 'x' }, { hash: 7, file: 'x' } as unknown as Row['picture']))).toBeUndefined();
});
