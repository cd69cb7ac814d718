import { expect, test } from 'vitest';
import { tickMade } from '../../../../src/core/commands/tickMade.ts';
import { apply, invert, isEmpty } from '../../../../src/core/show/edit.ts';
import { newShow } from '../../../../src/core/show/newShow.ts';

const printed = { row: 'a', copy: 1, step: 'printed' } as const;
const second = { row: 'a', copy: 2, step: 'printed' } as const;
const signed = { row: 'a', copy: 1, step: 'signed' } as const;

test('steps of making are ticked off copy by copy, unticked, and each is undone', () => {
	const show = newShow('s');
	const tick = tickMade(show, [printed, second], true, 'Tick');
	const once = apply(show, tick);
	expect(once.made).toEqual([printed, second]);
	expect(apply(once, invert(tick)).made ?? []).toEqual([]);
	const untick = tickMade(once, [printed], false, 'Untick');
	expect(apply(once, untick).made).toEqual([second]);
	expect(apply(apply(once, untick), invert(untick)).made).toEqual(expect.arrayContaining([printed, second]));
});

test('what is ticked already is no part of the edit, so that undo does not take it off', () => {
	const once = apply(newShow('s'), tickMade(newShow('s'), [printed], true, 'Tick'));
	const rest = tickMade(once, [printed, signed], true, 'Tick');
	expect(rest.made).toEqual([{ after: signed }]);
	expect(apply(apply(once, rest), invert(rest)).made).toEqual([printed]);
	expect(isEmpty(tickMade(once, [printed], true, 'Tick'))).toBe(true);
	expect(isEmpty(tickMade(once, [second], false, 'Untick'))).toBe(true);
});
