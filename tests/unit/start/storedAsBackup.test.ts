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
	const views = { active: 'Sizing' };
	const store = openShelfStore(name);
	await store.add([exampleShow('one')]);
	await store.add([{ ...newShow('two'), name: 'Harbour room', views }], { isArchived: true });
	store.close();
	const { text, shows, unread } = storedAsBackup((await readStored(name))!);
	expect([shows, unread]).toEqual([2, 0]);
	const read = readBackup(text);
	expect(read).toEqual({
		value: [
			{ show: exampleShow('one'), isArchived: false },
			{ show: expect.objectContaining({ id: 'two', name: 'Harbour room', views, rows: [] }) as Show, isArchived: true },
		],
	});
});

test('damaged records are in the file as they are, beside the shows that can be opened', () => {
	const good = { store: 'shows', key: 'good', value: { id: 'good', name: 'Good', settings: {}, revision: 1 } };
	const row = { store: 'rows', key: ['good', 'a'], value: { id: 'a', order: 1, typed: { title: 'Low water' } } };
	const damaged = [
		{ store: 'shows', key: 'bad', value: 'none' },
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

const stored = (store: string, key: IDBValidKey, value: unknown) => ({ store, key, value });

test('a damaged row is in the file as it is, and its show with all its other rows can be opened', () => {
	const show = stored('shows', 'a', { id: 'a', name: 'Harbour room', settings: {}, revision: 1 });
	const good = stored('rows', ['a', 'one'], { id: 'one', order: 1, typed: { title: 'Low water' } });
	const bad = stored('rows', ['a', 'two'], { id: 'two', order: 'last', typed: 'Kiln door' });
	const { text, shows, unread } = storedAsBackup([show, good, bad]);
	expect([shows, unread]).toEqual([1, 1]);
	expect((JSON.parse(text) as { unread: unknown }).unread).toEqual([bad]);
	expect(readBackup(text)).toMatchObject({ value: [{ show: { name: 'Harbour room', rows: [{ id: 'one' }] } }] });
});

test('a show of which a part is damaged can be opened without that part, and is in the file as it is too', () => {
	const show = stored('shows', 'a', { id: 'a', name: 'Harbour room', settings: 'none', revision: 1 });
	const row = stored('rows', ['a', 'one'], { id: 'one', order: 1, typed: { title: 'Low water' } });
	const { text, shows, unread } = storedAsBackup([show, row]);
	expect([shows, unread]).toEqual([1, 1]);
	expect((JSON.parse(text) as { unread: unknown }).unread).toEqual([show]);
	expect(readBackup(text)).toMatchObject({ value: [{ show: { name: 'Harbour room', rows: [{ id: 'one' }] } }] });
});

test('the rows of a show are in the file in their order', () => {
	const show = stored('shows', 'a', { id: 'a', name: 'Harbour room', settings: {}, revision: 1 });
	const rows = [2, 1].map((order) =>
		stored('rows', ['a', `${3 - order}`], { id: `${3 - order}`, order, typed: { title: 'Pier' } }),
	);
	expect(readBackup(storedAsBackup([show, ...rows]).text)).toMatchObject({
		value: [{ show: { rows: [{ id: '2' }, { id: '1' }] } }],
	});
});

test('settings that no file can hold put their show aside, and no other', () => {
	const shows = [{}, { border: 65n }].map((settings, at) =>
		stored('shows', `${at}`, { id: `${at}`, name: 'Harbour room', settings, revision: 1 }),
	);
	const { text, ...said } = storedAsBackup(shows);
	expect(said).toEqual({ shows: 1, unread: 1 });
	expect((JSON.parse(text) as { unread: unknown }).unread).toMatchObject([{ key: '1' }]);
});

test('what was put aside is in the file too', () => {
	const aside = stored('putAside', 1, { store: 'rows', key: ['a', 'two'], value: 7, problem: 'it is not a record' });
	const { text, unread } = storedAsBackup([aside]);
	expect(unread).toBe(1);
	expect((JSON.parse(text) as { unread: unknown }).unread).toEqual([aside]);
});

test('what no file can hold is told in words, and keeps nothing else from the file', () => {
	const circle: Record<string, unknown> = { title: 'Kiln door' };
	circle['self'] = [circle];
	const twice = { width: 7 };
	const show = stored('shows', 'a', { id: 'a', name: 'Harbour room', settings: {}, revision: 1 });
	const odd = stored('rows', ['a', 'two'], { id: 'two', order: 12n, typed: circle, first: twice, second: twice });
	const { text, shows, unread } = storedAsBackup([show, odd]);
	expect([shows, unread]).toEqual([1, 1]);
	const [kept] = (JSON.parse(text) as { unread: [unknown] }).unread;
	expect(kept).toEqual({
		...odd,
		value: {
			...{ id: 'two', order: { bigint: '12' }, first: twice, second: twice },
			typed: { title: 'Kiln door', self: [{ again: 'Object' }] },
		},
	});
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
