import { expect, test } from 'vitest';
import { boardColour, cssColour } from '../../../../src/core/values/boardColour.ts';

test.each([
	{ words: '#fff', lightness: 1, chroma: 0 },
	{ words: '#000000', lightness: 0, chroma: 0 },
	// CSS Color 4 gives oklch(62.8% 0.258 29.2) for red and oklch(45.2% 0.313 264.1) for blue.
	{ words: '#ff0000', lightness: 0.628, chroma: 0.258, hue: 29.2 },
	{ words: ' #00f ', lightness: 0.452, chroma: 0.313, hue: 264.1 },
])('$words is lightness $lightness, chroma $chroma', ({ words, lightness, chroma, hue }) => {
	const colour = boardColour(words)!;
	expect(colour.lightness).toBeCloseTo(lightness, 3);
	expect(colour.chroma).toBeCloseTo(chroma, 3);
	if (hue !== undefined) expect(colour.hue).toBeCloseTo(hue, 0);
});

test.each(['', 'constructor', 'Kiln 12', '#12345', 'toString white-ish'.replace('white', 'w')])(
	'“%s” says no colour',
	(words) => expect(boardColour(words)).toBeUndefined(),
);

const lightness = (words: string) => boardColour(words)!.lightness;
const isWarm = (words: string) => boardColour(words)!.hue < 120;

test('the last word of colour counts, and those before it shade it', () => {
	expect(lightness('Black core')).toBe(lightness('black'));
	expect(lightness('pale grey')).toBeGreaterThan(lightness('grey'));
	expect(lightness('dark grey')).toBeLessThan(lightness('grey'));
	expect(lightness('grey white')).toBe(lightness('white'));
	expect([isWarm('warm white'), isWarm('cool white')]).toEqual([true, false]);
	expect(boardColour('warm red')!.hue).toBe(boardColour('red')!.hue); // a strong colour keeps its own
	expect(boardColour('warm white')).not.toEqual(boardColour('white'));
});

test('no heap of words leads out of what can be drawn', () => {
	for (const words of ['dark '.repeat(50) + 'black', 'light '.repeat(50) + 'white'])
		expect(lightness(words)).toSatisfy((value: number) => value >= 0.15 && value <= 0.99);
});

test('it is written as CSS writes it', () => {
	expect(cssColour({ lightness: 0.96499, chroma: 0.0141, hue: 80 })).toBe('oklch(0.965 0.014 80)');
});
