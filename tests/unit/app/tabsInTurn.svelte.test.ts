import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { afterEach, beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import { openShelf } from '../../../src/app/openShelf.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import type { Shelf } from '../../../src/app/shelf.svelte.ts';
import { Update } from '../../../src/app/update.svelte.ts';
import type { ColumnName } from '../../../src/core/show/columns.ts';
import type { Show } from '../../../src/core/show/show.ts';
import { openShowStore } from '../../../src/storage/showStore.ts';
import { on } from './edits.ts';

// What tabs that share a show do, one thing after the other, with the messages between them in the test's hands. What
// they do at random, all at once, is in severalTabs.svelte.test.ts.

/** What becomes of messages between tabs. */
let post: 'brought' | 'held' | 'lost' = 'brought';
const held: (() => void)[] = [];
const channels = new Set<Channel>();

class Channel {
	readonly #name: string;
	onmessage: ((message: { readonly data: unknown }) => void) | undefined;

	constructor(name: string) {
		this.#name = name;
		channels.add(this);
	}

	postMessage(data: unknown): void {
		if (post === 'lost') return;
		const copy = structuredClone(data);
		for (const other of channels) {
			if (other === this || other.#name !== this.#name) continue;
			const bring = () => void (channels.has(other) && other.onmessage?.({ data: copy }));
			if (post === 'held') held.push(bring);
			else setImmediate(bring);
		}
	}

	close(): void {
		channels.delete(this);
	}
}

/** Looks again at once, and goes on for long where the machine is busy. */
const patient = { interval: 2, timeout: 20_000 };

const bringHeld = () => held.splice(0).forEach((bring) => bring());

/** As much of a document as tabs listen to. */
class Front extends EventTarget {
	visibilityState = 'visible';
	comes = () => this.dispatchEvent(new Event('visibilitychange'));
}
let front: Front;

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
	post = 'brought';
	front = new Front();
	vi.stubGlobal('BroadcastChannel', Channel);
	vi.stubGlobal('document', front);
});
afterEach(() => {
	held.length = 0;
	channels.clear();
	vi.restoreAllMocks();
	vi.unstubAllGlobals();
});

async function open(showId?: string): Promise<Shelf> {
	const shelf = await openShelf({ databaseName, showId });
	onTestFinished(() => void shelf.close().catch(() => undefined));
	return shelf;
}

/** Two tabs of one show with three prints. */
async function twoTabs(): Promise<[Shelf, Shelf]> {
	const one = await open();
	on(one.session).addRows(
		['Pier', 'Quay', 'Mole'].map((title) => ({ cells: { title, note: 'blue' } })),
		0,
		'Add',
	);
	await one.session.whenSaved();
	return [one, await open(one.session.show.id)];
}

const type = ({ session }: Shelf, row: number, text: string, column: ColumnName = 'title') =>
	on(session).typeCells([{ id: session.show.rows[row]!.id, cells: { [column]: text } }], 'Type');

const textsOf = ({ rows }: Show, column: ColumnName = 'title') => rows.map(({ typed }) => typed[column]);
const texts = ({ session }: Shelf, column?: ColumnName) => textsOf(session.show, column);

async function onDisk(id: string): Promise<Show> {
	const store = openShowStore(databaseName);
	try {
		return (await store.read(id)).show;
	} finally {
		store.close();
	}
}

/** Resolves when all tabs show these titles, and they are on disk. */
async function allShow(tabs: readonly Shelf[], titles: readonly string[]): Promise<void> {
	for (const shelf of tabs) await expect.poll(() => texts(shelf), patient).toEqual(titles);
	const { session } = tabs[0]!;
	await expect.poll(() => onDisk(session.show.id).then((show) => textsOf(show)), patient).toEqual(titles);
	for (const each of tabs) expect(each.session.show).toEqual(await onDisk(session.show.id));
}

/** A device that has room for so many records more, until room is made. */
function fill(records = 0) {
	let room = records;
	const spies = (['put', 'add'] as const).map((name) => {
		const put = Reflect.get(IDBObjectStore.prototype, name) as (value: unknown, key?: IDBValidKey) => IDBRequest;
		return vi.spyOn(IDBObjectStore.prototype, name).mockImplementation(function (this: IDBObjectStore, value, key) {
			if (room-- <= 0) throw new DOMException('no room', 'QuotaExceededError');
			return put.call(this, value, key) as IDBRequest<IDBValidKey>;
		});
	});
	return () => spies.forEach((spy) => spy.mockRestore());
}

