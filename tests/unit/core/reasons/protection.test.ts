import { expect, test } from 'vitest';
import { protectionOf } from '../../../../src/core/reasons/protection.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { rowOf, wideShow } from '../findings/rowOf.ts';

const board = { width: 1000, height: 800 };
const { settings } = readSettings({
	...wideShow,
	boards: [
		{ ...board, name: 'White', thickness: 1.4 },
		{ ...board, name: 'Foam', thickness: 5 },
		{ ...board, name: 'Plain' },
	],
});
const protection = (line: string) =>
	protectionOf(workOut(rowOf(`picture 456 x 306, glazing glass, ${line}`), settings), settings);

test.each([
	['board White', 'The mount keeps the print 1.4 mm off the glass.'],
	['board White, inner mount 5', 'The mount and the inner mount keep the print 2.8 mm off the glass.'],
	[
		'board White, inner mount 5, inner board Foam',
		'The mount and the inner mount keep the print 6.4 mm off the glass.',
	],
	[
		'board White, inner mount 5, inner board Plain',
		'The mount and the inner mount keep the print 2.8 mm off the glass (the board’s thickness is not known; 1.4 mm is usual).',
	],
	['board Foam, inner board White', 'The mount keeps the print 5 mm off the glass.'],
])('%s: %s', (line, words) => expect(protection(line)).toBe(words));
