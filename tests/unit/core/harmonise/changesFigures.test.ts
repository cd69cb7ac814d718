import { expect, test } from 'vitest';
import { changesFigures, clearedCells } from '../../../../src/core/harmonise/changesFigures.ts';
import { harmonise } from '../../../../src/core/harmonise/harmonise.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { rowOf, wideShow } from '../findings/rowOf.ts';

const { settings } = readSettings({ ...wideShow, sizes: [{ name: 'Middle', width: '600 mm', height: '450 mm' }] });

test.each([
	{ line: 'shape 3:2', changes: false, cleared: [] }, // the show’s mount is that size already
	{ line: 'shape 3:2, picture width 462', changes: false, cleared: ['picture width'] },
	{ line: 'picture 480 x 320, side 60', changes: true, cleared: ['picture width', 'picture height', 'side'] },
	{ line: 'shape 3:2, mount none', changes: false, cleared: [] },
])('$line: whether it changes, and what it clears', ({ line, changes, cleared }) => {
	const row = rowOf(line);
	const [harmonised] = harmonise([row], settings, 1).rows;
	expect(changesFigures(harmonised!)).toBe(changes);
	expect(clearedCells(harmonised!, row)).toEqual(cleared);
});
