import 'fake-indexeddb/auto';
import { expect, onTestFinished, test, vi } from 'vitest';
import { addPictures, beginsAsPicture, importPictures, isPictureFile } from '../../../src/app/importPictures.ts';
import { openSession } from '../../../src/app/openSession.ts';
import { openShelf } from '../../../src/app/openShelf.ts';
import { Pictures } from '../../../src/app/pictures.svelte.ts';
import { sweepPictures } from '../../../src/app/sweepPictures.ts';
import { rename } from '../../../src/core/commands/rename.ts';
import { typeCells } from '../../../src/core/commands/typeCells.ts';
import { noPicture } from '../../../src/core/imports/saidOfPictures.ts';
import { unusedKept } from '../../../src/storage/pictureStore.ts';
import type { readPictures } from '../../../src/workers/readPictures.ts';
import { eventually } from '../eventually.ts';
import { on } from './edits.ts';

let databases = 0;

/** A shelf of its own. Its pictures are read as their names say: `a 3000x2000.jpg` has the hash of `a`. */
async function opened() {
	const shelf = await openShelf({ databaseName: `import pictures ${databases++}` });
	onTestFinished(() => shelf.close());
	return shelf;
}

const read: typeof readPictures = async (files, signal, onRead) => {
	for (const [place, file] of files.entries()) {
		signal.throwIfAborted();
		const [, sign, width, height] = /^([0-9a-f]) (\d+)x(\d+)/.exec((file as unknown as File).name) ?? [];
		if (sign === undefined) await onRead(file, { problem: 'it is no picture' }, place);
		else {
			const image = { type: 'image/webp', bytes: new ArrayBuffer(8) };
			const pixels = { width: Number(width), height: Number(height) };
			await onRead(file, { value: { hash: sign.repeat(64), pixels, preview: image, small: image } }, place);
		}
	}
};

const files = (...names: string[]) => names.map((name) => new File(['x'], name));
const never = new AbortController().signal;
const none = () => undefined;

test('pictures come in as one step, and are let go a day after no row of any show has them', async () => {
	const shelf = await opened();
	const { session } = shelf;
	const came = await importPictures(session, files('a 3000x2000.jpg', 'b 20x30.jpg', 'notes.jpg'), never, none, read);
	expect(came.unread).toEqual([{ name: 'notes.jpg', problem: 'it is no picture' }]);
	expect(session.show.rows).toEqual([]);
	const { report } = await addPictures(session, came, came.matched);
	expect(report.sentences).toEqual(['2 new prints at the end of the list.', '1 file was not read.']);
	const [first, second] = session.show.rows;
	expect(session.pictures.of(first!)?.pixels).toEqual({ width: 3000, height: 2000 });

	// Typed over, the picture is another's or none; undone, it is back.
	session.do((show, settings) => typeCells(show, [{ id: second!.id, cells: { 'picture file': '' } }], settings, ''));
	expect(session.pictures.of(session.show.rows[1]!)).toBeUndefined();
	await sweepPictures(shelf, 1000);
	session.undo();
	await sweepPictures(shelf, 1000 + unusedKept);
	expect(session.pictures.known.byHash.size).toBe(2);

	session.undo(); // the pictures go as one step
	expect(session.show.rows).toEqual([]);
	await sweepPictures(shelf, 2000 + unusedKept);
	expect(session.pictures.known.byHash.size).toBe(2);
	session.redo();
	expect(session.pictures.of(session.show.rows[0]!)).toBeDefined();
	await sweepPictures(shelf, 3000 + unusedKept);
	session.undo();
	await session.whenSaved();
	await sweepPictures(shelf, 4000 + unusedKept);
	await sweepPictures(shelf, 4000 + 2 * unusedKept);
	expect(session.pictures.known.byHash.size).toBe(2); // redo, over a reload too, brings the rows back
	session.do((show) => rename(show, 'Other', 'Rename show'));
	await session.whenSaved();
	await sweepPictures(shelf, 5000 + 2 * unusedKept);
	await sweepPictures(shelf, 5000 + 3 * unusedKept);
	expect(session.pictures.known.byHash.size).toBe(0);
});

test('of two of one name, that a list may mean, none is let go', async () => {
	const shelf = await opened();
	const { session } = shelf;
	const row = { id: 'r', order: 1, typed: { 'picture file': 'a 3x2.jpg', pixels: '3 x 2' } };
	session.do(() => ({ label: 'Import', rows: [{ after: row }] }));
	await session.whenSaved();
	const keep = async (sign: string) => {
		const image = { type: 'image/webp', bytes: new ArrayBuffer(8) };
		const pixels = { width: 3, height: 2 };
		await session.pictures.keep({ hash: sign.repeat(64), names: ['a 3x2.jpg'], pixels, preview: image, small: image });
		await session.pictures.announce();
	};
	await keep('b');
	await keep('a');
	expect(session.pictures.of(row)?.hash).toBe('b'.repeat(64));
	await sweepPictures(shelf, 1);
	await sweepPictures(shelf, 1 + unusedKept);
	expect(session.pictures.known.byHash.size).toBe(2);
});

