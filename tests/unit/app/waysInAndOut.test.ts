// No browser without a screen has a sheet for sharing or opens files with an app: what the platform would do is done
// here by stand-ins, and only what this app makes of it is tested.
import 'fake-indexeddb/auto';
import { afterEach, expect, onTestFinished, test, vi } from 'vitest';
import { filesFromOutside } from '../../../src/app/filesFromOutside.ts';
import { canShare, giveBackup, giveRows, giveShow, giveToGet } from '../../../src/app/giveFile.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { whatToGet } from '../../../src/core/order/whatToGet.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { openShelf } from '../../../src/app/openShelf.ts';
import { FileDesk } from '../../../src/pages/fileDesk.svelte.ts';
import { eventually } from '../eventually.ts';
import { on } from './edits.ts';

afterEach(() => {
	vi.restoreAllMocks();
	vi.unstubAllGlobals();
});

interface Platform {
	/** Which kinds of file it hands to other apps. */
	readonly kinds: readonly string[];
	/** The name of the error with which it refuses. */
	readonly refuses?: string;
}

/** A platform that shares; what was shared and what was saved is written down. */
function stand({ kinds, refuses }: Platform) {
	const done: string[] = [];
	const isTaken = ({ files = [] }: ShareData) => files.every(({ type }) => kinds.includes(type));
	vi.stubGlobal('navigator', {
		canShare: isTaken,
		share: (data: ShareData) => {
			if (refuses !== undefined) return Promise.reject(new DOMException('no', refuses));
			done.push(`shared ${data.files![0]!.name} as ${data.title}`);
			return Promise.resolve();
		},
	});
	const link = { href: '', download: '', click: () => done.push(`saved ${link.download}`) };
	vi.stubGlobal('document', { createElement: () => link });
	vi.spyOn(URL, 'createObjectURL').mockReturnValue('blob:1');
	return done;
}

async function spring(name: string) {
	const shelf = await openShelf({ databaseName: name, showId: undefined });
	onTestFinished(() => shelf.close());
	on(shelf.session).rename('Spring');
	await shelf.session.whenSaved();
	return { shelf, session: shelf.session };
}

test('what to get names prints as the screens do: by number and title, else by their row', async () => {
	const { session } = await spring('named');
	const { settings } = readSettings({ supplies: [{ kind: 'tape', pack: 50 }] });
	const rows = [{ number: '4', title: 'Ebb' }, {}].map((own, order) => ({
		...{ id: `r${order}`, order, typed: { ...own, shape: '3:2' } },
	}));
	const results = rows.map((row) => judgeRow(row, settings));
	const toGet = whatToGet({ rows, results, settings, plans: [], sticks: [] });
	stand({ kinds: [] });
	const kept = vi.spyOn(URL, 'createObjectURL');
	const of = { show: { ...session.show, rows }, settings } as unknown as typeof session;
	await giveToGet(of, toGet);
	const text = await (kept.mock.calls[0]![0] as File).text();
	expect(text).toContain(',4 Ebb; Row 2\r\n');
});

test('what the platform takes is shared, in a form that it takes; a list of rows is no backup', async () => {
	const { shelf, session } = await spring('shared');
	const done = stand({ kinds: ['text/csv', 'text/plain'] });
	expect(canShare()).toBe(true);
	expect(session.copies.changes).toBe(1);
	expect(await giveRows(session, 'share')).toBe('Spring.csv');
	expect([session.copies.changes, session.copies.last]).toEqual([1, undefined]);
	expect(await giveShow(session, 'share')).toBe('Spring.evenhang.txt');
	expect(session.copies.changes).toBe(0);
	expect(await giveBackup(shelf, 'share', new Date(2026, 10, 25))).toBe('All shows 2026-11-25.evenhang.txt');
	expect(done).toEqual([
		'shared Spring.csv as Spring.csv',
		'shared Spring.evenhang.txt as Spring.evenhang.txt',
		'shared All shows 2026-11-25.evenhang.txt as All shows 2026-11-25.evenhang.txt',
	]);
});

test('changes that are in no file are counted without those that were taken back, over a reload too', async () => {
	const { shelf, session } = await spring('counted');
	stand({ kinds: ['text/plain'] });
	const counts: number[] = [];
	const count = async () => {
		await session.whenSaved();
		counts.push(session.copies.changes);
	};
	await giveShow(session, 'share');
	on(session).rename('Autumn');
	await count();
	session.undo();
	await count();
	session.redo();
	await count();
	await giveShow(session, 'share');
	session.undo();
	await count(); // what was given has it, and here it is no more
	session.redo();
	await count();
	session.undo();
	on(session).rename('Winter');
	await count(); // one change back from the copy, and one on
	session.undo();
	await count();
	on(session).rename('Summer');
	await count();
	expect(counts).toEqual([1, 0, 1, 1, 0, 2, 1, 2]);
	await shelf.refresh();
	expect(shelf.shows[0]).toMatchObject({ takenBack: 4 });
	vi.unstubAllGlobals();
	const again = await openShelf({ databaseName: 'counted', showId: undefined });
	onTestFinished(() => again.close());
	expect(again.session.copies.changes).toBe(2);
});

