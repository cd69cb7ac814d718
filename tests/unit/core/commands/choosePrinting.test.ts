import { expect, test } from 'vitest';
import { choosePrinting } from '../../../../src/core/commands/choosePrinting.ts';
import { apply, invert, isEmpty } from '../../../../src/core/show/edit.ts';
import { newShow } from '../../../../src/core/show/newShow.ts';
import { readPrinting } from '../../../../src/core/show/printing.ts';

test('what is printed is chosen bit by bit, and undone', () => {
	const show = newShow('s');
	expect(readPrinting(show.printing)).toEqual({ shown: [], labels: {} });
	const paper = choosePrinting(show, { paper: 'Letter' }, 'Choose');
	const once = apply(show, paper);
	const twice = apply(once, choosePrinting(once, { shown: ['list'], labels: { back: { start: 3 } } }, 'Choose'));
	expect(readPrinting(twice.printing)).toEqual({ paper: 'Letter', shown: ['list'], labels: { back: { start: 3 } } });
	expect(apply(once, invert(paper)).printing).toBeUndefined();
	expect(isEmpty(choosePrinting(twice, { paper: 'Letter' }, 'Choose'))).toBe(true);
});

test('what a file holds in its place that cannot be read counts as not chosen', () => {
	for (const stored of [null, 'A4', [], { paper: 'A5', shown: 'list', labels: [] }])
		expect(readPrinting(stored)).toEqual({ shown: [], labels: {} });
	const labels = {
		back: { sheet: 7, start: 0, isOnlyNew: 'yes', maker: 7, wall: '' },
		wall: { start: 2.5 },
		others: 3,
	};
	expect(readPrinting({ shown: ['a', 7, 'b'], labels })).toEqual({
		shown: ['a', 'b'],
		labels: { back: {}, wall: {}, others: {} },
	});
});