const isFull = ({ whenSaved }: { whenSaved: () => Promise<void> }) => expect(whenSaved()).rejects.toThrow(/no room/);
const fails = (session: Session) => isFull({ whenSaved: () => session.whenSaved() });

test('a message that is lost is noticed at the next one', async () => {
	const [one, other] = await twoTabs();
	post = 'lost';
	type(one, 0, 'Pier, early');
	await one.session.whenSaved();
	post = 'brought';
	type(one, 1, 'Quay, late');
	await allShow([one, other], ['Pier, early', 'Quay, late', 'Mole']);
});

test('a message that is lost is noticed when the tab comes to the front', async () => {
	const [one, other] = await twoTabs();
	post = 'lost';
	type(one, 0, 'Pier, early');
	await one.session.whenSaved();
	expect(texts(other)).toEqual(['Pier', 'Quay', 'Mole']);
	front.comes();
	await allShow([one, other], ['Pier, early', 'Quay', 'Mole']);
});

test('a message that comes late does not undo what was typed since', async () => {
	const [one, other] = await twoTabs();
	post = 'held';
	type(one, 0, 'Pier, early');
	await one.session.whenSaved();
	type(other, 0, 'Pier, late');
	await other.session.whenSaved();
	post = 'brought';
	bringHeld();
	await allShow([one, other], ['Pier, late', 'Quay', 'Mole']);
});

test('messages that come in the wrong sequence end with what is on disk', async () => {
	const [one, other] = await twoTabs();
	post = 'held';
	for (const title of ['Pier, early', 'Pier, late']) {
		type(one, 0, title);
		await one.session.whenSaved();
	}
	held.reverse();
	bringHeld();
	await allShow([one, other], ['Pier, late', 'Quay', 'Mole']);
});

test('a large edit is not sent, and comes all the same', async () => {
	const [one, other] = await twoTabs();
	const many = Array.from({ length: 401 }, (_, at) => `Print ${at}`);
	on(one.session).addRows(
		many.map((title) => ({ cells: { title } })),
		3,
		'Import',
	);
	await allShow([one, other], ['Pier', 'Quay', 'Mole', ...many]);
});

test('prints that are moved in one tab stand there in the other', async () => {
	const [one, other] = await twoTabs();
	on(one.session).moveRows([one.session.show.rows[2]!.id], 0);
	await allShow([one, other], ['Mole', 'Pier', 'Quay']);
});

test('undo gives back its own cell alone, and redo what stood there before undo', async () => {
	const [one, other] = await twoTabs();
	type(one, 0, 'Pier, early');
	await allShow([one, other], ['Pier, early', 'Quay', 'Mole']);
	type(other, 0, 'red', 'note');
	type(other, 0, 'Pier, late');
	await allShow([one, other], ['Pier, late', 'Quay', 'Mole']);
	one.session.undo();
	await allShow([one, other], ['Pier', 'Quay', 'Mole']);
	expect(texts(one, 'note')).toEqual(['red', 'blue', 'blue']);
	one.session.redo();
	await allShow([one, other], ['Pier, late', 'Quay', 'Mole']);
	expect(texts(other, 'note')).toEqual(['red', 'blue', 'blue']);
});

test('undo of a text brings no print back that another tab has deleted, undo of its deletion does', async () => {
	const [one, other] = await twoTabs();
	type(one, 0, 'Pier, early');
	await allShow([one, other], ['Pier, early', 'Quay', 'Mole']);
	on(other.session).removeRows([other.session.show.rows[0]!.id]);
	await allShow([one, other], ['Quay', 'Mole']);
	one.session.undo();
	await one.session.whenSaved();
	await allShow([one, other], ['Quay', 'Mole']);
	other.session.undo();
	await allShow([one, other], ['Pier, early', 'Quay', 'Mole']);
});

test('what found no room stays on the screen through what the other tab types, and wins once it is written', async () => {
	const [one, other] = await twoTabs();
	const makeRoom = fill();
	type(other, 0, 'Pier, here');
	await fails(other.session);
	makeRoom();
	type(one, 0, 'Pier, there');
	type(one, 1, 'Quay, there');
	await one.session.whenSaved();
	await expect.poll(() => texts(other), patient).toEqual(['Pier, here', 'Quay, there', 'Mole']);
	expect(other.session.saved.state).toBe('failed');
	front.comes();
	await other.session.whenSaved();
	await allShow([one, other], ['Pier, here', 'Quay, there', 'Mole']);
});

