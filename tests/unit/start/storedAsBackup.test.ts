import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { newShow } from '../../../src/core/show/newShow.ts';
import type { Show } from '../../../src/core/show/show.ts';
import { readBackup } from '../../../src/files/backupFile.ts';
import { readShowFile } from '../../../src/files/showFile.ts';
import { readStored } from '../../../src/start/readStored.ts';
import { storedAsBackup } from '../../../src/start/storedAsBackup.ts';
import { openShelfStore } from '../../../src/storage/shelfStore.ts';
import example from '../../../shared/samples/example.evenhang.json?raw';

let databases = 0;
const freshName = () => `stored as backup ${++databases}`;

function exampleShow(id: string): Show {
	const read = readShowFile(example);
	if ('problem' in read) throw new Error(read.problem);
	return { id, ...read.value };
}

test('everything that is stored comes back out of the file as it was', async () => {
	const name = freshName();
	const store = openShelfStore(name);
	await store.add([exampleShow('one')]);
	await store.add([{ ...newShow('two'), name: 'Harbour room' }], { isArchived: true });
	store.close();
	const { text, shows, unread } = storedAsBackup((await readStored(name))!);
	expect([shows, unread]).toEqual([2, 0]);
	const read = readBackup(text);
	expect(read).toEqual({
		value: [
			{ show: exampleShow('one'), isArchived: false },
			{ show: expect.objectContaining({ id: 'two', name: 'Harbour room', rows: [] }) as Show, isArchived: true },
		],
	});
});

test('damaged records are in the file as they are, beside the shows that can be opened', () => {
	const good = { store: 'shows', key: 'good', value: { id: 'good', name: 'Good', settings: {}, revision: 1 } };
	const row = { store: 'rows', key: ['good', 'a'], value: { id: 'a', order: 1, typed: { title: 'Low water' } } };
	const damaged = [
		{ store: 'shows', key: 'bad', value: { id: 'bad', name: 7, settings: 'none' } },
		{ store: 'rows', key: ['bad', 'b'], value: { id: 'b', order: 1, typed: {} } },
		{ store: 'rows', key: ['nobody', 'c'], value: null },
		{ store: 'ticks', key: 'odd', value: 3 },
	];
	const left = { store: 'matchings', key: 'title', value: {} };
	const { text, shows, unread } = storedAsBackup([good, row, ...damaged, left]);
	expect([shows, unread]).toEqual([1, 4]);
	expect((JSON.parse(text) as { unread: unknown }).unread).toEqual(damaged);
	expect(readBackup(text)).toMatchObject({ value: [{ show: { id: 'good', rows: [{ id: 'a' }] } }] });
});

test('a database that was never there is not made, and one of any version is read as it is', async () => {
	const name = freshName();
	expect(await readStored(name)).toBe(undefined);
	expect((await indexedDB.databases()).map((each) => each.name)).not.toContain(name);
	await new Promise<void>((resolve) => {
		const request = indexedDB.open(name, 99);
		request.onupgradeneeded = () => request.result.createObjectStore('later').put('x', 1);
		request.onsuccess = () => (request.result.close(), resolve());
	});
	expect(await readStored(name)).toEqual([{ store: 'later', key: 1, value: 'x' }]);
	expect((await indexedDB.databases()).find((each) => each.name === name)?.version).toBe(99);
});
