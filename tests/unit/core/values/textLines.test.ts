import { expect, test } from 'vitest';
import { textLines } from '../../../../src/core/values/textLines.ts';

// An m of 10 points is 882/1000 · 10 pt = 3.11 mm wide.
test.each<[string, number, number]>([
	['', 40, 1],
	['m', 3.2, 1],
	['mm', 3.2, 2],
	['mm', 6.3, 1],
	['mm mm', 6.3, 2],
	['mm mm', 13.3, 1], // and a space of 0.83 mm
	['m m m', 10.5, 2], // three and two spaces: 10.99 mm
	['m mmm', 6.3, 3], // the long word has a line of its own, and is broken
	['  m   m  ', 7.2, 1],
	['潮', 4.9, 1], // no sign of the typeface: as wide as any
	['潮', 5, 1],
	['潮潮', 9.8, 2],
	['ééé', 6.1, 1], // an e with its accent is as wide as an e
])('“%s” in %d mm stands in %d lines', (text, mm, lines) => expect(textLines(text, 10, mm)).toBe(lines));
