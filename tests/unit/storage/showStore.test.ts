import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import type { Tick } from '../../../src/core/show/tick.ts';
import { type Exchange, mostExchangedRows, mostExchanges } from '../../../src/core/merge/exchange.ts';
import { apply, type Edit, invert } from '../../../src/core/show/edit.ts';
import type { Row } from '../../../src/core/show/row.ts';
import type { Show } from '../../../src/core/show/show.ts';
import { openShowStore } from '../../../src/storage/showStore.ts';
import { schemaVersion } from '../../../src/storage/schema.ts';

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
	vi.restoreAllMocks();
});

const row = (id: string, order: number, typed: Row['typed'] = {}): Row => ({ id, order, typed });
const show: Show = {
	id: 'spring',
	name: 'Spring',
	settings: { unit: 'mm', sizes: [{ name: 'small', width: 300, height: '240 mm' }] },
	rows: [
		{ ...row('b', 1, { title: 'Pier', top: '70' }), units: { top: 'mm' }, extra: { lab: '7' } },
		row('a', 2.5, { title: 'Quay' }),
	],
};
const adding = (...rows: Row[]): Edit => ({ label: 'add', rows: rows.map((after) => ({ after })) });

/** A store that is closed when the test ends. */
function open(events?: Parameters<typeof openShowStore>[1]) {
	const store = openShowStore(databaseName, events);
	onTestFinished(() => store.close());
	return store;
}
const openKept = async () => {
	const store = open();
	await store.openShow(() => show);
	return store;
};

test('a show is begun once, and found again', async () => {
	expect(await open().openShow(() => show)).toEqual({ show, revision: 1 });
	const again = await open().openShow(() => {
		throw new Error('there is a show already');
	});
	expect(again).toEqual({ show, revision: 1 });
});

test('of two tabs that open an empty database at once, both get the show of the first', async () => {
	const [one, other] = await Promise.all([
		open().openShow(() => show),
		open().openShow(() => ({ ...show, id: 'other', name: 'Other' })),
	]);
	expect(one).toEqual(other);
});

test('each edit is one transaction and one revision; rows come in order', async () => {
	const store = await openKept();
	const edit: Edit = {
		label: 'all at once',
		rows: [
			{ before: show.rows[0]!, after: { ...show.rows[0]!, typed: { title: 'Mole' } } },
			{ before: show.rows[1]! },
			{ after: row('c', 1.5) },
			{ after: row('d', 0.5) },
		],
		settings: [
			{ key: 'border', before: undefined, after: '70' },
			{ key: 'unit', before: 'mm', after: undefined },
		],
		name: { before: 'Spring', after: 'Autumn' },
	};
	expect(await store.apply('spring', edit)).toBe(2);
	const stored = await store.read('spring');
	expect(stored).toEqual({ show: apply(show, edit), revision: 2 });
	expect(stored.show.rows.map(({ id }) => id)).toEqual(['d', 'b', 'c']);
});

test('a long show is read a part at a time, and whole: its rows in order, each once', async () => {
	const rows = Array.from({ length: 1001 }, (_, place) => row(`r${1001 - place}`, place));
	const other = { ...show, id: 'spring 2' };
	const store = await openKept();
	await store.keep({ ...show, rows });
	await store.keep(other);
	const most = vi.spyOn(IDBObjectStore.prototype, 'getAll');
	expect((await store.read('spring')).show.rows).toEqual(rows);
	const read = most.mock.results.map(({ value }) => (value as IDBRequest<unknown[]>).result.length);
	expect(Math.max(...read)).toBeLessThanOrEqual(500);
	expect((await store.read('spring 2')).show.rows).toEqual(show.rows);
});

test('every transaction that writes asks for strict durability', async () => {
	const store = await openKept();
	const begin = vi.spyOn(IDBDatabase.prototype, 'transaction');
	await store.apply('spring', adding(row('c', 3)));
	await store.keep(show);
	expect(begin.mock.calls.map(([, mode, options]) => [mode, options?.durability])).toEqual([
		['readwrite', 'strict'],
		['readwrite', 'strict'],
	]);
});