test('of an import that finds no room half-way, the other tab is shown nothing', async () => {
	const [one, other] = await twoTabs();
	const makeRoom = fill(20);
	on(one.session).addRows(
		Array.from({ length: 40 }, (_, at) => ({ cells: { title: `Print ${at}` } })),
		3,
		'Import',
	);
	await fails(one.session);
	expect(textsOf(await onDisk(one.session.show.id))).toEqual(['Pier', 'Quay', 'Mole']);
	front.comes();
	await fails(one.session);
	expect(texts(other)).toEqual(['Pier', 'Quay', 'Mole']);
	makeRoom();
	front.comes();
	await one.session.whenSaved();
	await allShow([one, other], texts(one) as string[]);
	expect(texts(other)).toHaveLength(43);
});

test('who types and goes to another show at once, and back, loses nothing', async () => {
	const [one, other] = await twoTabs();
	const { id } = one.session.show;
	const elsewhere = (await one.create())!;
	const old = one.session;
	type(one, 0, 'Pier, early');
	const [there, back] = [one.open(elsewhere), one.open(id)];
	await there;
	expect(old.isOpen).toBe(false);
	expect(on(old).addRows([{ cells: { title: 'too late' } }], 0, 'Add')).toHaveLength(1);
	expect(textsOf(await onDisk(id))).toEqual(['Pier, early', 'Quay', 'Mole']);
	await back;
	expect([one.session.show.id, one.session === old]).toEqual([id, false]);
	await allShow([one, other], ['Pier, early', 'Quay', 'Mole']);
});

test('a show that is closing is not typed into; where it cannot be left, it is', async () => {
	const [one, other] = await twoTabs();
	const elsewhere = (await one.create())!;
	const makeRoom = fill();
	type(one, 0, 'Pier, early');
	await fails(one.session);
	const closing = one.session.close();
	type(one, 1, 'refused');
	await expect(closing).rejects.toThrow(/no room/);
	expect(await one.open(elsewhere)).toBe(false);
	type(one, 2, 'Mole, late');
	makeRoom();
	await one.session.close();
	await allShow([other], ['Pier, early', 'Quay', 'Mole, late']);
	expect(texts(one)).toEqual(['Pier, early', 'Quay', 'Mole, late']);
});

test('a newer version of the app starts only once all is on disk', async () => {
	const [one] = await twoTabs();
	const { id } = one.session.show;
	const seen: (readonly (string | undefined)[])[] = [];
	const update: Update = new Update(
		async () => void seen.push(textsOf(await onDisk(id))),
		() => one.session.whenSaved(),
		() => undefined,
	);
	type(one, 0, 'Pier, early');
	await update.apply();
	expect(seen).toEqual([['Pier, early', 'Quay', 'Mole']]);
	fill();
	type(one, 1, 'Quay, late');
	await expect(update.apply()).rejects.toThrow(/no room/);
	expect(seen).toHaveLength(1);
});

test('once a newer version keeps the show, that is said whatever else went wrong', async () => {
	const [one] = await twoTabs();
	const makeRoom = fill();
	type(one, 0, 'Pier, early');
	one.session.supersede();
	await expect(one.session.whenSaved()).rejects.toThrow(/newer version/);
	makeRoom();
	type(one, 1, 'Quay, late');
	await expect(one.session.whenSaved()).rejects.toThrow(/newer version/);
	expect(one.session.saved.state).toBe('failed');
});

test('a show that one tab deletes and the other types into is there again', async () => {
	const [one, other] = await twoTabs();
	const { id } = one.session.show;
	expect(await one.delete(id)).toBe(true);
	type(other, 0, 'Pier, late');
	await other.session.whenSaved();
	await one.refresh();
	expect(one.shows.find((show) => show.id === id)?.deletedAt).toBeUndefined();
	expect(await one.open(id)).toBe(true);
	await allShow([one, other], ['Pier, late', 'Quay', 'Mole']);
});

test('storage that is cleared under two tabs holds all of the show again after the next edits', async () => {
	const [one, other] = await twoTabs();
	const db = await openDB(databaseName);
	for (const store of db.objectStoreNames) await db.clear(store);
	db.close();
	type(one, 0, 'Pier, early');
	type(one, 1, 'Quay, early');
	await one.session.whenSaved();
	type(other, 2, 'Mole, late');
	await allShow([one, other], ['Pier, early', 'Quay, early', 'Mole, late']);
});
