import 'fake-indexeddb/auto';
import { beforeEach, expect, onTestFinished, test } from 'vitest';
import { backedUpAt, backupOf, changesSinceCopy } from '../../../src/app/copyCount.svelte.ts';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { changeViews } from '../../../src/core/grid/changeViews.ts';
import { rename } from '../../../src/core/commands/rename.ts';
import { openShelfStore } from '../../../src/storage/shelfStore.ts';
import { openShowStore } from '../../../src/storage/showStore.ts';
import { eventually } from '../eventually.ts';
import { on } from './edits.ts';

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
});

async function open(): Promise<Session> {
	const session = await openSession({ databaseName });
	onTestFinished(() => session.close());
	return session;
}

const give = (session: Session) => session.copies.note(session.copies.mark(), 1000);

const sort = (session: Session, way: 'up' | 'down') =>
	session.do((show) => changeViews(show, { ...session.views, sort: { column: 'title', way } }, 'Sort'));

/** How many changes the device says are in no file, read as the list of shows reads it. */
async function countOnDisk(session: Session): Promise<number> {
	await session.whenSaved();
	const store = openShelfStore(databaseName);
	const [record] = await store.list();
	store.close();
	return changesSinceCopy(record!);
}

test('how a show is looked at is no change to back up, undone and done again neither', async () => {
	const session = await open();
	on(session).rename('Spring');
	await give(session);
	const counts = [session.copies.changes];
	const count = (act: () => unknown) => {
		act();
		counts.push(session.copies.changes);
	};
	count(() => sort(session, 'up'));
	count(() => on(session).rename('Autumn'));
	count(() => sort(session, 'down'));
	count(() => session.undo());
	count(() => session.redo());
	count(() => session.undo());
	count(() => session.undo()); // the name
	count(() => session.undo()); // the first sort
	count(() => session.undo()); // what the copy has is taken back
	expect(counts).toEqual([0, 0, 1, 1, 1, 1, 1, 0, 0, 1]);
	expect(await countOnDisk(session)).toBe(1);
	await session.close();
	expect((await open()).copies.changes).toBe(1);
});

test('another tab that is told of an edit counts it as the one that made it does', async () => {
	const [one, two] = [await open(), await open()];
	on(one).rename('Spring');
	sort(one, 'up');
	await eventually(() => expect(two.views.sort?.way).toBe('up'));
	expect([one.copies.changes, two.copies.changes, await countOnDisk(one)]).toEqual([1, 1, 1]);
	const mark = two.copies.mark();
	sort(one, 'down');
	on(one).rename('Summer');
	await eventually(() => expect(two.show.name).toBe('Summer'));
	await two.copies.note(mark, 1000);
	expect([two.copies.changes, await countOnDisk(two)]).toEqual([1, 1]);
});

test('a copy that leaves in one tab is counted in the others at once, and what is done after counts alike', async () => {
	const [one, two] = [await open(), await open()];
	on(two).rename('Spring');
	on(two).rename('Summer');
	await eventually(() => expect(one.show.name).toBe('Summer'));
	await give(one);
	await eventually(() => expect([two.copies.last?.at, two.copies.changes]).toEqual([1000, 0]));
	two.undo(); // what the copy has
	expect(two.copies.changes).toBe(1);
	two.redo();
	expect(two.copies.changes).toBe(0);
	on(two).rename('Autumn');
	await eventually(() => expect(one.show.name).toBe('Autumn'));
	expect([one.copies.changes, two.copies.changes, await countOnDisk(two)]).toEqual([1, 1, 1]);
});

test('a change made in the place of another is one change, and undone none', async () => {
	const session = await open();
	on(session).rename('Spring');
	await give(session);
	const former = on(session).rename('Autumn')!;
	session.doInstead(former, (show) => rename(show, 'Winter', 'Rename show'));
	expect([session.show.name, session.copies.changes, await countOnDisk(session)]).toEqual(['Winter', 1, 1]);
	session.undo();
	expect([session.show.name, session.copies.changes, await countOnDisk(session)]).toEqual(['Spring', 0, 0]);
	session.redo();
	expect([session.show.name, session.copies.changes]).toEqual(['Winter', 1]);
	await give(session);
	session.doInstead(session.lastStep!, (show) => rename(show, 'Summer', 'Rename show'));
	expect([session.show.name, session.copies.changes], 'the copy has what was replaced').toEqual(['Summer', 1]);
});

test('a list of rows that an older app noted is no backup: not of the show that is open, on the shelf or when it is lost', async () => {
	const first = await open();
	on(first).rename('Spring');
	await first.whenSaved();
	const older = openShowStore(databaseName);
	await older.keepCopied(first.show.id, { at: 1000, revision: first.revision, what: 'rows' });
	older.close();
	await first.close();
	const again = await open();
	expect([again.copies.last, again.copies.changes, await countOnDisk(again)]).toEqual([undefined, 1, 1]);
	const shelf = openShelfStore(databaseName);
	const [record] = await shelf.list();
	shelf.close();
	expect(record!.copied?.at).toBe(1000);
	expect([backupOf(record!), backedUpAt(record!)]).toEqual([undefined, {}]);
});
