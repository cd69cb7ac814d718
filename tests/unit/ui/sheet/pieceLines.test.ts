import { expect, test } from 'vitest';
import { pieceLines } from '../../../../src/ui/sheet/pieceLines.ts';

/** Letters 13 high, as on the screen. */
const on = (words: readonly string[], width: number, height: number) => pieceLines(words, width, height, 13);

test('in a narrow upright piece the words are stacked upright, and a size stays whole', () => {
	expect(on(['offcut', '130 × 900'], 60, 353)).toEqual({ lines: ['offcut', '130 ×', '900'], way: 'stacked' });
	expect(on(['3 Net store', '150 × 700'], 60, 280).lines).toEqual(['3 Net', 'store', '150 ×', '700']);
});

test('a name gives way to the size where a stack is too high', () => {
	expect(on(['3 Net store by the old quay', '150 × 700'], 54, 110)).toEqual({
		lines: ['3 Net', 'store', 'by the', 'old', '150 ×', '700'],
		way: 'stacked',
	});
});

test.each([40, 31])('where a size has no room, at %i, nothing stands on the piece: its letter does', (width) =>
	expect(on(['offcut', '130 × 900'], width, 353)).toEqual({ lines: [], way: 'letter' }),
);

test('what is kept is said whole or by its letter in a flat piece too', () => {
	expect(on(['offcut 550 × 140'], 130, 30)).toEqual({ lines: ['offcut 550 × 140'], way: 'flat' });
	expect(on(['offcut 550 × 140'], 90, 30)).toEqual({ lines: [], way: 'letter' });
});

test('in any other piece each word has its line; a long name has two, or is its number only', () => {
	expect(on(['4 Two gulls arguing', '520 × 420', ''], 204, 165).lines).toEqual(['4 Two gulls arguing', '520 × 420']);
	expect(on(['4 Two gulls arguing', '520 × 420'], 100, 60).lines).toEqual(['4 Two gulls', 'arguing', '520 × 420']);
	expect(on(['4 Two gulls arguing', '520 × 420'], 100, 45).lines).toEqual(['4', '520 × 420']);
	expect(on(['4 Two gulls arguing', '520 × 420'], 100, 30).lines).toEqual(['4']);
	expect(on(['Two gulls arguing', '520 × 420'], 100, 45).lines).toEqual(['Two gulls a…', '520 × 420']);
});
