import { expect, test } from 'vitest';
import type { TypedSettings } from '../../../../src/core/show/settings.ts';
import { codesOf, resultOf, rowOf, wideShow } from './rowOf.ts';
import { describeRules, type RuleCase } from './ruleCases.ts';

const inch: TypedSettings = { unit: 'in', mountSize: '20 x 16 in', border: '2 1/2 in' };

const stocked: TypedSettings = {
	...wideShow,
	boards: [
		{ name: 'Chalk', width: 700, height: 500, grain: 'width' },
		{ name: 'Slate', width: 1200, height: 900 },
		{ name: 'Ready', kind: 'blank', width: 600, height: 450 },
	],
};

const cases: readonly RuleCase[] = [
	{
		code: 'no-board',
		level: 'stop',
		told: 'shape 3:2, mount 701 x 450',
		says: 'No sheet or ready-cut blank of “Chalk” gives a blank of 701 × 450 mm. Use another board',
		mend: 'Use “Slate”',
		not: 'shape 3:2, mount 700 x 450',
		show: stocked,
	},
	{
		code: 'no-board',
		level: 'stop',
		told: 'shape 3:2, board Ready, mount 600 x 449',
		says: 'of “Ready” gives a blank of 600 × 449 mm',
		mend: 'Clear board',
		not: 'shape 3:2, board ready',
		show: stocked,
	},
	{
		code: 'no-board',
		level: 'stop',
		told: 'shape 3:2, board Ochre',
		says: 'There is no “Ochre” in stock. Add it to the boards, or use another.',
		mend: 'Use “Slate”',
		not: 'shape 3:2, board slate',
		show: stocked,
	},
	{
		code: 'no-board',
		level: 'stop',
		told: 'shape 3:2',
		says: 'There is no “Grey” for the undermount in stock',
		not: 'mount none, picture 300 x 200',
		show: { ...stocked, undermount: 'Grey' },
	},
	{
		code: 'needs-size',
		level: 'stop',
		told: 'shape 3:2, side 70, top 70, bottom 80',
		says: 'cannot be worked out yet',
		mend: 'Use the show’s mount, 600 × 450 mm',
		not: 'shape 3:2, side 72, top 70',
	},
	{
		code: 'not-read',
		level: 'stop',
		told: 'picture abc x 306',
		says: 'Picture width: “abc” is not a length',
		not: 'picture 456 x 306',
	},
	{ code: 'not-read', level: 'stop', told: 'picture -5 x 306', says: 'below zero', not: 'picture 5 x 306' },
	{
		code: 'not-read',
		level: 'stop',
		told: 'picture 0 x 306',
		says: 'not above zero',
		not: 'picture 456 x 306, overlap 0',
	},
	{ code: 'not-read', level: 'stop', told: 'picture 11m x 306', says: 'more than 10 m', not: 'picture 9m x 306' },
	{ code: 'not-read', level: 'stop', told: 'picture 1/0 x 306', says: '1/0', not: 'picture 1/2 x 306' },
	{
		code: 'needs-size',
		level: 'look',
		told: 'title Tide',
		says: '466 × 308 mm is what the mount leaves',
		not: 'shape 3:2',
	},
	{
		code: 'needs-size',
		level: 'look',
		told: 'picture width 456',
		says: 'Type picture height, or the shape',
		not: 'picture width 456, shape 3:2',
	},
	{
		code: 'needs-size',
		level: 'stop',
		told: 'mount fit',
		says: 'cannot be worked out yet',
		mend: 'Clear mount',
		not: 'mount fit, shape 3:2, picture width 300',
	},
	{
		code: 'does-not-fit',
		level: 'stop',
		told: 'mount width 359, window width 399, picture height 200',
		says: 'window’s width 399 is 40 larger than the mount’s 359 mm',
		mend: 'Clear window width',
		not: 'mount width 450, window width 399, picture height 200',
	},
	{
		code: 'does-not-fit',
		level: 'stop',
		told: 'shape 3:2, mount width 120, mount height 100',
		says: 'Borders of 70',
		not: 'shape 3:2, mount width 200, mount height 190',
	},
	{
		code: 'adds-up',
		level: 'stop',
		told: 'mount height 450, top 70, bottom 84, picture height 316, picture width 456',
		says: '70 + 310 + 84 = 464, 14 more than the mount’s 450 mm',
		mend: 'Set the overlap to 10 mm',
		not: 'mount height 464, top 70, bottom 84, picture height 316, picture width 456',
	},
	{
		code: 'adds-up',
		level: 'stop',
		told: 'mount width 600, side 70, window width 466, shape 3:2',
		says: '70 + 466 + 70 = 606, 6 more than the mount’s 600 mm',
		mend: 'Clear side: it becomes 67 mm',
		not: 'mount width 600, side 67, window width 466, shape 3:2',
	},
	{
		code: 'adds-up',
		level: 'stop',
		told: 'picture 456 x 306, window 446 x 296, overlap 3',
		says: 'asks for a window of 450 (overlap 3 a side), but 446 mm is typed: 4 less.',
		mend: 'Clear overlap',
		not: 'picture 456 x 306, window 446 x 296, overlap 5',
	},
	{
		code: 'adds-up',
		level: 'stop',
		told: 'shape 3:2, mount 500 x 400 mm, mount width 600',
		says: 'mount width 600 mm is not a side of the size in the mount cell',
		mend: 'Clear mount width: it becomes 500 mm',
		not: 'shape 3:2, mount 500 x 400 mm, mount width 500',
	},
	{
		code: 'unit-slip',
		level: 'stop',
		told: 'picture 45.6 x 30.6',
		says: 'read as cm (456, 306 mm), the row works out',
		mend: 'Read as cm: 456, 306 mm',
		not: 'picture 121 x 81',
	},
	{
		code: 'unit-slip',
		level: 'stop',
		told: 'picture 18 x 12',
		says: 'read as inches (457.2, 304.8 mm), the row works out',
		mend: 'Read as inches',
		not: 'picture 130 x 90',
	},
	{
		code: 'unit-slip',
		level: 'stop',
		told: 'picture 456 x 306, mount height 45',
		says: 'Mount height 45 may be in another unit: read as cm (450 mm)',
		mend: 'Read as cm: 450 mm',
		not: 'picture 456 x 306, mount height 450',
	},
	{
		code: 'unit-slip',
		level: 'stop',
		told: 'picture 119 x 79',
		says: 'may be in another unit',
		not: 'picture 120 x 80',
	},
	{
		code: 'own-size',
		level: 'look',
		told: 'picture 456 x 306, side 80',
		says: 'The mount is 610 × 470 mm, not the show’s 600 × 450 mm. Clear side',
		mend: 'Clear side: it becomes 75 mm',
		not: 'picture 456 x 306, side 75',
	},
	{
		code: 'own-size',
		level: 'look',
		told: 'shape 3:2, mount width 500, mount height 400',
		says: '500 × 400 mm',
		mend: 'Clear mount width and mount height',
		not: 'shape 3:2, mount 500 x 400 mm',
	},
	{
		code: 'own-size',
		level: 'look',
		told: 'picture 640 x 480',
		says: '774 × 622 mm',
		not: 'picture 456 x 306, mount fit',
	},
	{
		code: 'off-ruler',
		level: 'note',
		told: 'window 400.5 x 260',
		says: 'Side 99.8 is not on the ruler of 1 mm',
		mend: 'Make the window width 400 mm',
		not: 'window 400 x 260',
	},
	{
		code: 'uneven',
		level: 'look',
		told: 'picture 308 x 308',
		says: 'Side 149 and top 70 differ by 79 mm, 113 % of the smaller; 15 % is allowed',
		not: 'shape 3:2',
	},
	{
		code: 'uneven',
		level: 'look',
		told: 'picture 456 x 306, top 64, bottom 86',
		says: '75 and top 64',
		mend: 'Cut the mount to fit',
		not: 'picture 456 x 306, top 66, bottom 84',
	},
	{
		code: 'thin-border',
		level: 'look',
		told: 'picture 528 x 339',
		says: 'Side 39 is under the least border of 40 mm',
		mend: 'Cut the mount to fit',
		not: 'picture 526 x 339',
	},
	{
		code: 'top-heavy',
		level: 'look',
		told: 'picture 456 x 306, top 80',
		says: 'The bottom 70 is 10 mm narrower than the top 80',
		mend: 'Clear top: it becomes 71 mm',
		not: 'picture 456 x 306, top 75',
	},
	{
		code: 'falls-through',
		level: 'stop',
		told: 'picture 420 x 280, reveal 6, paper 420 x 297',
		says: 'The window’s width 432 is 12 mm larger than the paper’s 420: the print falls through',
		mend: 'Print on A3+, 483 × 329 mm',
		not: 'picture 420 x 280, reveal 6, paper 450 x 310',
	},
	{
		code: 'falls-through',
		level: 'stop',
		told: 'picture 420 x 280, reveal 6, paper 432 x 400',
		says: 'The window’s width 432 is as large as the paper’s 432',
		mend: 'Clear reveal',
		not: 'picture 420 x 280, reveal 6',
	},
	{
		code: 'falls-through',
		level: 'stop',
		told: 'picture 440 x 300, overlap 0, paper 480 x 300, inner mount 5',
		says: 'The window’s height 310 is 10 mm larger than the paper’s 300',
		mend: 'Clear paper',
		not: 'picture 440 x 300, overlap 0, paper 480 x 311, inner mount 5',
	},
	{
		code: 'needs-paper',
		level: 'look',
		told: 'picture 420 x 280, reveal 6',
		says: 'The window 432 × 292 mm is no smaller than the picture 420 × 280 mm. Type the paper that reaches under the mount.',
		mend: 'Print on A3+, 483 × 329 mm',
		not: 'picture 420 x 280, reveal 6, paper 450 x 310',
	},
	{
		code: 'needs-paper',
		level: 'look',
		told: 'picture 456 x 306, overlap 0',
		says: 'The window 456 × 306 mm is no smaller than the picture 456 × 306 mm',
		mend: 'Clear overlap',
		not: 'picture 456 x 306, overlap 1',
	},
	{
		code: 'needs-paper',
		level: 'look',
		told: 'picture 456 x 306, signing space 10',
		says: 'The window’s height 313 is no smaller than the picture’s 306',
		mend: 'Clear signing space',
		not: 'picture 456 x 306, inner mount 5',
	},
	{
		code: 'needs-paper',
		level: 'look',
		told: 'picture 10 x 7, reveal 1/4',
		says: '10½ × 7½ in is no smaller than the picture 10 × 7 in',
		mend: 'Print on Letter, 11 × 8½ in',
		not: 'picture 10 x 7, reveal 1/4, paper 11 x 17',
		show: inch,
	},
	{
		code: 'paper-short',
		level: 'look',
		told: 'picture 10 x 7, reveal 1/4, paper 10 7/8 x 9',
		says: 'by only 3/16 in at the sides; ¼ in hold it',
		mend: 'Print on Letter, 11 × 8½ in',
		not: 'picture 10 x 7, reveal 1/4, paper 11 x 9',
		show: inch,
	},
	{
		code: 'bare-paper',
		level: 'look',
		told: 'picture 400 x 260, window 406 x 256, paper 440 x 290',
		says: 'window’s width 406 is larger than the picture’s 400: 3 mm of bare paper',
		mend: 'Clear window width',
		not: 'picture 400 x 260, window 394 x 254, paper 440 x 290',
	},
	{
		code: 'thin-overlap',
		level: 'look',
		told: 'picture 456 x 306, overlap 1',
		says: 'covers only 1 mm of the picture at the sides, less than the cutting tolerance of 2 mm',
		mend: 'Clear overlap',
		not: 'picture 456 x 306, overlap 2',
	},
	{
		code: 'turned',
		level: 'look',
		told: 'shape 3:2, mount width 450, mount height 600',
		says: 'lies wide, its mount 450 × 600 mm tall',
		mend: 'Turn the mount',
		not: 'shape 3:2, mount width 600, mount height 450',
	},
	{
		code: 'over-limit',
		level: 'stop',
		told: 'picture 640 x 480',
		says: 'The mount is 774 × 622 mm; the largest allowed is 600 × 450 mm',
		mend: 'Clear picture width',
		not: 'picture 456 x 306',
		show: { ...wideShow, limits: { largest: '600 x 450 mm' } },
	},
	{
		code: 'over-limit',
		level: 'stop',
		told: 'shape 3:2, mount width 20 in, mount height 16 in',
		says: '508 × 406.4 mm; the rules ask for 500 × 400 mm ± 2 mm',
		mend: 'Clear mount width and mount height',
		not: 'shape 2:3, mount width 402, mount height 498',
		show: { limits: { exact: '500 x 400 mm', within: '2 mm' } },
	},
	{
		code: 'under-limit',
		level: 'stop',
		told: 'shape 3:2, mount width 300, mount height 250',
		says: 'the smallest allowed is 400 × 300 mm',
		mend: 'Clear mount width and mount height',
		not: 'shape 2:3, mount width 300, mount height 400',
		show: { ...wideShow, limits: { smallest: '400 x 300 mm' } },
	},
	{
		code: 'thin-border',
		level: 'look',
		told: 'picture 17 1/2 x 11',
		says: 'Side 1⅜ is under the least border of 1½ in',
		mend: 'Cut the mount to fit',
		not: 'picture 17 x 11',
		show: inch,
	},
];

