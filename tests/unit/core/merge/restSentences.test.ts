import { expect, test } from 'vitest';
import { restSentences } from '../../../../src/core/merge/mergeWords.ts';

test.each([
	[1, '1 print is only in your show and stays.'],
	[28, '28 prints are only in your show and stay.'],
])('of %i prints that the file does not have', (onlyHere, said) => {
	const merge = { rows: [], order: {}, same: 0, onlyHere, base: undefined };
	const sentences = restSentences(merge as never, undefined);
	expect(sentences).toContain(said);
	expect(sentences[0]).toBe('First exchange of this show, so every difference is listed.');
});
