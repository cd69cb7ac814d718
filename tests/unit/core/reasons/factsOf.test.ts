import { expect, test } from 'vitest';
import { factsOf } from '../../../../src/core/reasons/factsOf.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { rowOf, wideShow } from '../findings/rowOf.ts';

const { settings } = readSettings({
	...wideShow,
	boards: [{ name: 'White', width: 1000, height: 800, thickness: 1.4 }],
	undermount: 'White',
	frames: [{ name: 'Oak', rebateWidth: '604 mm', rebateHeight: '454 mm', lip: '6 mm' }],
});
const facts = (line: string) => factsOf(workOut(rowOf(line), settings), settings);

test('what one sees, in and out of the frame', () => {
	// The bevel takes 1.4 mm of each border; the lip 6 mm less 2 mm of play as well.
	expect(facts('picture 456 x 306')).toEqual([
		'With the bevel, the opening at the front is 452.8 × 302.8 mm. Visible borders without a frame: sides 73.6, top 69.6, bottom 77.6 mm.',
		'In the frame “Oak” each border loses the lip’s 6 less half the play, 2, and the bevel’s 1.4 mm. Visible borders inside the frame: sides 69.6, top 65.6, bottom 73.6 mm.',
		'Mount, print and undermount are 1.4 + 0.3 + 1.4 = 3.1 mm thick.',
		// The picture lies 75 − 3 = 72 from the left: a quarter of its 456 further, and three.
		'No paper yet. Only for a print trimmed to 456 × 306 mm. 2 hinges, at 186 and 414 mm from the undermount’s left edge. Leave heavy or valuable work to a conservator.',
		'The rebate of “Oak” is 604 × 454 mm: play 4 across, 4 mm down.',
		'The stack is about 2 + 1.4 + 0.3 + 1.4 + 3 = 8.1 mm.',
	]);
});

test('where the paper lies, long side with the picture’s', () =>
	// The picture lies 75 − 3 = 72 from the left and 71 − 3 = 68 from the top; the paper reaches 22 and 24 further.
	expect(facts('picture 456 x 306, paper 354 x 500')).toContain(
		'The paper 500 × 354 mm lies 50 from the mount’s left edge and 44 mm from its top.',
	));

test('where the picture lies on its paper, and how it hangs', () => {
	const frames = [{ name: 'Oak', width: 600, height: 450, lip: 6, moulding: 20, weight: 0.5, depth: 20 }];
	const { settings: framed } = readSettings({ ...wideShow, frames });
	const told = factsOf(workOut(rowOf('picture 300 x 200, paper 350 x 240, margin left 20'), framed), framed);
	expect(told.slice(-6)).toEqual([
		'The picture lies on its paper with margins of 20 left, 20 above, 30 right and 20 mm below.',
		'2 hinges, at 218 and 393 mm from the mount’s left edge, as seen from the front. Leave heavy or valuable work to a conservator.',
		'The rebate of “Oak” is 603 × 453 mm: play 3 across, 3 mm down.',
		'Framed, it is 631 × 481 mm: the rebate + 2 × (20 − 6 mm).',
		'The stack is about 2 + 1.4 + 0.3 + 3 = 6.7 mm of the rebate’s 20 mm.',
		// 0.27 m² · (2 · 2.5, 1.4 · 0.7, 0.3 · 0.7, 3 · 0.7), and 0.5 kg · 2.224 m
		'It weighs about 3.4 kg, in grams: glazing 1350, mount 265, print 57, backing 567, moulding 1112.',
	]);
});

test('where the paper of a float lies', () =>
	expect(facts('mounting float, picture 300 x 200, paper 350 x 240')).toContain(
		'The paper 350 × 240 mm lies 125 from the board’s left edge and 99 mm from its top.',
	));

test('and that its edge is a deckle, where the list of papers says so', () => {
	const { settings: deckled } = readSettings({
		...wideShow,
		papers: [{ name: 'Rag', width: 350, height: 240, edge: 'deckle' }],
	});
	const said = (line: string) => factsOf(workOut(rowOf(line), deckled), deckled).join(' ');
	expect(said('mounting float, picture 300 x 200, paper Rag')).toContain(
		'The paper 350 × 240 mm, with a deckle edge, lies 125 from the board’s left edge',
	);
	// Under a window no edge is seen.
	expect(said('picture 300 x 200, paper Rag')).not.toContain('deckle');
});

test('the window and blank of an inner mount', () =>
	expect(facts('picture 456 x 306, inner mount 5')).toContain(
		'The inner mount’s window is 450 × 300 mm, its blank 594 × 444 mm.',
	));

test('nothing of a row that does not come out, or has no mount', () => {
	expect(facts('mount fit')).toEqual([]);
	expect(facts('picture 456 x 306, mount none')).toEqual([]);
});