test('an edit whose last row cannot be stored leaves nothing of itself', async () => {
	const store = await openKept();
	const bad = { ...row('z', 4), extra: { lab: (() => '7') as unknown as string } };
	await expect(store.apply('spring', adding(row('c', 3), bad))).rejects.toThrow(/clone/i);
	expect(await store.read('spring')).toEqual({ show, revision: 1 });
	// And the store goes on working.
	await store.apply('spring', adding(row('c', 3)));
	expect((await store.read('spring')).show.rows).toHaveLength(3);
});

test('a show whose last row cannot be stored does not take the place of what is kept', async () => {
	const store = await openKept();
	const bad = { ...row('z', 4), extra: { lab: Symbol('7') as unknown as string } };
	await expect(store.keep({ ...show, rows: [row('c', 3), bad] })).rejects.toThrow();
	expect(await store.read('spring')).toEqual({ show, revision: 1 });
});

test('a transaction that the browser gives up, as when room runs out, leaves nothing of its edit', async () => {
	const store = await openKept();
	const original = Reflect.get(IDBObjectStore.prototype, 'put') as (value: unknown, key?: IDBValidKey) => IDBRequest;
	const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
		const request = original.call(this, value, key) as IDBRequest<IDBValidKey>;
		if (put.mock.calls.length === 3) this.transaction.abort();
		return request;
	});
	const applying = store.apply('spring', adding(row('c', 3), row('d', 4)));
	await expect(applying).rejects.toMatchObject({ name: 'AbortError' });
	expect(put).toHaveBeenCalledTimes(3);
	expect(await store.read('spring')).toEqual({ show, revision: 1 });
});

test('two tabs that change different cells of one row lose neither', async () => {
	const [one, other] = [await openKept(), open()];
	const before = show.rows[0]!;
	await one.apply('spring', {
		label: '',
		rows: [{ before, after: { ...before, typed: { title: 'Mole', top: '70' } } }],
	});
	await other.apply('spring', {
		label: '',
		rows: [{ before, after: { ...before, typed: { title: 'Pier', top: '80' } } }],
	});
	const stored = await one.read('spring');
	expect(stored.show.rows[0]?.typed).toEqual({ title: 'Mole', top: '80' });
	expect(stored.revision).toBe(3);
});

test('shows beside each other do not mix', async () => {
	const store = await openKept();
	await store.keep({ id: 'spring 2', name: 'Other', settings: {}, rows: [row('b', 1, { title: 'Other' })] });
	await store.keep({ ...show, rows: [row('a', 1)] });
	expect((await store.read('spring')).show.rows).toEqual([row('a', 1)]);
	expect((await store.read('spring 2')).show.rows).toEqual([row('b', 1, { title: 'Other' })]);
});

test('a show that is gone is not begun again by an edit', async () => {
	const store = await openKept();
	await expect(store.apply('autumn', adding(row('c', 3)))).rejects.toMatchObject({ name: 'ShowMissing' });
	await expect(store.read('autumn')).rejects.toMatchObject({ name: 'ShowMissing' });
});

test('a show kept again has a revision after all that were seen', async () => {
	const store = await openKept();
	expect(await store.keep(show, 7)).toBe(8);
	expect(await store.keep(show, 2)).toBe(9);
});

test('a newer version of the app gets the database; this one is told, and can no longer write', async () => {
	let isSuperseded = false;
	const store = open({ onSuperseded: () => (isSuperseded = true) });
	await store.openShow(() => show);
	const newer = await openDB(databaseName, schemaVersion + 1, {
		upgrade: (db) => void db.createObjectStore('something new'),
	});
	onTestFinished(() => newer.close());
	expect(isSuperseded).toBe(true);
	await expect(store.apply('spring', adding(row('c', 3)))).rejects.toMatchObject({ name: 'VersionError' });
	expect(await newer.count('rows')).toBe(2);
});

