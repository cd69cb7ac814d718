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
	['E.A. 2/5', 'AP', 2, 5],
	['EA I/V', 'AP', 1, 5],
	['1/3 e/a', 'AP', 1, 3],
	['Artist’s proof 1/3', 'AP', 1, 3],
	['Hors commerce 2/2', 'HC', 2, 2],
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
	['E.A.', 'AP'],
	['Épreuve d’artiste', 'AP'],
	["artist's proof", 'AP'],
	['H. C.', 'HC'],
	['Printers proof', 'PP'],
	['Bon à tirer', 'BAT'],
])('%s is a proof without a number', (text, series) => expect(parseEdition(text)).toEqual({ kind: 'proof', series }));

test.each([' Open ', 'Open edition', 'open ed.', 'OPEN  Edition', 'unlimited', 'Unlimited edition'])(
	'“%s” is open',
	(text) => expect(parseEdition(text)).toEqual({ kind: 'open' }),
);

test.each([
	'',
	'IIX/X',
	'IIII/X',
	'3/X',
	'APP 1/3',
	'BAT and more',
	'25',
	'unique',
	'opening',
	'open 3/25',
	'sea',
	'each',
	'EA and more',
])('“%s” says nothing of an edition, and is kept as typed', (text) => expect(parseEdition(text)).toBeUndefined());
