import 'fake-indexeddb/auto';
import { beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import { copyShows } from '../../../src/app/copyShows.ts';
import { copiesPart, SecondCopying } from '../../../src/app/secondCopies.ts';
import type { Shelf } from '../../../src/app/shelf.svelte.ts';
import { daysToBringBack } from '../../../src/core/device/shelf.ts';
import { newShow } from '../../../src/core/show/newShow.ts';
import { openShelfStore } from '../../../src/storage/shelfStore.ts';
import { on } from './edits.ts';
import { keepOutside, type OutsideDatabase } from './outsideDatabase.ts';
import { held, lose, openShelfOf, type, withShows } from './shelfToLose.ts';

let databaseName = '';
let outside: OutsideDatabase;
beforeEach(({ task }) => {
	databaseName = task.id;
	vi.restoreAllMocks();
	vi.unstubAllGlobals();
	outside = keepOutside();
	vi.spyOn(SecondCopying.prototype, 'changed').mockImplementation(() => undefined); // copies are made where a test says so
});

const open = () => openShelfOf(databaseName);
const idOf = ({ shows }: Shelf, wanted: string) => shows.find(({ name }) => name === wanted)!.id;
const isCopied = (text: string) => [...outside.kept.values()].some((kept) => kept.includes(text));

/** The browser says how much room is left, in bytes. */
const leave = (left: number) =>
	vi.stubGlobal('navigator', {
		storage: { estimate: () => Promise.resolve({ usage: 100_000_000 - left, quota: 100_000_000 }) },
	});

/** The browser writes no copy at these addresses. */
function refuse(isRefused: (address: string) => boolean): void {
	const whole = caches.open.bind(caches);
	vi.spyOn(caches, 'open').mockImplementation(async (name) => {
		const cache = await whole(name);
		const put = cache.put.bind(cache);
		return Object.assign(cache, {
			put: (address: string, response: Response) =>
				isRefused(address) ? Promise.reject(new DOMException('no', 'UnknownError')) : put(address, response),
		});
	});
}

test('a tab that has not heard of a deletion makes no copy that has not either', async () => {
	const shelf = await withShows(databaseName);
	const { session, shows } = shelf;
	const asSeen = { databaseName, session, shows };
	await copyShows(asSeen);
	await shelf.delete(idOf(shelf, 'Autumn'));
	await copyShows(shelf);
	await copyShows(asSeen);
	await lose(shelf);
	expect(await held(await open())).toEqual({ Spring: ['Pier', 'Low water'] });
});

test('what is not saved yet is in no copy, nor does a tab that is behind another copy what it has itself', async () => {
	const shelf = await open();
	await type(shelf, 'Pier');
	const behind = { show: shelf.session.show, saved: shelf.session.saved, revision: shelf.session.revision };
	const rows = [...behind.show.rows, { ...behind.show.rows[0]!, id: 'unsaved', typed: { title: 'Rope' } }];
	await copyShows({ databaseName, session: { ...behind, show: { ...behind.show, rows }, saved: { state: 'saving' } } });
	expect([isCopied('Pier'), isCopied('Rope')]).toEqual([true, false]);
	await type(shelf, 'Buoy'); // in another tab than the one that copies
	await copyShows({ databaseName, session: behind });
	await lose(shelf);
	expect(await held(await open())).toEqual({ 'New show': ['Pier', 'Buoy'] });
});

test('a show that cannot be copied keeps no other from it', async () => {
	const shelf = await withShows(databaseName);
	const [first] = shelf.shows.toSorted((one, other) => (one.id < other.id ? -1 : 1));
	refuse((address) => address.includes(first!.id));
	await expect(copyShows(shelf)).rejects.toThrow('no');
	expect(outside.kept.size).toBe(2);
});

test.each(['type', 'archive'] as const)('until the next copy is there the one before stays (%s)', async (change) => {
	const shelf = await withShows(databaseName);
	await copyShows(shelf);
	const before = [...outside.kept];
	if (change === 'type') await type(shelf, 'Rope');
	else await shelf.archive(idOf(shelf, 'Spring'), true);
	refuse(() => true);
	await expect(copyShows(shelf)).rejects.toThrow('no');
	expect([...outside.kept]).toEqual(before);
});

test('where there is no room for a copy that says that a show is deleted, there is none of it: it must not come back', async () => {
	const shelf = await withShows(databaseName);
	await copyShows(shelf);
	await shelf.delete(idOf(shelf, 'Autumn'));
	leave(5_000_000);
	await copyShows(shelf);
	expect([isCopied('Quay'), isCopied('Pier')]).toEqual([false, true]);
	await lose(shelf);
	expect(await held(await open())).toEqual({ Spring: ['Pier', 'Low water'] });
});

test('a copy does not take the room that is left for what is typed', async () => {
	const shelf = await open();
	await type(shelf, 'Pier');
	leave(10_000_100);
	await copyShows(shelf);
	expect(outside.kept.size).toBe(0);
	leave(10_100_000);
	await copyShows(shelf);
	expect(outside.kept.size).toBe(1);
});

test('copies that are made one after the other take the room of none that is left for what is typed', async () => {
	const shelf = await withShows(databaseName);
	await copyShows(shelf);
	const largest = Math.max(...[...outside.kept.values()].map((text) => text.length));
	outside.kept.clear();
	leave(10_000_000 + largest + 1); // for one of three
	await copyShows(shelf);
	expect(outside.kept.size).toBe(1);
});

test('a tab in the back copies its own show without a pause, and what was done to others without reading them', async () => {
	const shelf = await withShows(databaseName);
	await copyShows(shelf);
	const many = Array.from({ length: 401 }, (_, at) => ({ cells: { title: `Print ${at}` } }));
	on(shelf.session).addRows(many, 2, 'Add rows');
	await shelf.session.whenSaved();
	await shelf.refresh();
	await shelf.delete(idOf(shelf, 'Autumn'));
	const wait = setTimeout;
	vi.stubGlobal('document', { visibilityState: 'hidden' });
	// A browser lets timers of a page in the back wait for seconds, or for ever.
	vi.stubGlobal('setTimeout', (act: () => void, ms?: number) => (ms === undefined ? 0 : wait(act, ms)));
	await copyShows(shelf);
	vi.unstubAllGlobals();
	keepOutside(outside);
	expect(isCopied('Print 400')).toBe(true);
	await lose(shelf);
	const all = many.map(({ cells: { title } }) => title);
	expect(await held(await open())).toEqual({ Spring: ['Pier', 'Low water', ...all] });
});

test('a tab in the back leaves what was typed into other shows to one that is in front', async () => {
	const shelf = await withShows(databaseName);
	await copyShows(shelf);
	await shelf.rename(idOf(shelf, 'Autumn'), 'Late autumn');
	vi.stubGlobal('document', { visibilityState: 'hidden' });
	await copyShows(shelf);
	expect([isCopied('Late autumn'), outside.kept.size]).toEqual([false, 3]);
	vi.stubGlobal('document', { visibilityState: 'visible' });
	await copyShows(shelf);
	expect([isCopied('Late autumn'), outside.kept.size]).toEqual([true, 3]);
});

test('a show of a backup that holds settings alone is copied', async () => {
	const shelf = await open();
	const show = { ...newShow('of-backup'), name: 'House style', settings: { sides: '60' } };
	await shelf.keep([show], false, 5);
	await copyShows(shelf);
	await lose(shelf);
	const after = await open();
	expect(await after.read('of-backup')).toEqual(show);
});

test('while another tab copies, copies do not queue up; and however long that took, the next is not far off', async () => {
	vi.restoreAllMocks();
	await copiesPart.load();
	const asked: (() => void)[] = [];
	const request = () => new Promise<void>((resolve) => asked.push(resolve));
	vi.stubGlobal('navigator', { locks: { request } });
	vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] });
	onTestFinished(() => void vi.useRealTimers());
	const copying = new SecondCopying({ databaseName, session: undefined as never });
	onTestFinished(() => copying.close());
	for (let at = 0; at < 5; at++) {
		copying.changed();
		await vi.advanceTimersByTimeAsync(2000);
	}
	expect(asked).toHaveLength(1);
	await vi.advanceTimersByTimeAsync(3_600_000); // the other tab slept
	asked[0]!();
	await vi.advanceTimersByTimeAsync(60_000);
	expect(asked).toHaveLength(2); // of what has changed meanwhile
});