test.each([
	['window 356 x 236, picture 350 x 230', wideShow],
	['picture 360 x 240, overlap 200', wideShow],
	['picture 640 x 480', wideShow],
	['shape 3:2, mount fit, picture width 300', wideShow],
])('%s is told of no slip of units: no reading of it makes sense', (line, show) =>
	expect(codesOf(line, show)).not.toContain('unit-slip'),
);

test.each([
	['picture 360 x 240', { unit: 'in', mountSize: '20 x 16 in', border: '2 1/2 in' }, 'Read as mm'],
	['picture 360 x 240', { unit: 'cm', mountSize: '50 x 40 cm', border: '7 cm' }, 'Read as mm'],
	['mount 60 x 45, picture 456 x 306', wideShow, 'Read as cm: 600 × 450 mm'],
])('%s in another unit is brought back to a size that works', (line, show, mend) => {
	const finding = resultOf(rowOf(line), show).findings.find(({ code }) => code === 'unit-slip');
	expect(finding?.mends[0]?.label).toContain(mend);
});

describeRules(cases);

test('a row that may be cut is told nothing', () => expect(codesOf('picture 456 x 306')).toEqual([]));

test('stops come first, then looks, then notes', () => {
	const levels = resultOf(rowOf('picture 456 x 306, overlap 0, top 80.5, mount 1 x 1')).findings.map(
		({ level }) => level,
	);
	expect(levels).toEqual([...levels].sort((a, b) => 'stop look note'.indexOf(a) - 'stop look note'.indexOf(b)));
});

test('a row in which nothing is typed yet is told nothing, and not cut', () =>
	expect(resultOf(rowOf(''))).toMatchObject({ findings: [], copies: 0 }));
