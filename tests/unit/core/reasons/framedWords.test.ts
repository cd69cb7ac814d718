import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import {
	depthWords,
	framedFrontWords,
	hingeWords,
	legWords,
	stackLines,
} from '../../../../src/core/reasons/framedWords.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';

const oak = { name: 'Oak', width: 500, height: 400, clearance: 3, depth: 12, lip: 6, moulding: 22 };
const board = { name: 'Chalk', kind: 'sheet', width: 1200, height: 900, thickness: 2 };

function worked(frame: object, show: object = {}) {
	const { settings, problems } = readSettings({ frames: [{ ...oak, ...frame }], boards: [board], ...show });
	expect(problems).toEqual([]);
	return [judgeRow({ id: 'a', order: 1, typed: { shape: '3:2', frame: 'Oak' } }, settings), settings] as const;
}
const show = { mountSize: '500 x 400 mm', leastBorder: 30 };

test('what lies in the rebate is named from the front, and what is left behind it', () => {
	const glazing = [{ name: 'Clear', material: 'glass', width: 1000, height: 800, thickness: 2.5 }];
	expect(stackLines(...worked({}, { ...show, glazing })).map(({ words }) => words)).toEqual([
		'glazing 2.5 mm',
		'mount 2 mm',
		'print about 0.3 mm',
		'backing about 3 mm',
		'free about 4.2 mm',
	]);
});

test.each([
	[12, 'The stack is about 7.3 mm deep; the rebate is 12 mm.'],
	[7, 'The stack is about 7.3 mm deep, 0.3 mm more than the rebate’s 7 mm.'],
	[undefined, 'The stack is about 7.3 mm deep. The settings don’t say how deep the rebate is.'],
])('a rebate of %s mm', (depth, words) => {
	expect(depthWords(...worked({ depth }, show))).toBe(words);
	const isLeft = stackLines(...worked({ depth }, show)).some(({ what }) => what === 'room for points');
	expect(isLeft).toBe(depth === 12);
});

test('in its frame: the outer size, the play, and the borders that show', () => {
	// The rebate 503 x 403 has 3 of play round the mount of 500 x 400; the lip hides 6 - 1.5, the bevel 2.
	const [result, settings] = worked({}, { ...show, mountSize: '500 x 400 mm', border: 60 });
	const { side, top, bottom } = result.solved;
	const seen = [side!, top!, bottom!].map((border) => border / 10_000_000 - 6.5);
	expect(framedFrontWords(result, settings)).toBe(
		`Framed in “Oak”, 535 × 435 mm. The mount has 3 mm of play. Visible borders inside the frame: sides ${seen[0]}, top ${seen[1]}, bottom ${seen[2]} mm.`,
	);
	expect(framedFrontWords(result, settings, true), 'under a drawing').toBe(
		'Framed in “Oak”. The mount has 3 mm of play.',
	);
	expect(framedFrontWords(...worked({ moulding: undefined }, show))).toMatch(/its face width or lip is not/);
});

test('the paper on the undermount and its hinges, from the left', () => {
	const { settings } = readSettings({ mountSize: '700 x 550 mm', border: 80 });
	const typed = { 'picture width': '500', 'picture height': '340', paper: '600 x 420 mm' };
	const result = judgeRow({ id: 'a', order: 1, typed }, settings);
	// The paper lies in the middle of 700: 50 from the left; three hinges at 100, 300 and 500 of its 600.
	expect(hingeWords(result, settings)).toMatch(
		/^The paper, 600 × 420 mm, lies 50 from the left and \d+ mm from the top, seen from the front\. Hinges at 150, 350 and 550 mm from the left\. No undermount is set\. On the back of the mount, measure from the left edge, at your right hand\.$/,
	);
});

test('without a paper the figures are only for a print trimmed to its picture, and that is said first', () => {
	const { settings } = readSettings({ mountSize: '600 x 450 mm', border: 70, undermount: 'Grey' });
	const typed = { 'picture width': '464', 'picture height': '309.3' };
	const result = judgeRow({ id: 'a', order: 1, typed }, settings);
	expect(hingeWords(result, settings)).toMatch(
		/^No paper yet\. Only for a print trimmed to 464 × 309\.3 mm\. The print lies 68 from the left and .* Hinges at 184 and 416 mm/,
	);
	const onPaper = judgeRow({ id: 'a', order: 1, typed: { ...typed, paper: '483 x 329 mm' } }, settings);
	expect(hingeWords(onPaper, settings)).toMatch(/^The paper, 483 × 329 mm, lies/);
});

test('where an undermount is set, or a float lies on its board, hinges are on that', () => {
	const typed = { 'picture width': '300', 'picture height': '200' };
	const wordsOf = (show: object, more: object = {}) => {
		const { settings } = readSettings({ mountSize: '500 x 400 mm', boards: [board], ...show });
		return hingeWords(judgeRow({ id: 'a', order: 1, typed: { ...typed, ...more } }, settings), settings);
	};
	expect(wordsOf({})).toContain('No undermount is set');
	expect(wordsOf({ undermount: 'Chalk' })).not.toContain('undermount');
	expect(wordsOf({}, { mounting: 'float' })).not.toContain('undermount');
});

test('a frame that is made has its legs, long point to long point; one that is bought has none', () => {
	const made = { width: undefined, height: undefined };
	// 500 + 3 + 2 · (22 − 6) by 400 + 35
	expect(legWords(...worked(made, show))).toBe('two of 535 and two of 435 mm');
	expect(legWords(...worked(made, { ...show, mountSize: '400 x 400 mm' }))).toBe('four of 435 mm');
	expect(legWords(...worked({ ...made, lip: undefined }, show))).toBeUndefined();
	expect(legWords(...worked({}, show))).toBeUndefined();
});