test('a page that goes to the back copies at once what has changed, for it may not come back; a closed one copies nothing', async () => {
	vi.restoreAllMocks();
	await copiesPart.load();
	let asked = 0;
	vi.stubGlobal('navigator', { locks: { request: () => Promise.resolve(void asked++) } });
	let goToBack: () => unknown = () => undefined;
	const page = { visibilityState: 'hidden', removeEventListener: () => undefined };
	vi.stubGlobal('document', { ...page, addEventListener: (_: string, act: () => unknown) => (goToBack = act) });
	vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] });
	onTestFinished(() => void vi.useRealTimers());
	const copying = new SecondCopying({ databaseName, session: undefined as never });
	const goneToBack = async () => {
		goToBack();
		await vi.advanceTimersByTimeAsync(0);
		return asked;
	};
	expect(await goneToBack()).toBe(0);
	copying.changed();
	expect([await goneToBack(), await goneToBack()]).toEqual([1, 1]);
	copying.changed();
	copying.close();
	copying.changed();
	expect(await goneToBack()).toBe(1);
	await vi.advanceTimersByTimeAsync(120_000);
	expect(asked).toBe(1);
});

test('of a show that was deleted longer ago than it can be restored, nothing stays in the copies and notes', async () => {
	const before = await withShows(databaseName);
	await copyShows(before);
	expect([...outside.kept.values()].join()).toContain('Ice');
	await before.close();
	vi.spyOn(Date, 'now').mockReturnValue(Date.now() + (daysToBringBack + 1) * 86_400_000);
	await open();
	expect([...outside.kept.values()].join()).not.toContain('Ice');
	expect(outside.kept.size).toBe(2);
});