test('a tab that holds on to an older form is told of, and waited for', async () => {
	const older = await openDB(databaseName, schemaVersion);
	// What a later version of the app will meet: a tab of this one that does not answer.
	let isBlocked = false;
	const opening = openDB(databaseName, schemaVersion + 1, { blocked: () => (isBlocked = true) });
	await expect.poll(() => isBlocked).toBe(true);
	older.close();
	(await opening).close();
});

test('a connection that the browser has cut is opened again', async () => {
	const store = await openKept();
	const begin = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(() => {
		throw new DOMException('The connection is lost', 'InvalidStateError');
	});
	expect(await store.apply('spring', adding(row('c', 3)))).toBe(2);
	expect(begin).toHaveBeenCalledTimes(2);
});

/** The stores as the first version of the app left them: one show, with a tick. */
async function leaveFirstForm() {
	const db = await openDB(databaseName, 1, {
		upgrade(old) {
			old.createObjectStore('shows', { keyPath: 'id' });
			old.createObjectStore('rows');
			old.createObjectStore('ticks');
		},
	});
	const { id, name, settings, rows } = show;
	await db.put('shows', { id, name, settings, revision: 7, atBench: 'a step' });
	for (const each of rows) await db.put('rows', each, [id, each.id]);
	await db.put('ticks', tick, [id, tick.row, tick.copy, tick.part, tick.side]);
	db.close();
}
const tick: Tick = { row: 'b', copy: 1, part: 'mount', side: 'spoilt', times: 2 };

test('inner windows cut on their own blanks stay right: the show is kept to cut them so', async () => {
	await leaveFirstForm();
	const db = await openDB(databaseName, 3, {
		upgrade(old) {
			old.createObjectStore('exchanges');
			old.createObjectStore('matchings');
		},
	});
	const { rows: _, ...kept } = { ...show, settings: { unit: 'mm' }, revision: 7 };
	await db.put('shows', kept);
	await db.put('shows', { ...kept, id: 'plain' });
	await db.put('ticks', { ...tick, part: 'inner mount', side: 'left' }, ['spring', 'b', 1, 'inner mount', 'left']);
	db.close();
	const store = open();
	expect((await store.read('spring')).show.settings).toEqual({ unit: 'mm', bench: { inner: 'own blank' } });
	expect((await store.read('plain')).show.settings).toEqual({ unit: 'mm' });
});

test('a frame kept when its width and height were its rebate is kept by its rebate', async () => {
	await leaveFirstForm();
	const db = await openDB(databaseName, 2, {
		upgrade(old) {
			old.createObjectStore('exchanges');
			old.createObjectStore('matchings');
		},
	});
	const frames = [{ name: 'Oak', width: '502', height: 402, lip: 6 }, 'no frame'];
	const { rows: _, ...framed } = { ...show, settings: { unit: 'mm', frames }, revision: 7, atBench: 'a step' };
	await db.put('shows', framed);
	await db.put('shows', { ...framed, id: 'plain', settings: { unit: 'mm' } });
	db.close();
	const store = open();
	expect(await store.read('spring')).toEqual({
		show: {
			...show,
			ticks: [tick],
			settings: { unit: 'mm', frames: [{ name: 'Oak', rebateWidth: '502', rebateHeight: 402, lip: 6 }, 'no frame'] },
		},
		revision: 7,
		atBench: 'a step',
	});
	expect((await store.read('plain')).show.settings).toEqual({ unit: 'mm' });
});

test('a show kept by the first version of the app is there, with all that was in it', async () => {
	await leaveFirstForm();
	const store = open();
	const kept = { show: { ...show, ticks: [tick] }, revision: 7, atBench: 'a step' };
	expect(await store.openShow(() => ({ ...show, id: 'other' }))).toEqual(kept);
	expect(await store.exchanges('spring')).toEqual([]);
	expect(await store.apply('spring', adding(row('c', 3)))).toBe(8);
});

