import { expect, test } from 'vitest';
import { type SheetRoom, sheetScale } from '../../../../src/ui/sheet/sheetScale.ts';

const sheet = { width: 1200, height: 900, heightText: '900', under: 1, beside: 1 };

/** How large the drawing is on the page, in pixels, where a letter is so many high. */
function drawnOf(room: SheetRoom, letters: number) {
	const { letter, row, column, beyond } = sheetScale(room);
	const pixels = letters / letter;
	return {
		width: pixels * (room.width + column * room.beside + beyond),
		height: pixels * (room.height + row * room.under + beyond),
	};
}

test('a sheet is as wide as its room, and as high as that makes it', () => {
	const drawn = drawnOf({ ...sheet, shownWidth: 500, shownHeight: 0, isFitted: false }, 13);
	expect(drawn.width).toBeCloseTo(500);
	expect(drawn.height).toBeGreaterThan(300);
});

test.each([
	{ room: 'low', shownWidth: 1200, shownHeight: 500, fills: 'height' },
	{ room: 'narrow', shownWidth: 600, shownHeight: 1000, fills: 'width' },
] as const)('fitted into a $room room it fills its $fills, in larger letters', ({ shownWidth, shownHeight, fills }) => {
	const drawn = drawnOf({ ...sheet, shownWidth, shownHeight, isFitted: true }, 18);
	expect(drawn[fills]).toBeCloseTo({ width: shownWidth, height: shownHeight }[fills]);
	expect(drawn.width).toBeLessThanOrEqual(shownWidth + 0.001);
	expect(drawn.height).toBeLessThanOrEqual(shownHeight + 0.001);
});

test('where there is no room for more measures it is a speck, and never less', () => {
	const { letter } = sheetScale({ ...sheet, beside: 20, shownWidth: 300, shownHeight: 0, isFitted: false });
	expect(13 / letter).toBeCloseTo(1 / sheet.width);
});
