import 'fake-indexeddb/auto';
import { beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { openShelf } from '../../../src/app/openShelf.ts';
import { giveShow } from '../../../src/app/giveFile.ts';
import { addPictures, type PicturesRead } from '../../../src/app/importPictures.ts';
import { importText } from '../../../src/app/importFile.ts';
import { tickFor } from '../../../src/core/bench/ticks.ts';
import { openShowStore } from '../../../src/storage/showStore.ts';
import { FileDesk } from '../../../src/pages/fileDesk.svelte.ts';
import { namer } from '../core/show/randomEdits.ts';
import { isTickNext, tickStep } from '../../../src/app/tickSteps.ts';
import { eventually } from '../eventually.ts';
import { on } from './edits.ts';

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
	vi.restoreAllMocks();
});

const open = (prefix = 'n'): Promise<Session> => openSession({ databaseName, makeId: namer(prefix) });

async function stored(id: string) {
	const store = openShowStore(databaseName);
	const { show } = await store.read(id);
	store.close();
	return show;
}

const addTitled = (session: Session, title: string) => on(session).addRows([{ cells: { title } }], 0, 'Add row');

test('what was typed before a session closes is on disk, and what comes after is refused and not shown', async () => {
	const session = await open();
	const { id } = session.show;
	for (let n = 0; n < 8; n++) addTitled(session, `${n}`);
	const closed = session.close();
	for (let n = 8; n < 16; n++) addTitled(session, `${n}`);
	await closed;
	addTitled(session, 'late');
	expect(session.show.rows).toHaveLength(8);
	expect(session.lastStep !== undefined && session.undo()).toBeFalsy();
	expect((await stored(id)).rows).toEqual(session.show.rows);
});

test('a session that cannot keep what was typed does not close, and goes on', async () => {
	const session = await open();
	const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
		throw new DOMException('full', 'QuotaExceededError');
	});
	addTitled(session, 'Pier');
	await expect(session.close()).rejects.toThrow('no room left');
	put.mockRestore();
	addTitled(session, 'Quay');
	await session.whenSaved();
	expect((await stored(session.show.id)).rows).toHaveLength(2);
	await session.close();
});

test('an opening that fails leaves no connection behind', async () => {
	await (await open()).close();
	const getAll = vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(() => {
		throw new DOMException('damaged', 'DataError');
	});
	const close = vi.spyOn(IDBDatabase.prototype, 'close');
	await expect(open()).rejects.toThrow('cannot be opened');
	await Promise.resolve();
	getAll.mockRestore();
	expect(close).toHaveBeenCalledOnce();
});

test('an import ends with its session: another show gets neither its rows nor its report', async () => {
	const shelf = await openShelf({ databaseName, showId: undefined });
	onTestFinished(() => shelf.close());
	const first = shelf.session.show.id;
	const other = await shelf.create();
	const desk = new FileDesk(shelf);
	const lines = Array.from({ length: 3000 }, (_, n) => `Print ${n},${200 + (n % 90)},${150 + (n % 70)}`);
	const importing = desk.importFiles([new File([`title,picture width,picture height\n${lines.join('\n')}`], 'l.csv')]);
	await eventually(() => expect(desk.progress?.doing).toBe('working out'));
	await shelf.open(other!);
	await importing;
	expect(shelf.session.show).toMatchObject({ id: other, rows: [] });
	expect((await stored(first)).rows).toEqual([]);
	expect(desk.report?.isProblem).toBe(true);
	expect(desk.report?.title).toBe('“l.csv” was not imported');
	expect(desk.progress).toBeUndefined();
});

/** One picture file that came in, for a new print. */
const pictureRead = (name: string): PicturesRead => ({
	matched: [{ kind: 'new', file: { name, hash: 'a'.repeat(64), pixels: { width: 30, height: 20 } } }],
	unread: [],
	room: undefined,
});

