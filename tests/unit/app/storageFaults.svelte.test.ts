import 'fake-indexeddb/auto';
import { beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import { copyAll } from '../../../src/app/copyOfAll.ts';
import { openShelf } from '../../../src/app/openShelf.ts';
import type { Shelf } from '../../../src/app/shelf.svelte.ts';
import { openShowStore } from '../../../src/storage/showStore.ts';
import { readShowFile, writeShowFile } from '../../../src/files/showFile.ts';
import { Packing } from '../../../src/app/packing.svelte.ts';
import { on } from './edits.ts';

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
	vi.restoreAllMocks();
	vi.unstubAllGlobals();
});

async function open(): Promise<Shelf> {
	const shelf = await openShelf({ databaseName, showId: undefined });
	onTestFinished(() => void shelf.close().catch(() => undefined));
	return shelf;
}

/** What is on disk, if anything. */
async function titles(id: string): Promise<readonly (string | undefined)[] | undefined> {
	const store = openShowStore(databaseName);
	try {
		return (await store.read(id)).show.rows.map(({ typed }) => typed.title);
	} catch {
		return undefined;
	} finally {
		store.close();
	}
}

const addRow = ({ session }: Shelf, title: string) => on(session).addRows([{ cells: { title } }], 0, 'Add row');

/** A device without room, until room is made. */
function fill() {
	const full = () => {
		throw new DOMException('no room', 'QuotaExceededError');
	};
	const puts = [
		vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(full),
		vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(full),
	];
	return () => puts.forEach((put) => put.mockRestore());
}

/** What holds wherever nothing can be kept: it is on the screen, said, in a file, and not called saved. */
async function holds(shelf: Shelf, sentence: RegExp) {
	const { session } = shelf;
	expect(session.saved).toMatchObject({ state: 'failed', problem: expect.stringMatching(sentence) as string });
	addRow(shelf, 'Pier');
	await expect(session.whenSaved()).rejects.toThrow(sentence);
	expect(session.saved.state).toBe('failed');
	expect(session.show.rows.map(({ typed }) => typed.title)).toEqual(['Pier']);
	expect(session.results).toHaveLength(1);
	const { id: _, ...show } = session.show;
	expect(readShowFile(writeShowFile(show))).toEqual({ value: show });
	await expect(shelf.read(session.show.id)).resolves.toBe(session.show);
	expect((await copyAll(shelf)).shows).toHaveLength(1);
	new Packing(session, { databaseName }).close();
}

test('a device that is full as the page first opens: the show is there, and kept once there is room', async () => {
	const makeRoom = fill();
	const shelf = await open();
	await holds(shelf, /no room left/);
	const { id } = shelf.session.show;
	expect(await titles(id)).toBeUndefined();
	makeRoom();
	addRow(shelf, 'Quay');
	await shelf.session.whenSaved();
	expect(shelf.session.saved).toEqual({ state: 'saved' });
	expect(await titles(id)).toEqual(['Quay', 'Pier']);
	expect((await open()).session.show).toEqual(shelf.session.show);
});

test('a device that is full as a kept show opens: what is there is there, and is what is saved', async () => {
	const before = await open();
	addRow(before, 'Pier');
	await before.session.whenSaved();
	const makeRoom = fill();
	const shelf = await open();
	expect(shelf.session.show).toEqual(before.session.show);
	expect(shelf.session.saved).toEqual({ state: 'saved' });
	addRow(shelf, 'Quay');
	await expect(shelf.session.whenSaved()).rejects.toThrow(/no room left/);
	expect(await titles(shelf.session.show.id)).toEqual(['Pier']);
	makeRoom();
	addRow(shelf, 'Mole');
	await shelf.session.whenSaved();
	expect(await titles(shelf.session.show.id)).toEqual(['Mole', 'Quay', 'Pier']);
});

test('an import for which there is no room is on the screen, not called saved, and kept whole or not at all', async () => {
	const shelf = await open();
	addRow(shelf, 'Pier');
	await shelf.session.whenSaved();
	const put = Reflect.get(IDBObjectStore.prototype, 'put') as (value: unknown, key?: IDBValidKey) => IDBRequest;
	const spy = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
		if (spy.mock.calls.length > 700) throw new DOMException('no room', 'QuotaExceededError');
		return put.call(this, value, key) as IDBRequest<IDBValidKey>;
	});
	const rows = Array.from({ length: 1000 }, (_, at) => ({ cells: { title: `Print ${at}` } }));
	on(shelf.session).addRows(rows, 1, 'Import');
	await expect(shelf.session.whenSaved()).rejects.toThrow(/no room left/);
	expect(shelf.session.show.rows).toHaveLength(1001);
	spy.mockRestore();
	expect(await titles(shelf.session.show.id)).toEqual(['Pier']);
	addRow(shelf, 'Quay');
	await shelf.session.whenSaved();
	expect(await titles(shelf.session.show.id)).toHaveLength(1002);
});

test('a browser that denies storage: the show is there, and nothing is called saved', async () => {
	vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
		throw new DOMException('denied', 'SecurityError');
	});
	await holds(await open(), /This browser lets the page store nothing/);
});

test('a browser without storage: the show is there, and nothing is called saved', async () => {
	vi.stubGlobal('indexedDB', undefined);
	await holds(await open(), /This browser lets the page store nothing/);
});

test('what cannot be opened for another reason is not passed off as empty', async () => {
	const shelf = await open();
	addRow(shelf, 'Pier');
	await shelf.session.whenSaved();
	for (const name of ['UnknownError', 'QuotaExceededError', 'AbortError']) {
		const opening = vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
			throw new DOMException('broken', name);
		});
		await expect(open()).rejects.toThrow(/cannot be opened just now/);
		opening.mockRestore();
	}
});

test('an edit is called unsaved at once, and the device is asked to keep it only after the key that made it', async () => {
	const shelf = await open();
	const { session } = shelf;
	await session.whenSaved();
	const asked = vi.spyOn(IDBDatabase.prototype, 'transaction');
	addRow(shelf, 'Pier');
	expect(session.saved).toEqual({ state: 'saving' });
	for (let turn = 0; turn < 20; turn++) await Promise.resolve();
	expect(asked, 'not in the task of the key, nor in what follows it').not.toHaveBeenCalled();
	await session.whenSaved();
	expect(await titles(session.show.id)).toEqual(['Pier']);
});

test('what could not be kept is tried again by itself, and why it could not stands until it is', async () => {
	vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
	onTestFinished(() => void vi.useRealTimers());
	const shelf = await open();
	const { session } = shelf;
	const makeRoom = fill();
	const put = vi.spyOn(IDBObjectStore.prototype, 'put'); // the one that is spied on already
	addRow(shelf, 'Pier');
	await expect(session.whenSaved()).rejects.toThrow(/no room left/);
	for (let tries = 1; tries <= 5; tries++) {
		const puts = put.mock.calls.length;
		vi.runOnlyPendingTimers();
		expect(session.saved).toMatchObject({ state: 'failed', problem: expect.stringMatching(/keeps trying/) as string });
		await expect(session.whenSaved()).rejects.toThrow(/no room left/);
		expect(put.mock.calls.length, 'tried').toBeGreaterThan(puts);
	}
	makeRoom();
	vi.runOnlyPendingTimers();
	await session.whenSaved();
	expect(session.saved).toEqual({ state: 'saved' });
	expect(await titles(session.show.id)).toEqual(['Pier']);
	expect(vi.getTimerCount(), 'nothing is tried any more').toBe(0);
});
