import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { sumWords } from '../../../../src/core/reasons/sumWords.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';

test.each([
	{ unit: 'mm', parts: [1.4, 0.3], sum: 1.7, words: '1.4 + 0.3 = 1.7 mm' },
	{ unit: 'in', parts: [1.4, 0.3], sum: 1.7, words: 'about 1/16 in' }, // shown, it would be 1/16 + 1/64 = 1/16
	{ unit: 'in', parts: [25.4, 12.7], sum: 38.1, words: '1 + 1/2 = 1 1/2 in' },
])('$parts mm in a show in $unit is “$words”', ({ unit, parts, sum, words }) =>
	expect(sumWords(parts.map(mm), mm(sum), readSettings({ unit }).settings)).toBe(words),
);
