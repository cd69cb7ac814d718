import { describe, expect, test } from 'vitest';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { codesOf, resultOf, rowOf, wideShow } from './rowOf.ts';

const metric: TypedSettings = { unit: 'mm' };
const centimetres: TypedSettings = { unit: 'cm' };
const inch: TypedSettings = { unit: 'in' };

/** Boards, frames and rules that are too small for much, so that rows are stopped for them. */
const narrow: TypedSettings = {
	...wideShow,
	boards: [{ name: 'Chalk', width: 700, height: 500, thickness: '1.4 mm' }],
	frames: [{ name: 'Slim', width: 600, height: 450, depth: 4 }],
	limits: { largest: '700 x 500 mm' },
};

/** Rows as somebody types them who has another unit in mind, in a show, and the unit that was meant. */
const slips: readonly (readonly [string, TypedSettings, string])[] = [
	// A show in mm: a centimetre or an inch in mind.
	['picture 45.6 x 30.6', wideShow, 'cm'],
	['picture 42 x 28', wideShow, 'cm'],
	['picture 30 x 20', wideShow, 'cm'],
	['picture 30.6 x 45.6', wideShow, 'cm'],
	['picture 18 x 12', wideShow, 'inches'],
	['picture 16 x 11', wideShow, 'inches'],
	['picture 14.5 x 10.5', metric, 'inches'],
	['picture 45.6 x 30.6, overlap 0.3', wideShow, 'cm'],
	['picture width 45.6, shape 3:2', wideShow, 'cm'],
	['picture 4560 x 3060', wideShow, 'a tenth as much'],
	['picture 5080 x 3390', wideShow, 'a tenth as much'],
	['picture 9652 x 6096', wideShow, '1/25.4 as much'],
	['window 45 x 30', wideShow, 'cm'],
	['window 37 x 27, mount 500 x 400', metric, 'cm'],
	['mount 60 x 45, picture 456 x 306', wideShow, 'cm'],
	['mount width 60, mount height 45, picture 456 x 306', wideShow, 'cm'],
	['mount width 60, picture 456 x 306', wideShow, 'cm'],
	['mount height 45, picture 456 x 306', wideShow, 'cm'],
	['mount 24 x 18, picture 456 x 306', wideShow, 'inches'],
	['mount 50 x 40, shape 3:2', metric, 'cm'],
	['mount width 50, side 65, shape 3:2', metric, 'cm'],
	['picture 456 x 306, side 7, top 7', wideShow, 'cm'],
	['picture 456 x 306, side 7.5', wideShow, 'cm'],
	['picture 456 x 306, top 7.1, bottom 7.9', wideShow, 'cm'],
	['picture 456 x 306, bottom 7.9', wideShow, 'cm'],
	['picture 370 x 270, side 2.5, top 2.5', metric, 'inches'],
	['shape 3:2, side 6.5', metric, 'cm'],
	['mount 60 x 45, side 7.5, top 7.1, picture 45.6 x 30.6', wideShow, 'cm'],
	['mount 60 x 45, picture 45.6 x 30.6', wideShow, 'cm'],
	['mount 20 x 16, picture 15 x 11', metric, 'inches'],
	['mount 500 x 400, side 65, picture 37 x 27', metric, 'cm'],
	// A show in cm: millimetres in mind, or the point forgotten.
	['mount 50 x 40, side 65, top 65, bottom 70', centimetres, 'mm'],
	['mount 50 x 40, side 65, top 65, bottom 70, picture 37 x 28', centimetres, 'mm'],
	['mount width 50, mount height 40, side 65, top 65, bottom 70', centimetres, 'mm'],
	['mount width 50, mount height 40, side 65, top 65, bottom 70, picture 37 x 28', centimetres, 'mm'],
	['side 65, top 65, bottom 70', centimetres, 'mm'],
	['side 65, top 65, bottom 70, picture 37 x 28', centimetres, 'mm'],
	['side 65, shape 3:2', centimetres, 'mm'],
	['picture 360 x 240', centimetres, 'mm'],
	['picture 370 x 280', centimetres, 'mm'],
	['picture 3.7 x 2.8', centimetres, 'ten times as much'],
	['mount 500 x 400, picture 37 x 28', centimetres, 'mm'],
	['mount width 500, mount height 400, picture 36 x 24', centimetres, 'mm'],
	['mount 500 x 400, side 65, top 65, picture 376 x 271', centimetres, 'mm'],
	// A show in inches.
	['picture 360 x 240', inch, 'mm'],
	['picture 1.4 x 1.1', inch, 'ten times as much'],
	['picture 14 x 11, side 65', inch, 'mm'],
	['mount 300 x 250, picture 6 x 4', inch, 'mm'],
];

/**
 * Slips of which nothing is said: read as meant, their borders are uneven or the bottom is heavy, which was not said
 * before, and a print that is far too large is likelier than two slips in one row.
 */
const passedOver: readonly (readonly [string, TypedSettings])[] = [
	['bottom 70, picture 37 x 28', centimetres],
	['window 360 x 230', centimetres],
	['picture 140 x 110', inch],
];

