import 'fake-indexeddb/auto';
import { deleteDB } from 'idb';
import { beforeEach, expect, type MockInstance, onTestFinished, test, vi } from 'vitest';
import { copyShows } from '../../../src/app/copyShows.ts';
import { openNotes } from '../../../src/app/notedShows.ts';
import { openShelf } from '../../../src/app/openShelf.ts';
import { putBackLost } from '../../../src/app/putBackLost.ts';
import { SecondCopying } from '../../../src/app/secondCopies.ts';
import { daysToBringBack } from '../../../src/core/device/shelf.ts';
import { eventually } from '../eventually.ts';
import { on } from './edits.ts';
import { keepOutside, type OutsideDatabase } from './outsideDatabase.ts';
import { held, lose, openShelfOf, titlesOf, type, withShows } from './shelfToLose.ts';

let databaseName = '';
let outside: OutsideDatabase;
let copying: MockInstance;
beforeEach(({ task }) => {
	databaseName = task.id;
	vi.restoreAllMocks();
	vi.unstubAllGlobals();
	outside = keepOutside();
	copying = vi.spyOn(SecondCopying.prototype, 'changed').mockImplementation(() => undefined); // copies are made where a test says so
});

const open = () => openShelfOf(databaseName);

test('a database that is lost: every show is put back as its copy has it, archived and deleted ones as such, and it is said', async () => {
	const before = await withShows(databaseName);
	await before.session.copies.note(before.session.copies.mark(), 5);
	await before.refresh();
	const { show, revision } = before.session;
	await copyShows(before);
	await lose(before);
	const shelf = await open();
	expect(shelf.session.show).toEqual(show);
	expect([shelf.session.revision, shelf.session.copies.changes]).toEqual([revision, 0]);
	expect(await held(shelf)).toEqual({ Spring: ['Pier', 'Low water'], Autumn: ['Quay'] });
	expect(shelf.shows.find(({ name }) => name === 'Autumn')?.isArchived).toBe(true);
	expect(shelf.shows.find(({ name }) => name === 'Winter')?.deletedAt).toBeTypeOf('number');
	expect(shelf.lost.report?.putBack.map(({ name }) => name).sort()).toEqual(['Autumn', 'Spring']);
	expect(shelf.lost.report?.gone).toEqual([]);
	// It is said until it has been read, in other tabs and after a reload too, and then no more.
	expect((await open()).lost.report?.putBack).toHaveLength(2);
	shelf.lost.noteRead();
	expect((await open()).lost.report).toBeUndefined();
});

test('a database that is lost and no copy: the shows are named with their prints and last backup, and nothing else is called lost', async () => {
	const before = await withShows(databaseName);
	await before.session.copies.note(before.session.copies.mark(), 5);
	await before.refresh();
	await lose(before);
	const shelf = await open();
	expect(shelf.session.show).toMatchObject({ rows: [] });
	expect(shelf.lost.report?.putBack).toEqual([]);
	expect(shelf.lost.report?.gone.map(({ name, prints, copiedAt }) => [name, prints, copiedAt]).sort()).toEqual([
		['Autumn', 1, undefined],
		['Spring', 2, 5],
	]);
	await type(shelf, 'Pier');
	shelf.lost.noteRead();
	expect((await open()).lost.report).toBeUndefined();
	await lose(shelf);
	expect((await open()).lost.report?.gone.map(({ prints }) => prints)).toEqual([1]);
});

test('of two losses one after the other, the first is still said with the second until it has been read', async () => {
	await lose(await withShows(databaseName)); // there are no copies of these
	const shelf = await open();
	on(shelf.session).rename('Summer');
	await type(shelf, 'Rope');
	await copyShows(shelf);
	await lose(shelf);
	const { report } = (await open()).lost;
	expect(report?.gone.map(({ name }) => name).sort()).toEqual(['Autumn', 'Spring']);
	expect(report?.putBack.map(({ name }) => name)).toEqual(['Summer']);
	// So is what was put back, though it has been deleted since.
	const next = await open();
	await next.delete(next.session.show.id);
	on(next.session).rename('Salt');
	await type(next, 'Net');
	await copyShows(next);
	await lose(next);
	expect((await open()).lost.report?.putBack.map(({ name }) => name)).toEqual(['Summer', 'Salt']);
});

