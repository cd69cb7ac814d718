import { expect, test } from 'vitest';
import { harmonise, mostPrints } from '../../../../src/core/harmonise/harmonise.ts';
import { length, toMm } from '../../../../src/core/length/length.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { withCells } from '../../../../src/core/show/withCells.ts';
import { rowOf, wideShow } from '../findings/rowOf.ts';

const sizes = [
	{ name: 'Large', width: '700 mm', height: '550 mm' },
	{ name: 'Middle', width: '600 mm', height: '450 mm' },
	{ name: 'Small', width: '400 mm', height: '300 mm' },
	{ name: 'Square', width: '450 mm', height: '450 mm' },
];
const { settings } = readSettings({ ...wideShow, sizes });
const rowsOf = (...lines: string[]) => lines.map((line, i) => ({ ...rowOf(line), id: `${i}`, order: i }));

test('one size for all is the one nearest to what is wanted', () => {
	// 3:2 leaves pictures of 566, 462 and 242 mm in Large, Middle and Small: from 480 and 450 Middle is 18 and 12 away.
	const {
		rows,
		sizes: used,
		difference,
	} = harmonise(rowsOf('shape 3:2, picture width 480', 'shape 3:2, picture width 450'), settings, 1);
	expect(used).toEqual(['Middle']);
	expect(rows.map(({ after }) => toMm(after.pictureWidth!))).toEqual([462, 462]);
	expect(toMm(length(difference))).toBe(30);
});

test('two sizes may be nearer than one', () => {
	const { rows, sizes: used } = harmonise(
		rowsOf('shape 3:2, picture width 480', 'shape 3:2, picture width 250'),
		settings,
		2,
	);
	expect(used).toEqual(['Middle', 'Small']);
	expect(rows.map(({ size }) => size)).toEqual(['Middle', 'Small']);
});

test('without a typed picture, the picture in the show’s mount is wanted', () =>
	expect(harmonise(rowsOf('shape 3:2'), settings, 1).rows[0]).toMatchObject({ size: 'Middle', difference: 0 }));

test('taken, a row is what the table showed, and no border is under the least', () => {
	const rows = rowsOf(
		'shape 1:1, picture width 300',
		'shape 3:4',
		'picture 480 x 320, side 30',
		'shape 16:9, mount width 500',
	);
	for (const { id, change, after } of harmonise(rows, settings, 2).rows) {
		const taken = judgeRow(withCells(rows[Number(id)]!, change, settings), settings);
		expect(taken.solved).toEqual(after);
		for (const border of [after.side!, after.top!, after.bottom!])
			expect(border).toBeGreaterThanOrEqual(settings.leastBorder);
	}
});

test('a row that no size takes stays as it is', () => {
	const { settings: narrow } = readSettings({ ...wideShow, leastBorder: '200 mm', sizes });
	expect(harmonise(rowsOf('shape 3:2'), narrow, 1).rows[0]).toMatchObject({ size: undefined, change: {} });
});

test('60 prints in 12 sizes are settled', () => {
	const many = Array.from({ length: 12 }, (_, i) => ({
		name: `S${i}`,
		width: `${400 + 30 * i} mm`,
		height: `${320 + 25 * (i % 6)} mm`,
	}));
	const shapes = ['3:2', '2:3', '1:1', '4:5', '16:9', '5:4'];
	const rows = rowsOf(
		...Array.from({ length: mostPrints }, (_, i) => `shape ${shapes[i % 6]}, picture width ${200 + 7 * i}`),
	);
	const harmony = harmonise(rows, readSettings({ ...wideShow, sizes: many }).settings, 4);
	expect(harmony.sizes.length).toBeLessThanOrEqual(4);
	expect(harmony.rows.every(({ size }) => size !== undefined)).toBe(true);
});

test('more prints than can be proven are refused', () =>
	expect(() => harmonise(rowsOf(...Array.from({ length: 61 }, () => 'shape 3:2')), settings, 2)).toThrow(RangeError));
