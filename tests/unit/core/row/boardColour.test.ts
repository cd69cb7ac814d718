import { expect, test } from 'vitest';
import { boardColour, wordsOn } from '../../../../src/core/row/boardColour.ts';

const of = (name: string, colour?: string) =>
	boardColour({ name, board: { name, ...(colour !== undefined && { colour }) } as never });

test('the colour of a board is what its entry says, else what its name says', () => {
	expect(of('Museum 2 mm', 'Ivory')).toBe(of('ivory'));
	expect(of('Off-white cotton')).toBe(of('x', 'off white'));
	expect(of('Off-white cotton')).not.toBe(of('x', 'white'));
	expect(of('Dark gray')).toBe(of('x', 'dark grey'));
	expect(of('Black core', '#A08060')).toBe('#a08060');
	expect(of('Museum')).toBeUndefined();
	expect(of('Blackened')).toBeUndefined();
});

test('words on a board are dark on light ones and light on dark ones', () => {
	expect([wordsOn('#fff'), wordsOn(of('ivory')), wordsOn(of('grey'))]).toEqual(['#1c1a18', '#1c1a18', '#1c1a18']);
	expect([wordsOn('#000'), wordsOn(of('black')), wordsOn(of('navy'))]).toEqual(['#ffffff', '#ffffff', '#ffffff']);
	expect(wordsOn(undefined)).toBeUndefined();
});
