import { expect, test } from 'vitest';
import { placeBorderWords, type PlacedWords, type WordsAt } from '../../../../src/ui/bench/placeBorderWords.ts';
import { widthOfWords } from '../../../../src/ui/length/widthOfWords.ts';

const sides = ['top', 'bottom', 'left', 'right'] as const;

/** The words of a mount of 700 × 550 with these borders, and its lines. */
function placed(borders: Readonly<Record<(typeof sides)[number], number>>, text = 29) {
	const lines = {
		width: 700,
		height: 550,
		left: 700 - borders.left,
		right: borders.right,
		top: borders.top,
		bottom: 550 - borders.bottom,
	};
	const words = placeBorderWords(
		sides.map((side) => ({ side, measure: String(borders[side]) })),
		lines,
		text,
	);
	return { lines, words };
}

/** The box that words fill, roughly: left, right, top, bottom. */
function boxOf(words: string, { x, y, anchor }: WordsAt, text = 29) {
	const wide = text * widthOfWords(words);
	const left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
	return { left, right: left + wide, top: y - 0.75 * text, bottom: y };
}
const isOnMount = (box: ReturnType<typeof boxOf>) => box.right > 0 && box.left < 700 && box.bottom > 0 && box.top < 550;

test.each([
	['wide', { top: 93, bottom: 100, left: 80, right: 80 }, 0],
	['so wide that the window is narrow', { top: 200, bottom: 220, left: 320, right: 320 }, 0],
	['narrow at the sides', { top: 93, bottom: 100, left: 40, right: 40 }, 2],
	['narrow all round', { top: 20, bottom: 25, left: 20, right: 20 }, 4],
])('no measure of a border stands in the window: %s', (_, borders, outside) => {
	const { lines, words } = placed(borders);
	expect(words.filter(({ isOutside }) => isOutside)).toHaveLength(outside);
	for (const each of words) {
		const box = boxOf(each.measure, each.measureAt);
		const isInWindow =
			box.right > lines.right && box.left < lines.left && box.bottom > lines.top && box.top < lines.bottom;
		expect(isInWindow, each.side).toBe(false);
		expect(isOnMount(box), each.side).toBe(!each.isOutside);
		const side = boxOf(each.side, each.sideAt);
		expect(isOnMount(side), `${each.side} is named beside the mount`).toBe(false);
		const isOver = side.right > box.left && side.left < box.right && side.bottom > box.top && side.top < box.bottom;
		expect(isOver, `${each.side} lies over its measure`).toBe(false);
	}
});

test('no side stands over its measure on one line between the two, as in a fraction', () => {
	const { words } = placed({ top: 93, bottom: 100, left: 80, right: 70 });
	for (const { side, sideAt, measureAt, from } of words.slice(2)) {
		expect(measureAt.y, side).toBeLessThan(from[1]);
		expect(Math.abs(sideAt.x - measureAt.x), side).toBeGreaterThan(29);
	}
});

test('a dimension line runs over the whole border, from the edge to the line of the cut', () => {
	const { words } = placed({ top: 93, bottom: 100, left: 80, right: 70 });
	const long = ({ from, to }: PlacedWords) => Math.abs(from[0] - to[0]) + Math.abs(from[1] - to[1]);
	expect(words.map((each) => [each.side, long(each)])).toEqual([
		['top', 93],
		['bottom', 100],
		['left', 80],
		['right', 70],
	]);
	// The left border lies at the right of a back.
	expect(words[2]!.from[0]).toBe(700);
});
