import { expect, test } from 'vitest';
import { mergeRow } from '../../../../src/core/show/mergeRow.ts';
import type { Row } from '../../../../src/core/show/row.ts';

const before: Row = {
	id: 'a',
	order: 1,
	typed: { title: 'Pier', top: '70' },
	units: { top: 'mm' },
	extra: { lab: '7' },
};

test('a row that is as it was becomes what the edit makes of it', () => {
	const after: Row = { ...before, typed: { title: 'Quay' } };
	expect(mergeRow(before, { before, after })).toBe(after);
	expect(mergeRow(structuredClone(before), { before, after })).toEqual(after);
});

test('cells that another tab has typed are kept, beside those that this edit types and clears', () => {
	const current: Row = { ...before, order: 4, typed: { title: 'Pier', top: '70', price: '120' } };
	const after: Row = { id: 'a', order: 1, typed: { title: 'Quay' }, extra: { lab: '8' } };
	expect(mergeRow(current, { before, after })).toEqual({
		id: 'a',
		order: 4,
		typed: { title: 'Quay', price: '120' },
		extra: { lab: '8' },
	});
});

test('in one cell the edit wins that comes last', () => {
	const current: Row = { ...before, typed: { title: 'Mole', top: '70' } };
	expect(mergeRow(current, { before, after: { ...before, typed: { title: 'Quay', top: '70' } } })?.typed.title).toBe(
		'Quay',
	);
});

test('a row that is gone comes back with what was typed, and stays gone where the edit removes it', () => {
	const after: Row = { ...before, typed: { title: 'Quay' } };
	expect(mergeRow(undefined, { before, after })).toBe(after);
	expect(mergeRow(undefined, { before })).toBeUndefined();
	expect(mergeRow({ ...before, order: 9 }, { before })).toBeUndefined();
});

test('a header of a foreign file may have any name', () => {
	const extra = Object.fromEntries([
		['__proto__', 'x'],
		['constructor', 'y'],
	]);
	const merged = mergeRow({ ...before, order: 2 }, { before, after: { ...before, extra } });
	expect(Object.entries(merged!.extra!)).toEqual([
		['__proto__', 'x'],
		['constructor', 'y'],
	]);
});
