import fc from 'fast-check';
import { expect, test } from 'vitest';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { rowOf, wideShow } from '../findings/rowOf.ts';
import { randomCells, randomSettings } from './randomRows.ts';
import { rowOfCells } from './rowOfCells.ts';

const { settings } = readSettings({
	...wideShow,
	boards: [
		{ name: 'White', width: 1000, height: 800, thickness: 1.4 },
		{ name: 'Grey', width: 1000, height: 800, thickness: 2.2 },
	],
	frames: [{ name: 'Oak', rebateWidth: '602 mm', rebateHeight: '452 mm' }],
});
const worked = (line: string) => workOut(rowOf(line), settings);

test('a row worked out is plain data, which a worker can be sent', () =>
	fc.assert(
		fc.property(randomCells, randomSettings, (cells, random) => {
			const row = workOut(rowOfCells(cells), random);
			expect(structuredClone(row)).toEqual(row);
		}),
		{ numRuns: 100 },
	));

test('it says what holds from the show', () => {
	const { mountSize, bottomWeight, overlap } = settings;
	const none = { mount: undefined, bottomWeight: undefined, overlap: undefined, reveal: undefined };
	expect(worked('shape 3:2').inherited).toEqual({ mount: mountSize, bottomWeight, overlap, reveal: undefined });
	expect(worked('shape 3:2, reveal 6, bottom weight 5 %, mount fit').inherited).toEqual(none);
	expect(worked('picture 300 x 200, mount none').inherited).toEqual(none);
});

test('it has found its boards and its frame', () => {
	expect(worked('shape 3:2').boards['inner mount']).toMatchObject({ asked: undefined, cell: 'board', name: 'White' });
	expect(worked('shape 3:2, inner board grey').boards).toMatchObject({
		mount: { asked: undefined, name: 'White' },
		'inner mount': { asked: 'grey', cell: 'inner board', name: 'Grey' },
	});
	expect(worked('shape 3:2, board brown').boards.mount).toMatchObject({
		asked: 'brown',
		name: 'brown',
		board: undefined,
	});
	expect(worked('shape 3:2').frame).toMatchObject({ named: { by: undefined }, frame: { name: 'Oak' } });
	expect(worked('shape 3:2, frame elm').frame).toMatchObject({
		named: { by: 'row', missing: 'elm' },
		frame: undefined,
		seat: undefined,
	});
});