test('an export of rows says how many blank ones are not in it', async () => {
	const { shelf, session } = await spring('blank rows');
	stand({ kinds: [] });
	const desk = new FileDesk(shelf);
	on(session).addRows([{ cells: { title: 'Low water' } }, { cells: {} }, { cells: {} }], 0, 'Add');
	await desk.out.export();
	expect([desk.report?.title, desk.report?.sentences]).toEqual([
		expect.stringMatching(/^1 row/),
		expect.arrayContaining(['2 blank rows left out.']),
	]);
});

test('a person who puts sharing off has done nothing wrong, and nothing counts as given', async () => {
	const { shelf, session } = await spring('put off');
	const done = stand({ kinds: ['text/csv', 'application/json'], refuses: 'AbortError' });
	expect([await giveRows(session, 'share'), await giveShow(session, 'share')]).toEqual([undefined, undefined]);
	expect(await giveBackup(shelf, 'share')).toBeUndefined();
	expect([done, session.copies.last, session.copies.changes]).toEqual([[], undefined, 1]);
	expect(await session.exchanges.all()).toEqual([]);
});

test.each<[string, Platform]>([
	['refuses after all', { kinds: ['text/csv'], refuses: 'NotAllowedError' }],
	['does not share such files', { kinds: [] }],
])('where the platform %s, the file is saved', async (_, platform) => {
	const { session } = await spring(`saved ${platform.refuses}`);
	const done = stand(platform);
	expect(await giveRows(session, 'share')).toBe('Spring.csv');
	expect(done).toEqual(['saved Spring.csv']);
});

test('where there is no sharing it is not offered', () => {
	vi.stubGlobal('navigator', {});
	expect(canShare()).toBe(false);
});

/** Opens the page at an address; gives what comes in, and what the platform would call to open a file. */
function openedWith(search: string, isLaunched = true) {
	let launch: ((launch: { files?: readonly { getFile(): Promise<File> }[] }) => void) | undefined;
	const [taken, refused]: [File[][], string[]] = [[], []];
	vi.stubGlobal('location', { search, pathname: '/', hash: '' });
	vi.stubGlobal('history', { replaceState: () => undefined });
	vi.stubGlobal('caches', {
		open: () => Promise.resolve({ keys: () => Promise.resolve([]) }),
		delete: () => Promise.resolve(true),
	});
	if (isLaunched) vi.stubGlobal('launchQueue', { setConsumer: (consume: typeof launch) => (launch = consume) });
	const stop = filesFromOutside(
		(files) => taken.push([...files]),
		() => refused.push('refused'),
	);
	return { taken, refused, stop, launch: (params: Parameters<NonNullable<typeof launch>>[0]) => launch!(params) };
}
const handle = (name: string) => ({ getFile: () => Promise.resolve(new File(['title\n'], name)) });

test('files with which the app is opened come in; an opening without one is none', async () => {
	const { taken, refused, launch } = openedWith('');
	launch({ files: [handle('a.csv'), handle('b.json')] });
	launch({ files: [] });
	launch({});
	await eventually(() => expect(taken.map((files) => files.map(({ name }) => name))).toEqual([['a.csv', 'b.json']]));
	expect(refused).toEqual([]);
});

test('a file with which the app is opened and that is not given is told, once the page is there', async () => {
	const { taken, refused, launch, stop } = openedWith('');
	launch({ files: [{ getFile: () => Promise.reject(new DOMException('gone', 'NotFoundError')) }] });
	await eventually(() => expect(refused).toEqual(['refused']));
	stop();
	launch({ files: [handle('late.csv')] });
	await Promise.resolve();
	expect(taken).toEqual([]);
});

test('what could not be kept when it was shared is told; a page without any of this just opens', async () => {
	const { taken, refused } = openedWith('?shared=not-kept', false);
	await eventually(() => expect(refused).toEqual(['refused']));
	expect(taken).toEqual([]);
	expect(openedWith('', false).refused).toEqual([]);
});

