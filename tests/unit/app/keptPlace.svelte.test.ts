import { expect, test, vi } from 'vitest';
import { KeptPlace } from '../../../src/app/keptPlace.svelte.ts';
import type { StoredShow } from '../../../src/storage/showStore.ts';

const stored: StoredShow = { show: { id: 'spring', name: 'Spring', settings: {}, rows: [] }, revision: 1 };

test('where one is left is kept as plain data, thousands of rows that are selected without cloning each', () => {
	const keepPlace = vi.fn(() => Promise.resolve());
	const clones = vi.spyOn(globalThis, 'structuredClone');
	const rows = $state(Array.from({ length: 1000 }, (_, place) => `r${place}`));
	new KeptPlace({ keepPlace }, stored).leaveAt({
		place: 'prints',
		focus: { active: { id: 'r0', key: 'title' }, rows },
	});
	expect(clones).not.toHaveBeenCalled();
	clones.mockRestore();
	const left = { place: 'prints', focus: { active: { id: 'r0', key: 'title' }, rows: [...rows] } };
	expect(keepPlace).toHaveBeenCalledWith('spring', { left });
	const [[, kept]] = keepPlace.mock.calls as unknown as [[string, unknown]];
	expect(structuredClone(kept), 'a proxy could not be cloned').toEqual({ left });
});

test('another place is kept at once, what has the focus there once nothing has moved for a while', () => {
	vi.useFakeTimers();
	const keepPlace = vi.fn(() => Promise.resolve());
	const place = new KeptPlace({ keepPlace }, { ...stored, left: { place: 'prints' } });
	for (const focus of ['one', 'two']) place.leaveAt({ place: 'prints', focus });
	expect(keepPlace).not.toHaveBeenCalled();
	place.leaveAt({ place: 'bench', focus: 'two' });
	expect(keepPlace.mock.calls).toEqual([['spring', { left: { place: 'bench', focus: 'two' } }]]);
	for (const focus of ['three', 'four']) place.leaveAt({ place: 'bench', focus });
	vi.runAllTimers();
	expect(keepPlace.mock.calls.slice(1)).toEqual([['spring', { left: { place: 'bench', focus: 'four' } }]]);
	vi.useRealTimers();
});