test.each([
	['before its rows are worked out', 0],
	['just before its edit', 1],
])('pictures that are added while their show begins to close, %s, are not said to be there', async (_, turn) => {
	const shelf = await openShelf({ databaseName, showId: undefined });
	onTestFinished(() => shelf.close());
	const { session } = shelf;
	const desk = new FileDesk(shelf);
	const read = pictureRead('Pier.jpg');
	let closing: Promise<void> | undefined;
	const ahead = session.ahead.bind(session);
	vi.spyOn(session, 'ahead').mockImplementation(async function* (rows) {
		if (turn === 0) closing = session.close();
		yield* ahead(rows);
		if (turn === 1) closing = session.close();
	});
	await desk.addPictures(read, read.matched);
	await closing;
	expect(session.show.rows).toEqual([]);
	expect(desk.report).toMatchObject({ isProblem: true, title: '“Pier.jpg” was not imported' });
	expect(desk.progress).toBeUndefined();
});

test('edits of another tab come as edits: the show is not read again for each', async () => {
	const [one, two] = [await open('a'), await open('b')];
	onTestFinished(async () => void (await Promise.all([one.close(), two.close()])));
	addTitled(one, 'first');
	await eventually(() => expect(two.show.rows).toHaveLength(1));
	const reads = vi.spyOn(IDBObjectStore.prototype, 'getAll');
	for (let n = 0; n < 20; n++) {
		addTitled(one, `${n}`);
		await one.whenSaved();
	}
	await eventually(() => expect(two.show.rows).toHaveLength(21));
	expect(two.show.rows).toEqual(one.show.rows);
	expect(reads.mock.calls.length).toBeLessThanOrEqual(2);
	addTitled(two, 'answer');
	await eventually(() => expect(one.show).toEqual(two.show));
});

test('while a question is open, nothing is taken back and nothing else is done', async () => {
	const session = await open();
	onTestFinished(() => session.close());
	const cells = { 'picture width': '300', 'picture height': '200', mount: '500 x 400' };
	const [id] = on(session).addRows([{ cells }], 0, 'Add row');
	const ticks = (['left', 'right', 'top', 'bottom'] as const).map((side) =>
		tickFor(session.show.rows[0]!, session.results[0]!, session.settings, { row: 1, copy: 1, part: 'mount', side })!,
	);
	on(session).tickCuts(ticks, true, 'Tick');
	const before = session.show;
	on(session).typeCells([{ id: id!, cells: { 'picture width': '320' } }], 'Type picture width');
	expect(session.question).toBeDefined();
	session.undo();
	session.redo();
	on(session).rename('Other');
	expect(session.show).toBe(before);
	const read = pictureRead('Pier.jpg');
	const { report } = await addPictures(session, read, read.matched);
	expect(report).toMatchObject({ isProblem: true, sentences: [expect.stringContaining('No picture was added')] });
	session.answer('leave');
	expect(session.show).toBe(before);
	expect(session.lastStep?.label).toBe('Tick');
});

test('a picture whose shape makes cuts wrong waits for the answer, and is there after it', async () => {
	const session = await open();
	onTestFinished(() => session.close());
	const cells = { 'picture width': '300', mount: '500 x 400', 'picture file': 'Pier.jpg', pixels: '40 x 30' };
	const [id] = on(session).addRows([{ cells }], 0, 'Add row');
	const [row, result] = [session.show.rows[0]!, session.results[0]!];
	on(session).tickCuts(
		[tickFor(row, result, session.settings, { row: 1, copy: 1, part: 'mount', side: 'top' })!],
		true,
		'Tick',
	);
	const read = pictureRead('Pier.jpg');
	const chosen = [{ ...read.matched[0]!, kind: 'row', by: 'choice', id: id! } as const];
	const { report } = await addPictures(session, read, chosen);
	expect(report).toMatchObject({ isProblem: false, sentences: [expect.stringContaining('Nothing has changed yet')] });
	expect(session.show.rows[0]!.picture).toBeUndefined();
	session.answer('keep');
	expect(session.show.rows[0]!.picture?.file).toBe('Pier.jpg');
});

