import { expect, test } from 'vitest';
import { figuresOf } from '../../../../src/core/reasons/figuresOf.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { rowOf, wideShow } from '../findings/rowOf.ts';

const { settings } = readSettings({
	...wideShow,
	boards: [{ name: 'White', width: 1000, height: 800, thickness: 1.4 }],
	undermount: 'White',
	frames: [
		{ name: 'Oak', rebateWidth: '604 mm', rebateHeight: '454 mm', lip: '6 mm', moulding: 20, weight: 0.5, depth: 20 },
	],
});
const figures = (line: string, by = settings) =>
	figuresOf(workOut(rowOf(line), by), by).map(({ what, figures: said }) => `${what}: ${said}`);

test('a print in its mount and frame', () =>
	expect(figures('picture 456 x 306, board White, glazing glass')).toEqual([
		'Picture: 456 × 306 mm',
		'Mount covers: 3 mm all round',
		'Window at the face: 452.8 × 302.8 mm',
		'Mount, print and undermount: 3.1 mm', // 1.4 + 0.3 + 1.4
		'Only if trimmed to: 456 × 306 mm',
		'2 hinges at: 186 and 414 mm from left', // a quarter of 456 from each side, and 75 − 3
		'Off the glass: 1.4 mm',
		'Framed: 632 × 482 mm', // 604 + 2 × (20 − 6)
		'Play: 4 across, 4 mm down',
		'Stack: about 8.1 of 20 mm',
		expect.stringMatching(/^Weight: about \d\.\d kg$/),
	]));

test('covered at the sides and shown above and below: each is said where it is so', () =>
	expect(figures('picture 456 x 306, window 448 x 320, paper 500 x 400')).toEqual(
		expect.arrayContaining([
			'Mount covers: 4 mm each side',
			'Paper shows: 7 mm top and bottom',
			'Margins: 22 mm left and right, 47 mm top and bottom',
		]),
	));

test('where the paper lies, and an inner mount', () => {
	expect(figures('picture 456 x 306, paper 354 x 500')).toEqual(
		expect.arrayContaining(['Paper: 500 × 354 mm', 'Paper sits: 50 from left, 44 mm from top']),
	);
	expect(figures('picture 456 x 306, inner mount 5')).toEqual(
		expect.arrayContaining(['Inner window: 450 × 300 mm', 'Inner blank: 594 × 444 mm']),
	);
});

test('a print without a mount and glazing has its picture only', () =>
	expect(figures('picture 456 x 306, mount none, glazing none, frame none')).toEqual([
		'Picture: 456 × 306 mm',
		'Glazing: none',
	]));

test('a square picture says where the ruler leaves its window out of square', () => {
	// 600 − 291 leaves 154.5 at the sides, which go up to 155; 450 − 291 leaves 159, of which no half is lost.
	expect(figures('picture 297 x 297')).toContain('Window not square: 290 × 291 mm, by the ruler’s 1 mm');
	const said = (line: string) => figures(line).join();
	expect(said('picture 308 x 308'), 'a square window').not.toContain('not square');
	expect(said('picture 297 x 296')).not.toContain('not square');
	expect(said('picture 297 x 297, window 280 x 290'), 'typed so').not.toContain('not square');
});

test('what touches the glass is said', () =>
	expect(figures('picture 456 x 306, mount none, glazing glass')).toContain('Off the glass: nothing'));
