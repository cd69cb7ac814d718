import { expect, test } from 'vitest';
import { dayWords, momentWords } from '../../../../src/core/values/days.ts';

test('a day is written in one form, with the month in words', () => {
	expect(dayWords(new Date(2026, 10, 5, 14, 5).getTime())).toBe('5 November 2026');
	expect(momentWords(new Date(2026, 10, 5, 14, 5).getTime())).toBe('5 November 2026, 14:05');
});