test('pictures that rows name and this device lacks are counted once each, until their files come again', async () => {
	const { session } = await opened();
	const hash = 'a'.repeat(64);
	const given = { 'picture file': 'a 3x2.jpg', pixels: '3 x 2' };
	const rows = [
		{ id: 'given', order: 1, typed: given, picture: { hash, file: 'a 3x2.jpg' } },
		{ id: 'copy', order: 2, typed: given, picture: { hash, file: 'a 3x2.jpg' } },
		{ id: 'named', order: 3, typed: { 'picture file': 'b 30x20.jpg', pixels: '30 x 20' } },
		{ id: 'capitals', order: 4, typed: { 'picture file': 'B 30X20.JPG ' } },
		{ id: 'none', order: 5, typed: { title: 'Weir' } },
	];
	const count = () => session.pictures.countNotHere(session.show.rows);
	session.do(() => ({ label: 'Import', rows: rows.map((after) => ({ after })) }));
	expect(count()).toBe(0); // not known yet
	await session.pictures.whenListed();
	expect(count()).toBe(2);
	// By its bytes, whatever it is called now; the list's, by its name.
	await importPictures(session, files('a 3x2 again.jpg'), never, none, read);
	expect(count()).toBe(1);
	await importPictures(session, files('b 30x20.jpg'), never, none, read);
	expect(count()).toBe(0);
});

test('a picture of another show, a deleted one too, stays', async () => {
	const shelf = await opened();
	const came = await importPictures(shelf.session, files('c 30x20.jpg'), never, none, read);
	await addPictures(shelf.session, came, came.matched);
	await shelf.session.whenSaved();
	const first = shelf.session.show.id;
	await shelf.open((await shelf.create())!);
	await shelf.delete(first);
	await sweepPictures(shelf, 1);
	await sweepPictures(shelf, 1 + 2 * unusedKept);
	expect(shelf.session.pictures.known.byHash.size).toBe(1);
});

test('what is said counts the prints that got a picture, none that has gone meanwhile', async () => {
	const { session } = await opened();
	const first = await importPictures(session, files('a 3x2.jpg'), never, none, read);
	const gone = { kind: 'row', id: 'gone', by: 'choice', file: first.matched[0]!.file } as const;
	const { report } = await addPictures(session, first, [gone]);
	expect(report.sentences).toEqual(['No picture was added.']);
});

test('an image that could not be read once is asked for again', async () => {
	const { session } = await opened();
	const { pictures } = session;
	await importPictures(session, files('a 3x2.jpg'), never, none, read);
	const failing = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(() => {
		throw new DOMException('no', 'UnknownError');
	});
	onTestFinished(() => failing.mockRestore());
	const hash = 'a'.repeat(64);
	expect(pictures.addressOfHash(hash)).toBeUndefined();
	await eventually(() => expect(failing).toHaveBeenCalledTimes(1));
	await eventually(() => expect(pictures.addressOfHash(hash)).toMatch(/^blob:/));
});

/** A browser that gives 100 MB, of which each picture that is kept has 3. @param others how much all else has, in MB */
function narrow(others: number, kept: () => number) {
	const estimate = () => Promise.resolve({ usage: (others + 3 * kept()) * 1e6, quota: 100e6 });
	vi.stubGlobal('navigator', { storage: { estimate, persist: () => Promise.resolve(true) } });
	onTestFinished(() => void vi.unstubAllGlobals());
}

test('room that runs short is said before the pictures are added, and they leave some for what is typed', async () => {
	const { session } = await opened();
	const { pictures } = session;
	const kept = new Set<string>();
	const counting = {
		keep: (...picture: Parameters<typeof pictures.keep>) =>
			pictures.keep(...picture).then(() => void kept.add(picture[0].hash)),
		announce: () => pictures.announce(),
	};
	narrow(85, () => kept.size);
	const names = files('a 3x2.jpg', 'b 3x2.jpg', 'c 3x2.jpg', 'a 3x2 again.jpg');
	const came = await importPictures(session, names, never, none, read, counting);
	const short =
		'Room runs short: 9 MB of the 100 MB that this browser gives the app are left. Save a backup, and delete shows that are no longer needed.';
	expect(came).toMatchObject({
		matched: [{ kind: 'new' }, { kind: 'new' }, { kind: 'twice' }],
		unread: [{ name: 'c 3x2.jpg', problem: 'there is no room left on this device' }],
		room: short,
	});
	expect([...pictures.known.byHash.keys()].map(([sign]) => sign)).toEqual(['a', 'b']);
	const { report } = await addPictures(session, came, came.matched);
	expect(report.sentences.at(-1)).toBe(short);
	await session.whenSaved();
	// One that is here already needs no room.
	const again = await importPictures(session, files('a 3x2.jpg'), never, none, read);
	expect([again.unread, again.matched]).toMatchObject([[], [{ kind: 'row', by: 'picture' }]]);
	const refused = await importPictures(session, files('d 3x2.jpg'), never, none, read);
	expect(refused.matched).toEqual([]);
	expect(noPicture(refused.unread, refused.room).sentences).toEqual(['There is no room left on this device.', short]);
});