test('an edit made while a file is being shared is not in it, and one that is taken back meanwhile is none', async () => {
	const { session } = await spring('meanwhile');
	let finish: (() => void) | undefined;
	vi.stubGlobal('navigator', {
		canShare: () => true,
		share: () => new Promise<void>((resolve) => (finish = resolve)),
	});
	const giving = giveShow(session, 'share');
	on(session).rename('Summer');
	await eventually(() => expect(finish).toBeDefined()); // the file is written a slice at a time
	on(session).rename('Autumn');
	session.undo();
	finish!();
	await giving;
	expect(session.copies.changes).toBe(1);
	await session.whenSaved();
	const again = await openShelf({ databaseName: 'meanwhile', showId: undefined });
	onTestFinished(() => again.close());
	expect(again.session.copies.changes).toBe(1);
});

test('a backup has the day where one is', async () => {
	const { shelf } = await spring('day');
	const done = stand({ kinds: ['text/plain'] });
	const { TZ } = process.env;
	onTestFinished(() => void (TZ === undefined ? delete process.env['TZ'] : (process.env['TZ'] = TZ)));
	process.env['TZ'] = 'Pacific/Auckland';
	await giveBackup(shelf, 'share', new Date('2026-11-25T20:00:00Z'));
	expect(done).toEqual([expect.stringContaining('All shows 2026-11-26')]);
});

test('a backup that fails is told', async () => {
	const { shelf } = await spring('failing');
	const desk = new FileDesk(shelf);
	vi.spyOn(shelf, 'read').mockRejectedValue(new DOMException('gone', 'UnknownError'));
	await desk.out.backUp();
	expect(desk.report).toMatchObject({ title: 'All shows could not be saved', isProblem: true });
	vi.restoreAllMocks();
});

/** A show with one picture, which is not read before `read` is called. */
async function springWithPicture(name: string) {
	const { shelf, session } = await spring(name);
	const row = { id: 'r', order: 1, typed: { 'picture file': 'a.jpg' } };
	session.do(() => ({ label: 'Import', rows: [{ after: row }] }));
	const image = { type: 'image/webp', bytes: new ArrayBuffer(8) };
	const pixels = { width: 3, height: 2 };
	await session.pictures.keep({ hash: 'a'.repeat(64), names: ['a.jpg'], pixels, preview: image, small: image });
	await session.pictures.announce();
	let read = () => undefined as void;
	const reading = new Promise<void>((resolve) => (read = resolve));
	vi.spyOn(session.pictures, 'image').mockReturnValue(reading.then(() => image));
	return { session, desk: new FileDesk(shelf), read };
}

test('a show saved without its pictures is not backed up', async () => {
	const { session } = await springWithPicture('without pictures');
	const done = stand({ kinds: [] });
	await giveShow(session);
	expect([done, session.copies.last]).toEqual([['saved Spring.evenhang.json'], undefined]);
});

const isPacking = (source: string) => ({ source, doing: 'packing', done: 0, of: 1, what: 'pictures' });

test.each([
	['The show', (desk: FileDesk) => desk.out.save('save', true)],
	['All shows', (desk: FileDesk) => desk.out.backUp()],
])('%s packed with pictures says how far it is, and makes no file where it is left', async (source, give) => {
	const { session, desk, read } = await springWithPicture(`packing ${source}`);
	const done = stand({ kinds: [] });
	const saving = give(desk);
	await eventually(() => expect(desk.progress).toEqual(isPacking(source)));
	desk.leave();
	expect(desk.progress).toBeUndefined();
	read();
	await saving;
	expect([done, desk.report, session.copies.last]).toEqual([[], undefined, undefined]);
});

test('a list that is saved meanwhile leaves it to be seen and cancelled; a second packing ends the first', async () => {
	const { desk, read } = await springWithPicture('packing beside a list');
	const done = stand({ kinds: [] });
	const saving = desk.out.backUp();
	await eventually(() => expect(desk.progress).toEqual(isPacking('All shows')));
	await desk.out.catalogue();
	expect(done).toEqual(['saved Spring catalogue.csv']);
	expect(desk.progress).toEqual(isPacking('All shows'));
	const again = desk.out.save('save', true);
	await eventually(() => expect(desk.progress).toEqual(isPacking('The show')));
	desk.leave();
	expect(desk.progress).toBeUndefined();
	read();
	await Promise.all([saving, again]);
	expect(done).toHaveLength(1);
});

test('a backup of all shows is reported on the show that was opened while it was made', async () => {
	const { shelf } = await spring('opened meanwhile');
	const other = await shelf.create();
	const { navigator } = globalThis;
	const done = stand({ kinds: [] });
	// A session that opens asks for the languages, and listens to whether it is seen.
	vi.stubGlobal('navigator', navigator);
	Object.assign(document, { addEventListener: () => undefined, removeEventListener: () => undefined });
	const desk = new FileDesk(shelf);
	const saving = desk.out.backUp();
	const opening = shelf.open(other!);
	await Promise.all([saving, opening]);
	expect(shelf.session.show.id).toBe(other);
	expect(done).toHaveLength(1);
	expect(desk.report?.title).toMatch(/^All shows/);
});
