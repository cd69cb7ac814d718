import { expect, test } from 'vitest';
import { twiceWords, uselessWords } from '../../../../src/core/stock/stockWords.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';

test.each([
	{ board: { trim: '60 mm' }, is: 'The trim, 60 mm off each side, leaves nothing of 120 × 900 mm. Make it less.' },
	{ board: { trim: '59.9 mm' }, is: undefined },
	{ board: { trim: '60 mm', kind: 'blank' }, is: undefined },
	{ board: {}, is: undefined },
	{ board: { count: 1 }, is: undefined },
	{
		board: { count: 0 },
		is: 'None in stock, so nothing is cut from it. Left blank, as many as are needed are bought.',
	},
])('a sheet of 120 × 900 mm with $board', ({ board, is }) => {
	const { settings } = readSettings({ boards: [{ name: 'Chalk', width: 120, height: 900, ...board }] });
	expect(uselessWords(settings.boards[0]!, settings)).toBe(is);
});

test('a board that is there already is told, another size of it is not', () => {
	const { settings } = readSettings({
		boards: [
			{ name: 'Chalk', width: 1200, height: 800 },
			{ name: 'Chalk', width: 800, height: 600 },
			{ name: 'Chalk', width: '120 cm', height: 800, count: 2 },
		],
	});
	const told = settings.boards.map((board, place) => twiceWords(board, settings.boards.slice(0, place)));
	expect(told).toEqual([undefined, undefined, expect.stringMatching(/^This size of “Chalk” stands above too\./)]);
});
