import { expect, test } from 'vitest';
import { tickHung } from '../../../../src/core/commands/tickHung.ts';
import { mm } from '../../../../src/core/length/length.ts';
import { apply, invert, isEmpty } from '../../../../src/core/show/edit.ts';
import { newShow } from '../../../../src/core/show/newShow.ts';

test('a print is hung, at another place hung again, and taken down, each undone', () => {
	const tick = { row: 'a', wall: 'North', left: mm(100), centre: mm(1450) };
	const show = newShow('s');
	const hang = tickHung(show, tick, true, 'Hang');
	const hung = apply(show, hang);
	expect(hung.hung).toEqual([tick]);
	expect(apply(hung, invert(hang)).hung ?? []).toEqual([]);
	const again = apply(hung, tickHung(hung, { ...tick, left: mm(90) }, true, 'Hang'));
	expect(again.hung).toEqual([{ ...tick, left: mm(90) }]);
	expect(apply(again, tickHung(again, tick, false, 'Take down')).hung ?? []).toEqual([]);
	expect(isEmpty(tickHung(show, tick, false, 'Take down'))).toBe(true);
});