test('views that a show of the third form has among its settings are its own, and its settings without them', async () => {
	const views = { inHand: 'Sizing', sort: { column: 'title', way: 'up' } };
	const db = await openDB(databaseName, 3, {
		upgrade(old) {
			old.createObjectStore('shows', { keyPath: 'id' });
			for (const name of ['rows', 'ticks', 'exchanges', 'matchings']) old.createObjectStore(name);
		},
	});
	const { id, name, settings, rows } = show;
	await db.put('shows', { id, name, settings: { ...settings, views }, cutSheets: [], revision: 7, openedAt: 3 });
	await db.put('shows', { id: 'other', name: 'Other', settings: {}, revision: 1, deletedAt: 2 });
	for (const each of rows) await db.put('rows', each, [id, each.id]);
	db.close();
	const store = open();
	expect(await store.openShow(() => ({ ...show, id: 'new' }))).toEqual({ show: { ...show, views }, revision: 7 });
	expect((await store.read('other')).show).toEqual({ id: 'other', name: 'Other', settings: {}, rows: [] });
	const own: Edit = { label: 'Hanging order', rows: [], views: { before: views, after: undefined } };
	await store.apply('spring', own);
	expect((await store.read('spring')).show).toStrictEqual(show);
	await store.apply('spring', invert(own));
	expect((await store.read('spring')).show).toStrictEqual({ ...show, views });
	await store.keep(show);
	expect((await store.read('spring')).show).toStrictEqual(show);
});

const exchange = (id: string, at: number, count = 1): Exchange => ({
	id,
	direction: 'given',
	fileName: `${id}.csv`,
	at,
	unit: 'mm',
	rows: Array.from({ length: count }, (_, place) => row(`r${place}`, place)),
});

test('an exchange stands from the edit that takes it in to the one that takes that back', async () => {
	const store = await openKept();
	await store.keepExchange('spring', exchange('x', 1), false);
	expect(await store.exchanges('spring')).toEqual([]);
	const edit: Edit = { ...adding(row('c', 3)), exchange: { after: 'x' } };
	await store.apply('spring', edit);
	expect((await store.exchanges('spring')).map(({ id }) => id)).toEqual(['x']);
	await store.apply('spring', invert(edit));
	expect(await store.exchanges('spring')).toEqual([]);
});

test('the last few exchanges are kept, fewer of large ones, the newest whatever its size', async () => {
	const store = await openKept();
	for (let at = 1; at <= 9; at++) await store.keepExchange('spring', exchange(`x${at}`, at), true);
	expect((await store.exchanges('spring')).map(({ at }) => at)).toEqual([9, 8, 7, 6, 5, 4]);
	await store.keepExchange('spring', exchange('large', 10, mostExchangedRows + 1), true);
	expect((await store.exchanges('spring')).map(({ id }) => id)).toEqual(['large']);
	await store.keepExchange('spring', exchange('after', 11), true);
	expect((await store.exchanges('spring')).map(({ id }) => id)).toEqual(['after']);
});

test('which exchanges are worth keeping is known without reading them, and those of other shows count for themselves', async () => {
	const store = await openKept();
	for (let at = 1; at <= mostExchanges; at++) {
		await store.keepExchange('spring', exchange(`x${at}`, at), true);
		await store.keepExchange('autumn', exchange(`y${at}`, 10 + at), true);
	}
	const reads = vi.spyOn(IDBObjectStore.prototype, 'getAll');
	await store.keepExchange('spring', exchange('x7', 7), true);
	expect(reads).not.toHaveBeenCalled();
	reads.mockRestore();
	expect((await store.exchanges('spring')).map(({ at }) => at)).toEqual([7, 6, 5, 4, 3, 2]);
	expect(await store.exchanges('autumn')).toHaveLength(mostExchanges);
});
