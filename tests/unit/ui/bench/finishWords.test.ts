import { expect, test } from 'vitest';
import { finishWords } from '../../../../src/ui/bench/finishWords.ts';

test.each([
	[1, 1, 1, 'Cut made'],
	[1, 1, 2, 'Both cut'], // left cut, interrupted, right forgotten: one tick stands for both
	[1, 1, 4, 'All 4 cut'],
	[2, 2, 1, 'Both cut'],
	[3, 3, 2, 'All 3 cut'],
	[1, 3, 2, 'The rest cut'],
])('%i of %i left, with %i cuts: %s', (left, all, cuts, words) => expect(finishWords(left, all, cuts)).toBe(words));