test('a browser that says nothing of its room and then has none left keeps what came before, and the show', async () => {
	const { session } = await opened();
	const { pictures } = session;
	let kept = 0;
	const full = {
		keep: (...picture: Parameters<typeof pictures.keep>) =>
			++kept === 2 ? Promise.reject(new DOMException('full', 'QuotaExceededError')) : pictures.keep(...picture),
		announce: () => pictures.announce(),
	};
	const came = await importPictures(session, files('a 3x2.jpg', 'b 3x2.jpg', 'c 3x2.jpg'), never, none, read, full);
	expect(came.unread).toEqual([{ name: 'b 3x2.jpg', problem: 'there is no room left on this device' }]);
	await addPictures(session, came, came.matched);
	await session.whenSaved();
	expect(session.show.rows.map((row) => session.pictures.of(row)?.hash[0])).toEqual(['a', 'c']);
	expect(session.saved.state).toBe('saved');
});

test('two tabs that import into one show at once: both sets are there, each picture once', async () => {
	const databaseName = `import pictures ${databases++}`;
	const one = await openSession({ databaseName });
	onTestFinished(() => one.close());
	on(one).rename('Spring');
	await one.whenSaved();
	const two = await openSession({ databaseName, showId: one.show.id });
	onTestFinished(() => two.close());
	const [here, there] = [new Pictures(databaseName), new Pictures(databaseName)];
	onTestFinished(() => (here.close(), there.close()));
	const [mine, theirs] = await Promise.all([
		importPictures(one, files('a 3x2.jpg', 'b 3x2.jpg'), never, none, read, here),
		importPictures(two, files('b 3x2.jpg', 'c 3x2.jpg'), never, none, read, there),
	]);
	const signs = (pictures: Pictures) => [...pictures.known.byHash.keys()].map(([sign]) => sign).toSorted();
	await eventually(() => expect([signs(here), signs(there)]).toEqual(Array(2).fill(['a', 'b', 'c'])));
	// What the other tab has added meanwhile is not added again, though it was new when the files were read.
	await addPictures(one, mine, mine.matched);
	await one.whenSaved();
	await eventually(() => expect(two.show.rows).toHaveLength(2));
	const { report } = await addPictures(two, theirs, theirs.matched);
	expect(report.sentences).toEqual(['1 new print at the end of the list.']);
	await two.whenSaved();
	await eventually(() => expect(one.show.rows).toHaveLength(3));
	for (const { show } of [one, two]) expect(show.rows.map((row) => row.picture?.hash[0])).toEqual(['a', 'b', 'c']);
	// Both at once: neither takes the other's away.
	const [more, others] = await Promise.all([
		importPictures(one, files('d 3x2.jpg'), never, none, read, here),
		importPictures(two, files('e 3x2.jpg'), never, none, read, there),
	]);
	await Promise.all([addPictures(one, more, more.matched), addPictures(two, others, others.matched)]);
	await Promise.all([one.whenSaved(), two.whenSaved()]);
	await eventually(() => {
		for (const { show } of [one, two])
			expect(show.rows.map((row) => row.picture?.hash[0]).toSorted()).toEqual(['a', 'b', 'c', 'd', 'e']);
	});
});

test('left while files are read, nothing of the show has changed', async () => {
	const { session } = await opened();
	const leaving = new AbortController();
	const coming = importPictures(
		session,
		files('a 3x2.jpg', 'b 3x2.jpg'),
		leaving.signal,
		(done) => {
			if (done === 1) leaving.abort();
		},
		read,
	);
	await expect(coming).rejects.toThrow();
	expect(session.show.rows).toEqual([]);
});

test.each([
	['\xff\xd8\xff\xe0', true],
	['\x89PNG\r\n', true],
	['RIFF\x01\x02\x03\x04WEBPVP8 ', true],
	['\0\0\0\x20ftypavif', true],
	['title,shape', false],
	['RIFF,title,number', false],
	['PK\x03\x04', false],
	['', false],
])('bytes that begin with %j may be a picture: %s', async (text, is) => {
	expect(await beginsAsPicture(new Blob([Buffer.from(text, 'latin1')]))).toBe(is);
});

test.each([
	['a.JPG', '', true],
	['a', 'image/png', true],
	['a.svg', '', true], // to say why it is not taken
	['a.csv', 'text/csv', false],
	['a.json', 'application/json', false],
	['a.zip', 'application/zip', false],
])('%s (%s) may be a picture: %s', (name, type, is) => {
	expect(isPictureFile({ name, type })).toBe(is);
});
