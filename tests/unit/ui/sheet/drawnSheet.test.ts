import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { bottomMark, cutLine, inMm, numberPlace, setsNow } from '../../../../src/ui/sheet/drawnSheet.ts';

const piece = { x: mm(100), y: mm(200), width: mm(600), height: mm(400) };
const down = { piece, across: 'width', at: mm(250) } as const;
const over = { piece, across: 'height', at: mm(150) } as const;

test('a piece lies where it is cut, in millimetres', () =>
	expect(inMm(piece)).toEqual({ x: 100, y: 200, width: 600, height: 400 }));

test('a cut through the width goes from the top edge of its piece to the bottom, one through the height from the left', () => {
	expect(cutLine(down)).toEqual({ x1: 350, y1: 200, x2: 350, y2: 600 });
	expect(cutLine(over)).toEqual({ x1: 100, y1: 350, x2: 700, y2: 350 });
});

test('the number of a cut stands on its line, a letter from where it begins', () => {
	expect(numberPlace(down, 10, false)).toEqual({ x: 350, y: 211 });
	expect(numberPlace(over, 10, false)).toEqual({ x: 111, y: 350 });
});

test('on a short line it stands in the middle, and a third along a factory edge', () => {
	expect(numberPlace(down, 300, false)).toEqual({ x: 350, y: 400 });
	expect(numberPlace(over, 10, true)).toEqual({ x: 300, y: 350 });
});

test('what the knife is set to reaches from the edge of the piece to the cut, each place once', () => {
	const below = { ...down, piece: { ...piece, y: mm(600) } };
	expect(setsNow([down, over, below], [0, 1, 2])).toEqual([
		{ across: 'width', from: 100, to: 350, at: mm(250) },
		{ across: 'height', from: 200, to: 350, at: mm(150) },
	]);
	expect(setsNow([down, over], [])).toEqual([]);
});

test('the bottom of a mount is marked on the lower edge of its blank, turned on the left one, as its picture lies', () => {
	const at = inMm(piece);
	expect(bottomMark(at, false, 10)).toBe('M400 600l-10 -10h20Z');
	expect(bottomMark(at, true, 10)).toBe('M100 400l10 -10v20Z');
});
