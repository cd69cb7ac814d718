import { expect, test } from 'vitest';
import { saidOfMend } from '../../../../src/core/grid/saidOfMend.ts';

test('a mend is heard with what is left of the print, and how many prints are still to check', () => {
	expect(saidOfMend('Clear top', '', 0)).toBe('Done: clear top. Nothing more to check.');
	expect(saidOfMend('Clear top', '', 1)).toBe('Done: clear top. 1 print still to check.');
	expect(saidOfMend('Accept', 'The top is thin.', 3)).toBe('Done: accept. The top is thin. 3 prints still to check.');
});
