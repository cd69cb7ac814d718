import { expect, test } from 'vitest';
import { wordColumns } from '../../../../src/core/row/wordColumns.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { ColumnName } from '../../../../src/core/show/columns.ts';
import { rowOf, wideShow } from '../findings/rowOf.ts';

const { settings } = readSettings({
	...wideShow,
	boards: [{ name: 'Chalk', width: 1000, height: 800 }],
	frames: [{ name: 'Oak', width: '600 mm', height: '450 mm' }],
	backing: [{ name: 'Ply', width: 1000, height: 800 }],
	glazing: [{ name: 'Clear 2', material: 'glass', width: 1000, height: 800 }],
	sizes: [{ name: 'Large', width: 600, height: 450 }],
});
const unread = (line: string) => workOut(rowOf(line), settings).read.unread;

test.each([
	{ cell: 'glazing ac', says: '“ac” is not a glazing. Choose Clear 2, none, glass or acrylic', readings: ['acrylic'] },
	{
		cell: 'surface shiny',
		says: '“shiny” is not a surface. Choose gloss, resin-coated, lustre, baryta, satin, matt, fine art, pastel or charcoal',
		readings: [],
	},
	{
		cell: 'signed on front',
		says: '“front” is not a place to sign. Choose picture, margin, back or mount',
		readings: [],
	},
])('$cell is not read', ({ cell, says, readings }) => {
	expect(unread(`picture 456 x 306, ${cell}`)).toMatchObject([{ problem: says, readings }]);
});

test('cells that are not read are named in one order, whichever was typed first', () => {
	const cells = ['glazing ac', 'signed on front', 'surface shiny', 'backing x'];
	const named = (lines: readonly string[]) => unread(lines.join(', ')).map(({ column }) => column);
	expect(named(cells.toReversed())).toEqual(named(cells));
	expect(named(cells)).toHaveLength(4);
});

test.each([
	'glazing clear 2',
	'backing PLY',
	'glazing Acrylic',
	'surface Resin coated',
	'surface fine-art',
	'signed on Back',
])('%s is read', (cell) => {
	expect(unread(`picture 456 x 306, ${cell}`)).toEqual([]);
});

test('every word that a list offers is read in its column', () => {
	for (const [column, { choices }] of Object.entries(wordColumns))
		for (const word of choices(settings)) {
			const row = { id: 'row', order: 1, typed: { title: 'x', [column as ColumnName]: word } };
			expect(workOut(row, settings).read.unread, `${column} ${word}`).toEqual([]);
		}
});

test('the mount cell offers the show’s mount, which a named frame’s would else take the place of', () => {
	expect(wordColumns.mount!.choices(settings)).toEqual(['Large', 'show', 'frame', 'fit', 'none']);
	const mountIn = (cell: string) => {
		const { mountWidth, mountHeight } = workOut(rowOf(`picture 300 x 200, frame Oak${cell}`), other).solved;
		return [mountWidth, mountHeight].map((side) => side! / 10_000_000);
	};
	const { settings: other } = readSettings({ ...wideShow, frames: [{ name: 'Oak', width: 500, height: 400 }] });
	expect([mountIn(''), mountIn(', mount show')]).toEqual([
		[500, 400],
		[600, 450],
	]);
});

test('a size of the show cannot be called as a word of the mount cell', () => {
	for (const name of ['show', 'Frame', 'fit', 'none'])
		expect(readSettings({ sizes: [{ name, width: 600, height: 450 }] }).problems, name).toMatchObject([
			{ key: 'sizes[0].name' },
		]);
});