test('a device that never had a show has lost nothing, nor one on which nothing was typed', async () => {
	const first = await open();
	expect(first.lost.report).toBeUndefined();
	await copyShows(first);
	await lose(first);
	expect((await open()).lost.report).toBeUndefined();
	expect(outside.kept.size).toBe(0);
});

test('where the browser keeps neither notes nor caches, as in a private window, all goes as without them', async () => {
	const refuse = () => {
		throw new DOMException('refused', 'SecurityError');
	};
	vi.stubGlobal('localStorage', { getItem: refuse, setItem: refuse, removeItem: refuse });
	vi.stubGlobal('caches', { has: () => Promise.reject(new DOMException('refused', 'SecurityError')), open: refuse });
	const shelf = await open();
	await type(shelf, 'Pier');
	await expect(copyShows(shelf)).rejects.toThrow('refused');
	expect(shelf.session.saved).toEqual({ state: 'saved' });
	expect(titlesOf((await open()).session.show)).toEqual(['Pier']);
	await lose(shelf);
	expect((await open()).lost.report).toBeUndefined();
});

test.each(['', '{', 'null', '[1]', '{"shows":7}', '{"shows":[7,null,{"name":"x"}]}'])(
	'a note that is no note (%s) is none, and is written again',
	async (text) => {
		outside.notes.set(`${databaseName} shows`, text).set(`${databaseName} lost shows`, text);
		const shelf = await open();
		expect(shelf.lost.report).toBeUndefined();
		await type(shelf, 'Pier');
		await lose(shelf);
		expect((await open()).lost.report?.gone).toHaveLength(1);
	},
);

test('a note of another version, with less in it and more, still says that something was there', async () => {
	outside.notes.set(`${databaseName} shows`, JSON.stringify({ form: 9, shows: [{ id: 'a', name: 7, colour: 'red' }] }));
	expect((await open()).lost.report?.gone).toEqual([{ id: 'a', name: '', prints: 0 }]);
});

test('the newest copy that can be read is put back; a copy of an older version of the app is brought up to date', async () => {
	const before = await open();
	on(before.session).rename('Spring');
	await type(before, 'Pier');
	await copyShows(before);
	const [[address, text]] = [...outside.kept] as [[string, string]];
	const name = address.slice(0, address.indexOf('https:'));
	const about = JSON.parse(decodeURIComponent(address.split('.invalid/')[1]!)) as { id: string; revision: number };
	const at = (revision: number) =>
		`${name}https://second-copy.invalid/${encodeURIComponent(JSON.stringify({ ...about, revision }))}`;
	outside.kept.set(at(about.revision + 1), text.slice(0, -9)); // cut off as it was written
	outside.kept.set(at(about.revision + 2), JSON.stringify({ ...JSON.parse(text), version: 999 })); // of a newer app
	outside.kept.set(`${name}https://second-copy.invalid/%7B`, text).set(`${name}https://elsewhere.invalid/`, text);
	const old = { ...(JSON.parse(text) as object), version: 1, name: 'Spring, long ago' };
	outside.kept.set(at(about.revision - 1), JSON.stringify(old));
	await lose(before);
	const shelf = await open();
	expect(await held(shelf)).toEqual({ Spring: ['Pier'] });
	await lose(shelf);
	outside.kept.delete(address);
	expect(await held(await open())).toEqual({ 'Spring, long ago': ['Pier'] });
});

