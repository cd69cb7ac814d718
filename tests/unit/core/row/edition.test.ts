import { expect, test } from 'vitest';
import { parseEdition } from '../../../../src/core/row/edition.ts';

test.each([
	['3/25', '', 3, 25],
	['3 of 25', '', 3, 25],
	['III/X', 'roman', 3, 10],
	['xiv / xl', 'roman', 14, 40],
	['AP 1/3', 'AP', 1, 3],
	['A/P 1/3', 'AP', 1, 3],
	['A.P. I/V', 'AP', 1, 5],
	['1/3 AP', 'AP', 1, 3],
	['HC 2/2', 'HC', 2, 2],
	['H.C. 2/2', 'HC', 2, 2],
	['PP 1/2', 'PP', 1, 2],
	['P/P 1/2', 'PP', 1, 2],
])('%s is a number of its series', (text, series, number, size) =>
	expect(parseEdition(text)).toEqual({ kind: 'numbered', series, number, size }),
);

test.each([
	['AP', 'AP'],
	['a/p', 'AP'],
	['HC', 'HC'],
	['h.c.', 'HC'],
	['PP', 'PP'],
	['BAT', 'BAT'],
	['b.a.t.', 'BAT'],
])('%s is a proof without a number', (text, series) => expect(parseEdition(text)).toEqual({ kind: 'proof', series }));

test('open is open', () => expect(parseEdition(' Open ')).toEqual({ kind: 'open' }));

test.each(['', 'IIX/X', 'IIII/X', '3/X', 'APP 1/3', 'BAT and more', '25', 'unique'])(
	'“%s” says nothing of an edition, and is kept as typed',
	(text) => expect(parseEdition(text)).toBeUndefined(),
);
