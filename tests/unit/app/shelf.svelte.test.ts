import 'fake-indexeddb/auto';
import { beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import { openShelf } from '../../../src/app/openShelf.ts';
import type { Shelf } from '../../../src/app/shelf.svelte.ts';
import { daysToBringBack } from '../../../src/core/device/shelf.ts';
import { eventually } from '../eventually.ts';
import { on } from './edits.ts';

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
	vi.useRealTimers();
});

/** A shelf as in a tab of its own, that is closed when the test ends. */
async function open(): Promise<Shelf> {
	const shelf = await openShelf({ databaseName, showId: undefined });
	onTestFinished(() => shelf.close());
	return shelf;
}

const names = ({ shows }: Shelf) =>
	shows
		.filter(({ deletedAt }) => deletedAt === undefined)
		.map(({ name }) => name)
		.sort();

async function withSpring(): Promise<{ shelf: Shelf; spring: string }> {
	const shelf = await open();
	on(shelf.session).rename('Spring');
	on(shelf.session).addRows([{ cells: { title: 'Pier' } }], 0, 'Add row');
	await shelf.session.whenSaved();
	await shelf.refresh();
	return { shelf, spring: shelf.session.show.id };
}

test('shows are begun, opened and copied, each with its own rows; the last one open is opened again', async () => {
	const { shelf, spring } = await withSpring();
	const autumn = await shelf.create();
	expect(await shelf.open(autumn!)).toBe(true);
	expect(shelf.session.show).toMatchObject({ id: autumn, name: 'New show', rows: [] });
	await shelf.rename(autumn!, 'Autumn');
	const copy = await shelf.copy(spring);
	expect(names(shelf)).toEqual(['Autumn', 'Spring', 'Spring copy']);
	expect(shelf.shows.find(({ id }) => id === copy)).toMatchObject({ prints: 1 });
	// When it was opened is kept after it is there.
	await expect.poll(async () => (await open()).session.show.name).toBe('Autumn');
});

test('a row in which nothing is typed is no print on the shelf, until something is', async () => {
	const { shelf, spring } = await withSpring();
	const { session } = shelf;
	const count = async () => {
		await session.whenSaved();
		await shelf.refresh();
		return shelf.shows.find(({ id }) => id === spring)?.prints;
	};
	on(session).addRows([{ cells: {} }], 1, 'Add print');
	expect(await count()).toBe(1);
	const copy = await shelf.copy(spring);
	await shelf.refresh();
	expect(shelf.shows.find(({ id }) => id === copy)?.prints).toBe(1);
	on(session).typeCells([{ id: session.show.rows[1]!.id, cells: { title: 'Quay' } }], 'Type');
	expect(await count()).toBe(2);
	session.undo();
	expect(await count()).toBe(1);
	session.undo();
	expect([await count(), session.show.rows.length]).toEqual([1, 1]);
});

test('another show is renamed without being opened, and a tab that has it open hears of it', async () => {
	const { shelf, spring } = await withSpring();
	const other = await open();
	expect(other.session.show.id).toBe(spring);
	const autumn = await shelf.create();
	await shelf.open(autumn!);
	await shelf.rename(spring, 'Spring, hung');
	await eventually(() => expect(other.session.show.name).toBe('Spring, hung'));
	await eventually(() => expect(names(other)).toEqual(['New show', 'Spring, hung']));
});

test('what is done in one tab to its show leaves the show of another tab alone', async () => {
	const { shelf, spring } = await withSpring();
	const autumn = await shelf.create();
	const other = await open();
	await other.open(autumn!);
	on(other.session).addRows([{ cells: { title: 'Quay' } }], 0, 'Add row');
	on(shelf.session).addRows([{ cells: { title: 'Mole' } }], 1, 'Add row');
	await Promise.all([other.session.whenSaved(), shelf.session.whenSaved()]);
	expect([shelf.session.show.id, other.session.show.id]).toEqual([spring, autumn]);
	expect(shelf.session.show.rows.map(({ typed }) => typed.title)).toEqual(['Pier', 'Mole']);
	expect(other.session.show.rows.map(({ typed }) => typed.title)).toEqual(['Quay']);
	shelf.session.undo();
	await shelf.session.whenSaved();
	expect(other.session.show.rows).toHaveLength(1);
});

test('a deleted show is brought back whole; in the place of the open one another opens', async () => {
	const { shelf, spring } = await withSpring();
	const autumn = await shelf.create();
	await shelf.delete(spring);
	expect(shelf.session.show.id).toBe(autumn);
	expect(names(shelf)).toEqual(['New show']);
	expect(shelf.last).toEqual({ did: 'delete', id: spring, name: 'Spring' });
	await shelf.undoStep();
	expect(names(shelf)).toEqual(['New show', 'Spring']);
	await shelf.open(spring);
	expect(shelf.session.show.rows.map(({ typed }) => typed.title)).toEqual(['Pier']);
});

test('the last show deleted leaves a new one, never none', async () => {
	const { shelf, spring } = await withSpring();
	await shelf.delete(spring);
	expect(shelf.session.show).toMatchObject({ name: 'New show', rows: [] });
	expect(shelf.session.show.id).not.toBe(spring);
});

