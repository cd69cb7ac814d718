import { expect, test } from 'vitest';
import { titles } from '../../../../../src/core/findings/words/titles.ts';
import { whys } from '../../../../../src/core/findings/words/whys.ts';

test.each(Object.entries(whys))('%s says why, in at most three whole sentences', (code, why) => {
	expect(why).toMatch(/^[A-Z].*[.]$/);
	expect(why.split(/[.:?] /).length).toBeLessThanOrEqual(4);
	expect(why).not.toBe(titles[code as keyof typeof titles]);
});
