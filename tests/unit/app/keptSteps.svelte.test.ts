import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { openDB } from 'idb';
import { beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { changeViews } from '../../../src/core/grid/changeViews.ts';
import { openShelfStore } from '../../../src/storage/shelfStore.ts';
import { mostSteps } from '../../../src/storage/stepStore.ts';
import { action, editOf } from '../core/show/randomEdits.ts';
import { on } from './edits.ts';
import { runs } from '../../soak.ts';

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
	vi.restoreAllMocks();
});

async function open(): Promise<Session> {
	const session = await openSession({ databaseName });
	onTestFinished(() => session.close());
	return session;
}

/** Closes the session, and opens the show again. */
async function openAnew(session: Session): Promise<Session> {
	await session.close();
	return open();
}

const names = (session: Session) => [session.show.name, session.lastStep?.label, session.nextStep?.label];
const withDatabase = async <Result>(work: (db: Awaited<ReturnType<typeof openDB>>) => Promise<Result>) => {
	const db = await openDB(databaseName);
	try {
		return await work(db);
	} finally {
		db.close();
	}
};
const keys = () => withDatabase((db) => db.getAllKeys('steps'));

test('after the show is opened again, undo and redo are there and do what they would have done', async () => {
	let session = await open();
	for (const name of ['Spring', 'Summer', 'Autumn']) on(session).rename(name);
	on(session).changeSettings({ border: '70' }, 'Change border');
	session.undo();
	session = await openAnew(session);
	expect(names(session)).toEqual(['Autumn', 'Rename show', 'Change border']);
	session.redo();
	expect(session.show.settings['border']).toBe('70');
	session.undo();
	session.undo();
	session = await openAnew(session);
	expect(session.show.name).toBe('Summer');
	session.undo();
	session.redo();
	session.redo();
	session = await openAnew(session);
	expect(names(session)).toEqual(['Autumn', 'Rename show', 'Change border']);
	on(session).rename('Winter');
	session = await openAnew(session);
	expect(names(session)).toEqual(['Winter', 'Rename show', undefined]);
	for (let step = 0; step < 4; step++) session.undo();
	expect(session.show.name).toBe('New show');
	expect(session.lastStep).toBeUndefined();
});

test('a step of very many rows is read by itself, those around it at once; all of them are undone', async () => {
	let session = await open();
	on(session).rename('Spring');
	on(session).rename('Summer');
	on(session).addRows(
		Array.from({ length: 1200 }, (_, place) => ({ cells: { title: `Pier ${place}` } })),
		0,
		'Import',
	);
	on(session).rename('Autumn');
	await session.close();
	const read = vi.spyOn(IDBObjectStore.prototype, 'getAll');
	session = await open();
	const ofSteps = read.mock.results.filter((_, call) => (read.mock.contexts[call] as IDBObjectStore).name === 'steps');
	expect(ofSteps.map(({ value }) => (value as IDBRequest<unknown[]>).result.length)).toEqual([2, 1, 1]);
	expect(session.lastStep?.label).toBe('Rename show');
	for (const left of [1200, 0, 0, 0]) {
		session.undo();
		expect(session.show.rows).toHaveLength(left);
	}
	expect(session.lastStep).toBeUndefined();
});

test('whatever is done, undone and done again between openings, all of it can be undone to the start', () =>
	fc.assert(
		fc.asyncProperty(
			fc.array(
				fc.oneof(
					{ weight: 4, arbitrary: action },
					fc.constantFrom('undo' as const, 'redo' as const, 'open again' as const),
				),
				{ maxLength: 14 },
			),
			async (acts) => {
				databaseName = crypto.randomUUID();
				let session = await openSession({ databaseName });
				const start = session.show;
				for (const act of acts) {
					if (act === 'open again') {
						await session.close();
						session = await openSession({ databaseName });
					} else if (act === 'undo') session.undo();
					else if (act === 'redo') session.redo();
					else session.do((show) => editOf(show, act, session.makeId));
				}
				await session.close();
				session = await openSession({ databaseName });
				const end = session.show;
				const undone: string[] = [];
				for (; session.lastStep; session.undo()) undone.push(session.lastStep.label);
				expect(session.show).toEqual(start);
				for (const _ of undone) session.redo();
				expect(session.show).toEqual(end);
				await session.close();
			},
		),
		{ numRuns: runs(12, 25) },
	));

test(`the last ${mostSteps} are kept, and the steps of a show go with it`, async () => {
	let session = await open();
	for (let step = 1; step <= mostSteps + 5; step++) on(session).rename(`Show ${step}`);
	await session.whenSaved();
	expect(await keys()).toHaveLength(mostSteps);
	session = await openAnew(session);
	while (session.lastStep) session.undo();
	expect(session.show.name).toBe('Show 5');
	const { id } = session.show;
	await session.close();
	const store = openShelfStore(databaseName);
	await store.mark(id, { deletedAt: 1 });
	await store.forget(2);
	store.close();
	expect(await keys()).toEqual([]);
});