/** Rows in which every length is meant as it is typed: what is wrong with them, if anything, is something else. */
const others: readonly (readonly [string, TypedSettings])[] = [
	// Nothing is wrong.
	['picture 456 x 306', wideShow],
	['shape 3:2', wideShow],
	['shape 1:1', wideShow],
	['shape 1:3', wideShow],
	['picture 121 x 81', wideShow],
	['picture 60 x 45, mount 250 x 200', metric],
	['picture 100 x 100, mount fit', metric],
	['mount none, picture 40 x 30', metric],
	['mount none, picture 700 x 500', metric],
	['picture 37 x 28', centimetres],
	['picture 10 x 8', centimetres],
	['picture 14 x 11', inch],
	['picture 4 x 5', inch],
	// The print is large, or the mount narrow, and that is meant.
	['picture 640 x 480', wideShow],
	['picture 1200 x 800', wideShow],
	['picture 60 x 40', centimetres],
	['picture 36 x 24', inch],
	['picture 17 1/2 x 11', inch],
	['picture 590 x 440', wideShow],
	['picture 590 x 306', wideShow],
	['picture 456 x 306, side 80', wideShow],
	['picture 456 x 306, side 30', wideShow],
	['mount 38 x 29, picture 37 x 28', centimetres],
	['mount 300 x 250, picture 290 x 240', metric],
	// A slip of the pen, or of the arithmetic.
	['mount height 450, top 70, bottom 84, picture 456 x 316', wideShow],
	['mount width 600, side 70, window width 466, shape 3:2', wideShow],
	['mount 500 x 400, side 65, window 380 x 280', metric],
	['mount 50 x 40, side 6.5, top 6.5, bottom 7, picture 37 x 28', centimetres],
	['mount 20 x 16, side 3, picture 15 x 11', inch],
	['picture 456 x 306, window 446 x 296, overlap 3', wideShow],
	['window 356 x 236, picture 350 x 230', wideShow],
	['picture 360 x 240, overlap 200', wideShow],
	['picture 0.125 x 300', wideShow], // what does not fit by 5.9 mm does not by 4.8: only the mount is larger
	['mount 500 x 400 mm, mount width 600, shape 3:2', wideShow],
	['mount width 359, window width 399, picture height 200', wideShow],
	['mount height 300, picture 456 x 306', wideShow],
	['mount 400 x 300, picture 456 x 306', wideShow],
	['picture abc x 306', wideShow],
	['picture 456 x 306, top 64, bottom 86', wideShow],
	// What stops it is the paper, the board, the frame, the glass or the edition.
	['picture 421 x 280, paper A3', metric],
	['picture 421 x 297, paper A3', wideShow],
	['picture 42.1 x 28, paper A3', centimetres],
	['picture 370 x 270, paper 300 x 200', metric],
	['picture 37 x 27, paper 30 x 20', centimetres],
	['picture 420 x 280, reveal 6, paper 420 x 280', wideShow],
	['picture 900 x 600', narrow],
	['picture 640 x 480, board Chalk', narrow],
	['picture 456 x 306, board Ochre', narrow],
	['picture 456 x 306, frame Slim', narrow],
	['picture 660 x 460', narrow],
	['mount none, picture 300 x 200, glazing glass, surface gloss', metric],
	['picture 456 x 306, edition 30/25', wideShow],
];

/** Sizes with a name, as a show may list them. */
const named: TypedSettings = {
	...metric,
	sizes: [
		{ name: 'Tiny', width: 60, height: 45 },
		{ name: 'Vast', width: 4000, height: 3000 },
	],
};

const isFound = (line: string, show: TypedSettings) => codesOf(line, show).includes('unit-slip');
const nameOf = ([line, show]: readonly [string, TypedSettings, ...unknown[]]) => `${line} (${String(show['unit'])})`;

test('there are forty and more of each', () => {
	expect(slips.length).toBeGreaterThanOrEqual(40);
	expect(others.length).toBeGreaterThanOrEqual(40);
});

test('of rows that are slips of units at most two in forty are missed', () => {
	const missed = slips.filter(([line, show]) => !isFound(line, show)).map(nameOf);
	expect(missed.length / slips.length, missed.join('\n')).toBeLessThanOrEqual(2 / 40);
});

test.each(passedOver)('%s is passed over: read again, it brings something else to look at', (line, show) =>
	expect(isFound(line, show)).toBe(false),
);

test('of rows that are none, none is found', () =>
	expect(others.filter(([line, show]) => isFound(line, show)).map(nameOf)).toEqual([]));

test.each([
	['mount', '60 x 45', 'Tiny'],
	['paper', '4000 x 3000', 'Vast'],
])('a %s of %s may be a slip; called %s, it is none: a name has no unit', (column, size, name) => {
	const isSlip = (text: string) => {
		const { findings } = resultOf(rowOf(`picture 356 x 206, mounting float, ${column} ${text}`), named);
		return findings.some(({ code, cells }) => code === 'unit-slip' && cells.some((cell) => cell.startsWith(column)));
	};
	expect([isSlip(size), isSlip(name)]).toEqual([true, false]);
});

test('a slip that is found is read in the unit that was meant', () => {
	const wrong = slips.filter(([line, show, meant]) => {
		const finding = resultOf(rowOf(line), show).findings.find(({ code }) => code === 'unit-slip');
		return finding !== undefined && !finding.message.includes(`${meant} (`);
	});
	expect(wrong.map(nameOf)).toEqual([]);
});

test('in one list only the row with the slip is said to have one', () => {
	const list = [
		'picture 456 x 306, paper 400 x 300',
		'picture 421 x 297, paper A3',
		'picture 900 x 600',
		'picture 456 x 306, board Ochre',
		'picture 456 x 306, frame Slim',
		'picture 640 x 500',
		'picture 45.6 x 30.6',
	];
	const results = list.map((line) => resultOf(rowOf(line), narrow));
	expect(results.map(({ isStopped }) => isStopped)).toEqual(list.map(() => true));
	expect(list.filter((line) => isFound(line, narrow))).toEqual(['picture 45.6 x 30.6']);
});

describe('a slip is mended by what is offered', () => {
	test.each(slips.filter(([line, show]) => isFound(line, show)))('%s', (line, show) => {
		const row = rowOf(line);
		const finding = resultOf(row, show).findings.find(({ code }) => code === 'unit-slip');
		expect(finding?.mends.length).toBeGreaterThan(0);
	});
});
