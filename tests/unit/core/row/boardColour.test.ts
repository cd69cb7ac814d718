import { expect, test } from 'vitest';
import { boardColour, inkOn } from '../../../../src/core/row/boardColour.ts';
import { boardColour as colourOf, cssColour } from '../../../../src/core/values/boardColour.ts';

const found = (name: string, colour?: string) => ({
	name,
	board: { name, ...(colour !== undefined && { colour }) } as never,
});
const of = (name: string, colour?: string) => boardColour(found(name, colour));

test('the colour of a board is what its entry says, else what its name says: the same in drawings and in the settings', () => {
	expect(of('Museum 2 mm', 'Ivory')).toBe(of('ivory'));
	expect(of('Off-white cotton')).toBe(of('x', 'off white'));
	expect(of('Off-white cotton')).not.toBe(of('x', 'white'));
	expect(of('Dark gray')).toBe(of('x', 'dark grey'));
	expect(of('Black core', '#A08060')).toBe(cssColour(colourOf('#a08060')!));
	expect(of('Museum')).toBeUndefined();
	expect(of('Blackened')).toBeUndefined();
});

/** Relative luminance of sRGB, by WCAG 2.2. */
function luminance(hex: string): number {
	const [red, green, blue] = hex.match(/../g)!.map((pair) => {
		const value = parseInt(pair, 16) / 255;
		return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

test('words and lines on a board have a contrast of 4.5 to 1, whatever its colour', () => {
	const parts = ['00', '33', '66', '99', 'cc', 'ff'];
	for (const red of parts)
		for (const green of parts)
			for (const blue of parts) {
				const board = luminance(red + green + blue);
				const ink = luminance(inkOn(found('x', `#${red}${green}${blue}`))!.slice(1));
				const contrast = (Math.max(board, ink) + 0.05) / (Math.min(board, ink) + 0.05);
				expect(contrast, red + green + blue).toBeGreaterThanOrEqual(4.5);
			}
	expect(inkOn(found('Museum'))).toBeUndefined();
});