test('a deleted show is forgotten only when the days to bring it back are over', async () => {
	const { shelf, spring } = await withSpring();
	await shelf.delete(spring);
	const now = Date.now();
	const after = (days: number) => vi.spyOn(Date, 'now').mockReturnValue(now + days * 24 * 60 * 60 * 1000);
	after(daysToBringBack - 1);
	expect((await open()).shows.some(({ id }) => id === spring)).toBe(true);
	after(daysToBringBack + 1);
	expect((await open()).shows.some(({ id }) => id === spring)).toBe(false);
	vi.restoreAllMocks();
});

test('a show that is typed into in another tab is not deleted', async () => {
	const { shelf, spring } = await withSpring();
	const other = await open();
	await shelf.delete(spring);
	on(other.session).typeCells([{ id: other.session.show.rows[0]!.id, cells: { title: 'Quay' } }], 'Type');
	await other.session.whenSaved();
	await shelf.refresh();
	expect(names(shelf)).toContain('Spring');
});

test('a show that is put away is kept, and not the one that opens', async () => {
	const { shelf, spring } = await withSpring();
	const autumn = await shelf.create();
	await shelf.archive(spring, true);
	expect((await open()).session.show.id).toBe(autumn);
	await shelf.undoStep();
	expect(shelf.shows.find(({ id }) => id === spring)?.isArchived).toBeUndefined();
});

test('a show is not left while what was typed is not on disk', async () => {
	const { shelf, spring } = await withSpring();
	const autumn = await shelf.create();
	vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
		throw new DOMException('no room', 'QuotaExceededError');
	});
	on(shelf.session).rename('Spring, hung');
	expect(await shelf.open(autumn!)).toBe(false);
	expect(shelf.session.show).toMatchObject({ id: spring, name: 'Spring, hung' });
	expect(shelf.problem).toContain('no room left on this device');
	vi.restoreAllMocks();
});

test.each<[string, (shelf: Shelf, other: string) => Promise<unknown>]>([
	['begun', (shelf) => shelf.create()],
	['copied', (shelf, other) => shelf.copy(other)],
	['renamed', (shelf, other) => shelf.rename(other, 'Winter')],
	['archived', (shelf, other) => shelf.archive(other, true)],
	['deleted', (shelf, other) => shelf.delete(other)],
	['deleted, being open,', (shelf) => shelf.delete(shelf.session.show.id)],
])('where the device is full, a show that is %s is as it was, and a sentence says so', async (_, act) => {
	const { shelf } = await withSpring();
	const autumn = await shelf.add([
		{ name: 'Autumn', settings: {}, rows: [{ id: 'a', order: 1, typed: { title: 'Quay' } }] },
	]);
	const { session } = shelf;
	const before = [...names(shelf)];
	vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
		throw new DOMException('no room', 'QuotaExceededError');
	});
	expect([false, undefined]).toContain(await act(shelf, autumn!));
	expect(shelf.problem).toMatch(/^There is no room left on this device. Nothing has changed\. /);
	vi.restoreAllMocks();
	await shelf.refresh();
	expect([names(shelf), shelf.session, shelf.last]).toEqual([before, session, undefined]);
	expect(shelf.shows.map(({ prints }) => prints)).toEqual([1, 1]);
	expect(await shelf.open(autumn!), 'and the next thing works').toBe(true);
	expect([shelf.problem, shelf.session.show.rows.length]).toEqual([undefined, 1]);
});

test('a tab whose show was deleted in another is told, and brings it back', async () => {
	const { shelf, spring } = await withSpring();
	const other = await open();
	await shelf.delete(spring);
	await eventually(() => expect(other.isOpenDeleted).toBe(true));
	expect(shelf.isOpenDeleted).toBe(false);
	await other.bringBack(spring);
	expect(other.isOpenDeleted).toBe(false);
	await eventually(() => expect(names(shelf)).toContain('Spring'));
});

test('a show that another tab has let go of for good is told of, and the open one stays', async () => {
	const { shelf, spring } = await withSpring();
	expect(await shelf.archive('gone', true)).toBe(false);
	expect(shelf.problem).toBe('This show is no longer on this device. Another tab deleted it.');
	expect(await shelf.copy('gone')).toBeUndefined();
	expect(shelf.session.show.id).toBe(spring);
});

test('the first screen waits for no list of shows, and what is opened is read before anything is written', async () => {
	const { shelf, spring } = await withSpring();
	await shelf.close();
	const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
	onTestFinished(() => begun.mockRestore());
	const again = await openShelf({ databaseName, showId: spring, isScreenFirst: true });
	onTestFinished(() => again.close());
	expect(again.session.show.rows).toHaveLength(1);
	expect(again.session.lastStep?.label).toBe('Add row');
	expect([again.isListed, again.shows]).toEqual([false, []]);
	const modes = begun.mock.calls.map(([, mode]) => mode ?? 'readonly');
	expect(modes.slice(0, 2)).toEqual(['readonly', 'readonly']); // the show, its steps
	await eventually(() => expect(again.isListed).toBe(true));
	expect(names(again)).toEqual(['Spring']);
});