test('a copy that cannot be read keeps no other show from being put back', async () => {
	const before = await withShows(databaseName);
	await copyShows(before);
	const autumn = before.shows.find(({ name }) => name === 'Autumn')!.id;
	await lose(before);
	const whole = caches.open.bind(caches);
	vi.spyOn(caches, 'open').mockImplementation(async (name) => {
		const cache = await whole(name);
		const match = cache.match.bind(cache);
		return Object.assign(cache, {
			match: (address: string) =>
				address.includes(autumn) ? Promise.reject(new DOMException('no', 'UnknownError')) : match(address),
		});
	});
	const shelf = await open();
	expect(await held(shelf)).toEqual({ Spring: ['Pier', 'Low water'] });
	expect(shelf.lost.report?.gone.map(({ name }) => name)).toEqual(['Autumn']);
});

test('a show is copied again when it has changed, been renamed, archived, deleted or backed up, and only then', async () => {
	const shelf = await withShows(databaseName);
	await copyShows(shelf);
	const addresses = () => [...outside.kept.keys()].sort();
	const first = addresses();
	expect(first).toHaveLength(3);
	await copyShows(shelf);
	expect(addresses()).toEqual(first);
	const autumn = shelf.shows.find(({ name }) => name === 'Autumn')!.id;
	const changes: (() => Promise<unknown>)[] = [
		() => type(shelf, 'Kiln door'),
		() => shelf.rename(autumn, 'Late autumn'),
		() => shelf.archive(autumn, false),
		() => shelf.delete(autumn),
		() => shelf.bringBack(autumn),
		() =>
			shelf.noteCopied(
				shelf.shows.filter(({ id }) => id === autumn),
				7,
			),
	];
	for (const change of changes) {
		const before = addresses();
		await change();
		await shelf.refresh();
		await copyShows(shelf);
		const after = addresses();
		expect(after).toHaveLength(3);
		expect(after.filter((address) => !before.includes(address))).toHaveLength(1);
	}
	await lose(shelf);
	expect(await held(await open())).toEqual({ Spring: ['Pier', 'Low water', 'Kiln door'], 'Late autumn': ['Quay'] });
});

test('a copy is made by itself, soon after a change', async () => {
	copying.mockRestore();
	const shelf = await open();
	await type(shelf, 'Pier');
	await eventually(() => expect(outside.kept.size).toBe(1));
	await lose(shelf);
	expect(titlesOf((await open()).session.show)).toEqual(['Pier']);
});

test('no copy is made where room runs short: it is for what is typed', async () => {
	const shelf = await open();
	await type(shelf, 'Pier');
	vi.stubGlobal('navigator', {
		storage: { estimate: () => Promise.resolve({ usage: 95_000_000, quota: 100_000_000 }) },
	});
	await copyShows(shelf);
	expect(outside.kept.size).toBe(0);
});

test('a database that is lost under an open page: what is open stays, the others are put back, and it is said', async () => {
	const shelf = await withShows(databaseName);
	await copyShows(shelf);
	await deleteDB(databaseName); // the connections let go of it
	await type(shelf, 'Kiln door');
	await eventually(async () => expect(await held(shelf)).toHaveProperty('Autumn'));
	expect(await held(shelf)).toEqual({ Spring: ['Pier', 'Low water', 'Kiln door'], Autumn: ['Quay'] });
	expect(shelf.lost.report?.putBack.map(({ name }) => name)).toEqual(['Autumn']);
	expect(await held(await open())).toEqual({ Spring: ['Pier', 'Low water', 'Kiln door'], Autumn: ['Quay'] });
});