test(`of those undone too the last ${mostSteps} are kept, and none twice after much to and fro`, async () => {
	let session = await open();
	const many = 2 * mostSteps + 5;
	for (let step = 1; step <= many; step++) on(session).rename(`Show ${step}`);
	for (let step = 1; step <= mostSteps + 5; step++) session.undo();
	await session.whenSaved();
	expect(await keys()).toHaveLength(mostSteps);
	session = await openAnew(session);
	expect(names(session)).toEqual([`Show ${mostSteps}`, undefined, 'Rename show']);
	while (session.nextStep) session.redo();
	expect(session.show.name).toBe(`Show ${many - 5}`);
	// Each new name ends what was undone before it; the steps before them are where they were.
	for (let turn = 0; turn < many; turn++) {
		on(session).rename(`Turn ${turn}`);
		session.undo();
	}
	while (session.lastStep) session.undo();
	session = await openAnew(session);
	expect(names(session)).toEqual([`Show ${mostSteps}`, undefined, 'Rename show']);
});

test.each<[what: string, record: unknown]>([
	['a text', 'nothing of ours'],
	['an edit of nothing', { revision: 3, edit: { label: 'Odd', rows: [{}] } }],
	['an edit without a revision', { edit: { label: 'Odd', rows: [] } }],
])('a damaged record of steps is dropped and harms nothing: %s', async (_, record) => {
	let session = await open();
	on(session).rename('Spring');
	on(session).rename('Summer');
	await session.whenSaved();
	const [first] = await keys();
	await session.close();
	await withDatabase((db) => db.put('steps', record, first));
	await withDatabase((db) => db.put('steps', record, [session.show.id, 'foreign']));
	session = await open();
	expect(names(session)).toEqual(['Summer', 'Rename show', undefined]);
	session.undo();
	expect(names(session)).toEqual(['Spring', undefined, 'Rename show']);
	await session.whenSaved();
	expect(await keys()).toHaveLength(1);
	expect(await withDatabase((db) => db.count('putAside'))).toBe(0);
});

test('steps of two tabs are there together, and each tab goes on undoing its own', async () => {
	const [one, other] = [await open(), await open()];
	on(one).rename('Spring');
	await one.whenSaved();
	await expect.poll(() => other.show.name).toBe('Spring');
	on(other).changeSettings({ border: '70' }, 'Change border');
	await other.whenSaved();
	await expect.poll(() => one.show.settings['border']).toBe('70');
	const third = await open();
	expect(names(third)).toEqual(['Spring', 'Change border', undefined]);
	third.undo(); // the other tab's
	await third.whenSaved();
	await expect.poll(() => other.show.settings['border']).toBeUndefined();
	other.undo(); // undone already
	one.undo();
	await Promise.all([one.whenSaved(), other.whenSaved()]);
	expect(one.show.name).toBe('New show');
	expect((await open()).show).toMatchObject({ name: 'New show', settings: { unit: 'mm' } });
});

test('where there is no room for steps they are forgotten, and what was typed is saved', async () => {
	let session = await open();
	on(session).rename('Spring');
	await session.whenSaved();
	// oxlint-disable-next-line typescript/unbound-method -- it is called with its store below
	const { put } = IDBObjectStore.prototype;
	vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...args) {
		if (this.name === 'steps') throw new DOMException('no room', 'QuotaExceededError');
		return put.apply(this, args);
	});
	on(session).rename('Summer');
	await session.whenSaved();
	session.undo(); // what the tab holds can still be undone
	await session.whenSaved();
	expect(await keys()).toEqual([]);
	session = await openAnew(session);
	expect(names(session)).toEqual(['Spring', undefined, undefined]);
});

test('what is undone after the show is opened again counts as what it is: towards the last copy, or away from it', async () => {
	let session = await open();
	on(session).rename('Spring');
	on(session).rename('Summer');
	await session.copies.note(session.copies.mark(), 1000);
	session.do((show) => changeViews(show, { ...session.views, sort: { column: 'title', way: 'up' } }, 'Sort'));
	on(session).rename('Autumn');
	session.undo();
	session = await openAnew(session);
	const counts = [session.copies.changes];
	for (const act of ['redo', 'undo', 'undo', 'undo', 'redo'] as const) {
		session[act]();
		counts.push(session.copies.changes);
	}
	// Autumn again, back, the sort, then Summer, which the copy has; and Summer again.
	expect(counts).toEqual([0, 1, 0, 0, 1, 0]);
});
