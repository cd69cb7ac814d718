import { expect, test } from 'vitest';
import { countOf } from '../../../../src/core/values/countOf.ts';

test('one is one, none and many are many', () => {
	expect([0, 1, 2].map((count) => countOf(count, 'print'))).toEqual(['0 prints', '1 print', '2 prints']);
	expect([1, 2].map((count) => countOf(count, 'box', 'boxes'))).toEqual(['1 box', '2 boxes']);
});