test('nor while the page stays open for longer than that, and goes on copying', async () => {
	const shelf = await withShows(databaseName);
	await copyShows(shelf);
	vi.spyOn(Date, 'now').mockReturnValue(Date.now() + (daysToBringBack + 1) * 86_400_000);
	for (let at = 0; at < 2; at++) await copyShows(shelf);
	expect([isCopied('Ice'), outside.kept.size]).toEqual([false, 2]);
});

test('a show whose deletion came into no copy and no note does not come back once it is forgotten', async () => {
	const before = await withShows(databaseName);
	await copyShows(before);
	const spring = before.session.show.id;
	const store = openShelfStore(databaseName);
	await store.mark(spring, { deletedAt: Date.now() }); // the tab is closed before it has looked again
	store.close();
	await before.close();
	vi.spyOn(Date, 'now').mockReturnValue(Date.now() + (daysToBringBack + 1) * 86_400_000);
	const shelf = await open();
	expect(await held(shelf)).toEqual({ Autumn: ['Quay'] });
	await lose(shelf);
	const after = await open();
	expect(await held(after)).toEqual({ Autumn: ['Quay'] });
	expect(after.lost.report?.gone).toEqual([]);
});

test('where the copies cannot be let go of, the show is not forgotten yet, and they are the next time', async () => {
	const before = await withShows(databaseName);
	await copyShows(before);
	await before.close();
	vi.spyOn(Date, 'now').mockReturnValue(Date.now() + (daysToBringBack + 1) * 86_400_000);
	const whole = caches.open.bind(caches);
	vi.spyOn(caches, 'open').mockRejectedValueOnce(new DOMException('no', 'UnknownError'));
	const shelf = await open();
	expect(shelf.shows).toHaveLength(3);
	await shelf.close();
	caches.open = whole;
	expect((await open()).shows).toHaveLength(2);
	expect(outside.kept.size).toBe(2);
});
