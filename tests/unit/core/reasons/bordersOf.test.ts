import { expect, test } from 'vitest';
import { bordersOf } from '../../../../src/core/reasons/bordersOf.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { rowOf, wideShow } from '../findings/rowOf.ts';

const { settings } = readSettings({
	...wideShow,
	boards: [{ name: 'White', width: 1000, height: 800, thickness: 1.4 }],
	frames: [{ name: 'Oak', rebateWidth: '604 mm', rebateHeight: '454 mm', lip: '6 mm', moulding: 20 }],
});
const borders = (line: string) =>
	bordersOf(workOut(rowOf(line), settings), settings).map(({ what, figures }) => `${what}: ${figures.join(' | ')}`);

test('what is cut, and what is seen of each border with and without its frame', () =>
	// Borders 75, 71, 79. The bevel takes 1.4 mm of each; the lip 6 mm less 2 mm of play as well.
	expect(borders('picture 456 x 306, board White')).toEqual([
		'To cut: 75 | 71 | 79',
		'Visible: 73.6 | 69.6 | 77.6',
		'In the frame: 69.6 | 65.6 | 73.6',
	]));

test.each(['picture 456 x 306, mount none', 'picture 456 x 306, paper 480 x 330, mounting float'])(
	'without borders there is no table: %s',
	(line) => expect(borders(line)).toEqual([]),
);
