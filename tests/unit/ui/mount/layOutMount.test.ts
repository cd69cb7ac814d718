import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import { floatDrawn, layOutMount, mountOf, place } from '../../../../src/ui/mount/layOutMount.ts';
import { clashWords, coverWords, frontWords } from '../../../../src/ui/mount/mountWords.ts';

const scale = { unit: 'mm', ruler: mm(1) } as const;

const { settings } = readSettings({ mountSize: '600 x 450', border: '70', bottomWeight: '12%' });
const solvedOf = (typed: Row['typed']) => judgeRow({ id: 'a', order: 1, typed }, settings).solved;

test('window and picture lie where the borders and the overlap put them', () => {
	// 600 x 450: side 75, top 71, bottom 79, window 450 x 300; the picture 3 under the mount on each side
	const layout = layOutMount(solvedOf({ 'picture width': '456', 'picture height': '306' }))!;
	expect(layout.across.window).toEqual({ start: 75, end: 525, isKnown: true });
	expect(layout.down.window).toEqual({ start: 71, end: 371, isKnown: true });
	expect(layout.across.picture).toEqual({ start: 72, end: 528, isKnown: true });
	expect(layout.down.picture).toEqual({ start: 68, end: 374, isKnown: true });
	expect(layout.missing).toEqual([]);
});

test('with a reveal the picture lies inside, the signing space below it', () => {
	const layout = layOutMount(
		solvedOf({ 'picture width': '420', 'picture height': '280', reveal: '6', 'signing space': '10' }),
	)!;
	const { window, picture } = layout.down;
	expect([picture!.start - window.start, window.end - picture!.end]).toEqual([6, 16]);
});

test('what a conflict leaves open is drawn at a likely size and named', () => {
	const solved = solvedOf({ 'mount height': '450', top: '70', bottom: '84', 'picture height': '316' });
	const layout = layOutMount(solved)!;
	expect(layout.down.window.isKnown).toBe(false);
	expect(layout.missing).toContain('window height');
	expect(layout.down.window.end).toBeGreaterThan(layout.down.window.start);
	expect(frontWords(solved, scale)).toContain('?');
});

test('nothing known: nothing to draw', () => {
	const nothing = Object.fromEntries(Object.keys(solvedOf({})).map((key) => [key, undefined]));
	expect(layOutMount(nothing as unknown as ReturnType<typeof solvedOf>)).toBeUndefined();
});

test('a drawing is to scale, inside its box, and mirrored from the back', () => {
	const layout = layOutMount(solvedOf({ 'picture width': '456', 'picture height': '306', side: '80' }))!;
	const room = { left: 20, right: 20, top: 20, bottom: 20 };
	const front = place(layout, { width: 340, height: 300 }, room);
	expect(front.x(layout.across.mount.end) - front.x(0)).toBeCloseTo(300, 6); // 610 mm into 300 pixels: width decides
	expect((front.x(100) - front.x(0)) / (front.y(100) - front.y(0))).toBeCloseTo(1, 9);
	const back = place(layout, { width: 340, height: 300 }, room, true);
	expect(back.x(0)).toBeCloseTo(front.x(layout.across.mount.end), 6);
	expect(back.y(0)).toBe(front.y(0));
});

test.each([
	{ side: 3, top: 3, bottom: 3, says: 'The mount covers 3 mm of the picture on each side.' },
	{ side: -6, top: -6, bottom: -6, says: 'The mount leaves 6 mm round the picture.' },
	{ side: 4, top: 5, bottom: 5, says: 'The mount covers 4 mm at the sides and 5 mm at top and bottom.' },
	{
		side: 3,
		top: 3,
		bottom: -10,
		says: 'The mount covers 3 mm at the sides, 3 mm at the top and leaves 10 mm at the bottom.',
	},
])('$side, $top, $bottom: $says', ({ side, top, bottom, says }) => {
	const solved = { ...solvedOf({}), overlapSide: mm(side), overlapTop: mm(top), overlapBottom: mm(bottom) };
	expect(coverWords(solved, scale)).toBe(says);
});

test.each([
	{ typed: { 'picture width': '456', 'picture height': '306' }, says: '' },
	{
		typed: { 'mount height': '450', top: '70', bottom: '84', 'picture height': '316', 'picture width': '400' },
		says: 'the height does not add up',
	},
	{
		typed: { 'mount width': '359', 'mount height': '450', 'window width': '399', 'picture height': '316' },
		says: 'the width does not fit',
	},
])('$typed: “$says”', ({ typed, says }) =>
	expect(clashWords(judgeRow({ id: 'a', order: 1, typed }, settings).findings)).toBe(says),
);

test('of a float the paper stands where a window would, and the picture lies within it', () => {
	const floatOf = (typed: Row['typed']) => {
		const result = judgeRow({ id: 'a', order: 1, typed: { ...typed, mounting: 'float' } }, settings);
		return layOutMount(floatDrawn(result.solved, result.onPaper))!;
	};
	const picture = { 'picture width': '300', 'picture height': '200' };
	// 600 − 350 = 250, half of it on each side; 450 − 240 = 210, shared as 99 and 111
	const layout = floatOf({ ...picture, paper: '350 x 240', 'margin left': '20' });
	expect(layout.across.window).toEqual({ start: 125, end: 475, isKnown: true });
	expect(layout.across.picture).toEqual({ start: 145, end: 445, isKnown: true });
	expect(layout.down.window).toEqual({ start: 99, end: 339, isKnown: true });
	expect(layout.down.picture).toEqual({ start: 119, end: 319, isKnown: true });
	expect(layout.missing).toEqual([]);
	const bare = floatOf(picture);
	expect(bare.across.window).toEqual(bare.across.picture);
});

test('with an inner mount the picture is covered from its window on, as much on the left as on the right', () => {
	const { settings } = readSettings({ mountSize: '500 x 400 mm' });
	const typed = { 'picture width': '300', 'picture height': '200', 'inner mount': '5' };
	const { solved, read } = judgeRow({ id: 'a', order: 1, typed }, settings);
	const { across } = layOutMount(solved, read.cells.innerMount)!;
	expect([across.picture!.start, across.picture!.end]).toEqual([100, 400]);
});

test('the front of a float is told by its board, its paper and the paper’s edge, and nothing covers it', () => {
	const { settings: deckled } = readSettings({ papers: [{ name: 'Rag', width: 350, height: 240, edge: 'deckle' }] });
	const typed = { mounting: 'float', 'picture width': '300', 'picture height': '200', paper: 'Rag' };
	const { solved, floatEdge } = mountOf(judgeRow({ id: 'a', order: 1, typed }, deckled));
	expect(frontWords(solved, deckled, floatEdge)).toBe(
		'Float on a board 500 × 400 mm, paper 350 × 240 mm with a deckle edge. Borders: sides 75, top 76, bottom 84 mm. Picture 300 × 200 mm.',
	);
});