test('at the bench undo takes ticks back and nothing else, however much was done since', async () => {
	const session = await open();
	onTestFinished(() => session.close());
	const cells = { 'picture width': '300', 'picture height': '200', mount: '500 x 400' };
	on(session).addRows([{ cells }], 0, 'Load the example');
	expect([tickStep(session, 'bench'), tickStep(session, 'knife')]).toEqual([undefined, undefined]);
	session.undoStep(tickStep(session, 'bench'));
	expect(session.show.rows).toHaveLength(1);
	const [left, right] = (['left', 'right'] as const).map((side) =>
		tickFor(session.show.rows[0]!, session.results[0]!, session.settings, { row: 1, copy: 1, part: 'mount', side })!,
	);
	on(session).tickCuts([left!], true, 'Tick left');
	on(session).tickCuts([right!], true, 'Tick right');
	on(session).changeSettings({ views: {} }, 'Hide column');
	on(session).rename('Autumn');
	session.undoStep(tickStep(session, 'bench'));
	expect([session.show.ticks, session.show.name]).toEqual([[left], 'Autumn']);
	session.undoStep(tickStep(session, 'bench'));
	expect([session.show.ticks ?? [], tickStep(session, 'bench')]).toEqual([[], undefined]);
	expect(isTickNext(session, 'bench')).toBe(true);
	session.redo();
	expect([session.show.ticks, session.show.rows.length]).toEqual([[left], 1]);
	// Past a change that took ticks along there is no way back to the ticks alone.
	on(session).replaceShow({ name: 'Winter', settings: {}, rows: [] }, 'Load the example');
	expect([tickStep(session, 'bench'), session.show.rows]).toEqual([undefined, []]);
});

test('an import whose show is closing stops, and is not said to wait; where closing fails another goes through', async () => {
	const session = await open();
	let fail: ((cause: Error) => void) | undefined;
	const closing = session.close(() => new Promise<void>((_, reject) => (fail = reject)));
	const { signal } = session;
	await eventually(() => expect(fail).toBeDefined());
	await expect(importText(session, 'title\nPier')).rejects.toThrow('closed');
	fail?.(new Error('no room'));
	await expect(closing).rejects.toThrow('no room');
	expect([signal.aborted, session.signal.aborted, session.isOpen]).toEqual([true, false, true]);
	await importText(session, 'title\nPier');
	expect(session.show.rows).toHaveLength(1);
	await session.close();
});

test('two shows asked for at once are opened one after the other: the last stays, and the first is let go of', async () => {
	const opened = vi.spyOn(IDBFactory.prototype, 'open');
	const closed = vi.spyOn(IDBDatabase.prototype, 'close');
	const shelf = await openShelf({ databaseName, showId: undefined });
	const ids = [await shelf.create(), await shelf.create()] as [string, string];
	const { session: first } = shelf;
	const close = first.close.bind(first);
	vi.spyOn(first, 'close').mockImplementation(async () => {
		await new Promise((resolve) => setTimeout(resolve, 50)); // there is much to write
		await close();
	});
	const sessions = new Set([first]);
	const both = ids.map((id) => shelf.open(id).then(() => sessions.add(shelf.session)));
	await Promise.all(both);
	expect(shelf.session.show.id).toBe(ids[1]);
	await shelf.close();
	await eventually(() => expect(closed.mock.calls.length).toBe(opened.mock.calls.length));
	expect([...sessions].map(({ isOpen }) => isOpen)).toEqual([false, false, false]);
});

test('a file that leaves when its show is closed already counts as given all the same', async () => {
	const session = await open();
	addTitled(session, 'Pier');
	let finish: (() => void) | undefined;
	vi.stubGlobal('navigator', {
		canShare: () => true,
		share: () => new Promise<void>((resolve) => (finish = resolve)),
	});
	onTestFinished(() => void vi.unstubAllGlobals());
	const giving = giveShow(session, 'share');
	await session.close();
	finish?.();
	await giving;
	const again = await open();
	onTestFinished(() => again.close());
	expect([again.copies.changes, again.copies.last?.what, (await again.exchanges.all()).length]).toEqual([0, 'show', 1]);
});