test('two tabs with a show each: the copies that one puts back take nothing from the other, which has newer ones', async () => {
	const one = await withShows(databaseName);
	const autumn = one.shows.find(({ name }) => name === 'Autumn')!.id;
	const other = await openShelf({ databaseName, showId: autumn });
	onTestFinished(() => void other.close().catch(() => undefined));
	await copyShows(one);
	await type(other, 'Buoy', 'Rope'); // not copied yet
	await deleteDB(databaseName);
	await type(one, 'Kiln door');
	await eventually(() => expect(one.shows.some(({ id }) => id === autumn)).toBe(true));
	await type(other, 'Net');
	expect(titlesOf(other.session.show)).toEqual(['Quay', 'Buoy', 'Rope', 'Net']);
	const after = await open();
	expect(await held(after)).toEqual({
		Spring: ['Pier', 'Low water', 'Kiln door'],
		Autumn: ['Quay', 'Buoy', 'Rope', 'Net'],
	});
});

test('a copy takes the place of no show that is there, though the tab that looked did not see it yet', async () => {
	const shelf = await open();
	await type(shelf, 'Pier');
	await copyShows(shelf);
	await type(shelf, 'Buoy'); // not copied yet
	const { revision } = shelf.session;
	const came = await putBackLost(databaseName, new Set(), openNotes(databaseName));
	expect(came).toEqual({ report: undefined, isChanged: false });
	await shelf.close();
	const after = await open();
	expect([titlesOf(after.session.show), after.session.revision]).toEqual([['Pier', 'Buoy'], revision]);
});

test('two tabs that open at once after a loss put each show back once', async () => {
	const before = await withShows(databaseName);
	await copyShows(before);
	await lose(before);
	const [one, other] = await Promise.all([open(), open()]);
	expect(one.session.show.id).toBe(other.session.show.id);
	for (const shelf of [one, other]) {
		await shelf.refresh();
		expect(shelf.shows).toHaveLength(3);
		expect(shelf.lost.report?.putBack).toHaveLength(2); // whichever has put them back, both say it
	}
});

test('a show that was deleted longer ago than it can be restored is not put back', async () => {
	const before = await withShows(databaseName);
	await copyShows(before);
	await lose(before);
	vi.spyOn(Date, 'now').mockReturnValue(Date.now() + (daysToBringBack + 1) * 86_400_000);
	const shelf = await open();
	await shelf.refresh();
	expect(shelf.shows.map(({ name }) => name).sort()).toEqual(['Autumn', 'Spring']);
	expect([...outside.kept.keys()].filter((address) => address.includes('deletedAt'))).toEqual([]);
});

test.each([true, false])(
	'shows that cannot be put back just now are said once, and put back the next time; noted: %s',
	async (areNoted) => {
		const before = await withShows(databaseName);
		await copyShows(before);
		await lose(before);
		const full = () => {
			throw new DOMException('no room', 'QuotaExceededError');
		};
		const puts = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(full);
		if (!areNoted) outside.notes.clear();
		const shelf = await open();
		expect(shelf.lost.report?.gone.map(({ name, prints, isCopied }) => [name, prints, isCopied]).sort()).toEqual([
			['Autumn', 1, true],
			['Spring', 2, true],
		]);
		shelf.lost.noteRead();
		await shelf.refresh(); // as every edit does
		expect(shelf.lost.report).toBeUndefined();
		puts.mockRestore();
		const next = await open();
		expect(await held(next)).toMatchObject({ Spring: ['Pier', 'Low water'], Autumn: ['Quay'] });
		expect(next.lost.report).toMatchObject({ gone: [], putBack: [{}, {}] });
	},
);

test('shows that could not be put back are put back the next time, though another has been begun meanwhile', async () => {
	const before = await withShows(databaseName);
	await copyShows(before);
	await lose(before);
	const puts = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
		throw new DOMException('no room', 'QuotaExceededError');
	});
	const shelf = await open();
	puts.mockRestore();
	await type(shelf, 'Rope');
	expect(Object.keys(await held(shelf))).toEqual(['New show']);
	await shelf.close();
	const next = await open();
	expect(await held(next)).toEqual({ 'New show': ['Rope'], Spring: ['Pier', 'Low water'], Autumn: ['Quay'] });
	expect(next.lost.report).toMatchObject({ gone: [], putBack: [{}, {}] }); // what was said of them no longer holds
});
