import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { flushSync } from 'svelte';
import { beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import { editsRemembered } from '../../../src/app/resultCache.ts';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import type { Edit } from '../../../src/core/show/edit.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { schemaVersion } from '../../../src/storage/schema.ts';
import { openShowStore } from '../../../src/storage/showStore.ts';
import { type Action, action, allColumns, idsAt, importEdit, namer, rowsOfFile } from '../core/show/randomEdits.ts';
import { typeAndAdd } from '../../../src/core/commands/typeAndAdd.ts';
import { on } from './edits.ts';
import { runs } from '../../soak.ts';

const importNames = namer('i');
let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
	vi.restoreAllMocks();
});

/** A session, or one in another tab, that is closed when the test ends. */
async function open(prefix = 'n'): Promise<Session> {
	const session = await openSession({ databaseName, makeId: namer(prefix) });
	// What a test has kept from being written, nobody waits for.
	onTestFinished(() => session.close().catch(() => undefined));
	return session;
}

/** What is on disk. */
async function stored(name = databaseName) {
	const store = openShowStore(name);
	const { show } = await store.openShow(() => {
		throw new Error('nothing is kept');
	});
	store.close();
	return show;
}

/** Does an action through the session, as a screen would. */
function act(session: Session, done: Action): void {
	const { show } = session;
	switch (done.kind) {
		case 'type':
			return void on(session).typeCells(
				idsAt(show, done.rows).map((id) => ({ id, cells: done.cells })),
				'Type',
			);
		case 'add':
			return void on(session).addRows(
				done.rows.map((cells) => ({ cells })),
				done.at,
				'Add',
			);
		case 'remove':
			return void on(session).removeRows(idsAt(show, done.rows));
		case 'duplicate':
			return void on(session).duplicateRows(idsAt(show, done.rows));
		case 'move':
			return void on(session).moveRows(idsAt(show, done.rows), done.to);
		case 'settings':
			return void on(session).changeSettings(done.changes);
		case 'rename':
			return void on(session).rename(done.name);
		case 'import':
			return void on(session).take(importEdit(session.show, rowsOfFile(done.rows), allColumns, importNames));
		case 'replace':
			return void on(session).replaceShow(
				{ name: 'other', settings: { unit: 'cm' }, rows: rowsOfFile(done.rows) },
				'Open',
			);
	}
}

type Step = Action | { readonly kind: 'undo' } | { readonly kind: 'redo' };
const step: fc.Arbitrary<Step> = fc.oneof(
	{ weight: 4, arbitrary: action },
	{ weight: 1, arbitrary: fc.constantFrom<Step>({ kind: 'undo' }, { kind: 'redo' }) },
);

function take(session: Session, done: Step): void {
	if (done.kind === 'undo' || done.kind === 'redo') session[done.kind]();
	else act(session, done);
}

test('what is typed is worked out at once, saved, and there when the app is opened again', async () => {
	const session = await open();
	const [id] = on(session).addRows(
		[{ cells: { title: 'Pier', 'picture width': '456 x 306', mount: '600 x 450' } }],
		0,
		'Add row',
	);
	expect(session.show.rows[0]).toMatchObject({ id, typed: { 'picture width': '456', 'picture height': '306' } });
	expect(session.results[0]?.solved.windowWidth).toBe(4_500_000_000);
	expect(session.bench.steps.length).toBeGreaterThan(0);
	expect(session.saved).toEqual({ state: 'saving' });
	await session.whenSaved();
	expect(session.saved).toEqual({ state: 'saved' });
	expect(await stored()).toEqual(session.show);
	expect((await open()).show).toEqual(session.show);
});

test('a new show is empty, cuts one spare in ten, and has nothing to undo', async () => {
	const session = await open();
	expect(session.show).toMatchObject({ rows: [], settings: { unit: 'mm' } });
	expect(session.settings.sparesPercent).toBe(10);
	expect([session.lastStep, session.nextStep]).toEqual([undefined, undefined]);
	expect(session.undo()).toBeUndefined();
	expect(session.redo()).toBeUndefined();
});

test('undo and redo say what they would do, and hand back what was selected', async () => {
	const session = await open();
	const [id] = on(session).addRows([{ cells: {} }], 0, 'Add row', { before: 'A1', after: 'A2' });
	on(session).typeCells([{ id: id!, cells: { top: '70' } }], 'Type top', { before: { cell: 'B2' }, after: 'B3' });
	on(session).typeCells([{ id: id!, cells: { top: '70' } }], 'Type top'); // no change, no step
	expect([session.lastStep?.label, session.nextStep?.label]).toEqual(['Type top', undefined]);
	expect(session.undo()).toEqual({ cell: 'B2' });
	expect([session.lastStep?.label, session.nextStep?.label]).toEqual(['Add row', 'Type top']);
	expect(session.show.rows[0]?.typed).toEqual({});
	expect(session.redo()).toBe('B3');
	expect(session.undo()).toEqual({ cell: 'B2' });
	expect(session.undo()).toBe('A1');
	expect(session.show.rows).toEqual([]);
	expect(session.redo()).toBe('A2');
	session.undo();
	on(session).rename('Autumn');
	expect(session.nextStep).toBeUndefined();
});

test('an edit of one row works out that row alone; what is remembered is what working out from scratch gives', async () => {
	const session = await open();
	const rows = Array.from({ length: 5 }, (_, n) => ({
		cells: { 'picture width': `${300 + n}`, 'picture height': '200' },
	}));
	const ids = on(session).addRows(rows, 0, 'Add rows');
	const before = session.results;
	on(session).typeCells([{ id: ids[2]!, cells: { top: '90' } }], 'Type top');
	const after = session.results;
	expect(after.map((result, place) => result === before[place])).toEqual([true, true, false, true, true]);
	expect(after).toEqual(session.show.rows.map((row) => judgeRow(row, session.settings)));
	expect(session.bench).toEqual(orderBench(session.show.rows, after, session.settings));
	on(session).changeSettings({ border: '80' });
	expect(session.results).toEqual(
		session.show.rows.map((row) => judgeRow(row, readSettings(session.show.settings).settings)),
	);
	session.undo();
	session.undo();
	expect(session.results).toEqual(before);
});

test('undo of the latest steps works nothing out, and results of rows that left the show long ago are let go of', async () => {
	const session = await open();
	const [id] = on(session).addRows([{ cells: { 'picture width': '300' } }], 0, 'Add row');
	const steps = 3 * editsRemembered;
	const made = Array.from({ length: steps }, (_, step) => {
		on(session).typeCells([{ id: id!, cells: { note: `${step}` } }], 'Type note');
		return session.results[0];
	});
	const isKept = made
		.slice(0, -1)
		.toReversed()
		.map((result) => {
			session.undo();
			expect(session.results[0]).toEqual(result);
			return session.results[0] === result;
		});
	expect(isKept.indexOf(false)).toBeGreaterThanOrEqual(editsRemembered / 2);
	expect(isKept.slice(editsRemembered)).not.toContain(true);
});

test('settings are read again only when they change, and say what they could not read', async () => {
	const session = await open();
	const { settings } = session;
	on(session).addRows([{ cells: {} }], 0, 'Add row');
	on(session).rename('Autumn');
	expect(session.settings).toBe(settings);
	on(session).changeSettings({ border: 'wide' });
	expect(session.settingsProblems).toMatchObject([{ key: 'border' }]);
	expect(session.lastStep?.label).toBe('Change settings');
});

test('what screens show follows every edit', async () => {
	const session = await open();
	const seen: unknown[] = [];
	const stop = $effect.root(() => {
		$effect(() => {
			seen.push([session.show.rows.length, session.results.length, session.saved.state, session.lastStep?.label]);
		});
	});
	onTestFinished(stop);
	flushSync();
	on(session).addRows([{ cells: {} }, { cells: {} }], 0, 'Add rows');
	flushSync();
	await session.whenSaved();
	flushSync();
	expect(seen).toEqual([
		[0, 0, 'saved', undefined],
		[2, 2, 'saving', 'Add rows'],
		[2, 2, 'saved', 'Add rows'],
	]);
});

test('what a form holds as state is stored as plain data', async () => {
	const session = await open();
	const form = $state({
		border: '70',
		sizes: [{ name: 'small', width: '300', height: '240' }],
		cells: { title: 'Pier' },
	});
	on(session).changeSettings({ border: form.border, sizes: form.sizes });
	on(session).addRows([{ cells: form.cells }], 0, 'Add row');
	on(session).take(
		importEdit(session.show, [{ id: 'x', order: 1, typed: form.cells, extra: form.cells }], allColumns, importNames),
	);
	await session.whenSaved();
	form.sizes[0]!.width = '999';
	expect((await stored()).settings).toMatchObject({
		border: '70',
		sizes: [{ name: 'small', width: '300', height: '240' }],
	});
	expect(session.show).toEqual(await stored());
});

test('a paste past the last row is one edit', async () => {
	const session = await open();
	const [first] = on(session).addRows([{ cells: { title: 'a' } }], 0, 'Add row');
	const added = ['x1'];
	const rows = { rows: [{ cells: { title: 'c' } }], at: 1, ids: added };
	session.do((show, settings) => typeAndAdd(show, [{ id: first!, cells: { title: 'b' } }], rows, settings, 'Paste'));
	expect(session.show.rows.map(({ id, typed }) => [id, typed.title])).toEqual([
		[first, 'b'],
		[added[0], 'c'],
	]);
	session.undo();
	expect(session.show.rows.map(({ typed }) => typed.title)).toEqual(['a']);
});

test(
	'after each of any edits, undone and redone, what is on disk is what the session holds',
	() =>
		fc.assert(
			fc.asyncProperty(fc.array(step, { maxLength: 12 }), async (steps) => {
				const name = `steps ${crypto.randomUUID()}`;
				const session = await openSession({ databaseName: name, makeId: namer() });
				for (const done of steps) {
					take(session, done);
					await session.whenSaved();
					expect(await stored(name)).toEqual(session.show);
				}
				await session.close();
			}),
			{ numRuns: runs(12, 200) },
		),
	30_000,
);

test('edits made faster than they are written all arrive, in their order', async () => {
	const session = await open();
	const [id] = on(session).addRows([{ cells: {} }], 0, 'Add row');
	for (let top = 40; top < 90; top++) on(session).typeCells([{ id: id!, cells: { top: `${top}` } }], 'Type top');
	await session.whenSaved();
	expect((await stored()).rows[0]?.typed).toEqual({ top: '89' });
});

/** Lets the storage refuse every edit from now on, with an error of that name. */
function refuse(name: string) {
	return vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
		throw new DOMException('refused', name);
	});
}

test('an edit that cannot be kept is told in one sentence, held, and written with the next', async () => {
	const session = await open();
	const refused = refuse('QuotaExceededError');
	on(session).addRows([{ cells: { title: 'a' } }], 0, 'Add row');
	await expect(session.whenSaved()).rejects.toThrow('no room left');
	expect(session.saved).toMatchObject({ state: 'failed', problem: expect.stringContaining('no room left') as string });
	expect(session.show.rows[0]?.typed.title).toBe('a');
	expect((await stored()).rows).toEqual([]);
	refused.mockRestore();
	on(session).addRows([{ cells: { title: 'b' } }], 1, 'Add row');
	await session.whenSaved();
	expect((await stored()).rows.map(({ typed }) => typed.title)).toEqual(['a', 'b']);
	expect(session.saved).toEqual({ state: 'saved' });
});

test('what could not be kept is not lost when another tab goes on', async () => {
	const [one, other] = [await open('one'), await open('other')];
	const refused = refuse('UnknownError');
	on(one).addRows([{ cells: { title: 'a' } }], 0, 'Add row');
	await expect(one.whenSaved()).rejects.toThrow('UnknownError');
	refused.mockRestore();
	on(other).addRows([{ cells: { title: 'b' } }], 0, 'Add row');
	await other.whenSaved();
	await expect.poll(() => one.show.rows.map(({ typed }) => typed.title).toSorted()).toEqual(['a', 'b']);
	on(one).rename('Autumn');
	await one.whenSaved();
	await expect.poll(() => other.show).toEqual(one.show);
	expect(await stored()).toEqual(one.show);
});

test('two tabs apply each other’s edits, and undo takes back only its own', async () => {
	const [one, other] = [await open('one'), await open('other')];
	const [id] = on(one).addRows([{ cells: { title: 'Pier', top: '70' } }], 0, 'Add row');
	await expect.poll(() => other.show.rows.length).toBe(1);
	expect(other.lastStep !== undefined).toBe(false);
	on(one).typeCells([{ id: id!, cells: { title: 'Quay' } }], 'Type title');
	await expect.poll(() => other.show.rows[0]?.typed.title).toBe('Quay');
	on(other).typeCells([{ id: id!, cells: { top: '80' } }], 'Type top');
	await expect.poll(() => one.show.rows[0]?.typed.top).toBe('80');
	one.undo();
	expect(one.show.rows[0]?.typed).toEqual({ title: 'Pier', top: '80' });
	one.redo();
	expect(one.show.rows[0]?.typed).toEqual({ title: 'Quay', top: '80' });
	await one.whenSaved();
	await expect.poll(() => other.show).toEqual(one.show);
	expect(await stored()).toEqual(one.show);
});

test('redo gives back what undo took away, also where another tab had typed over it', async () => {
	const [one, other] = [await open('one'), await open('other')];
	const [id] = on(one).addRows([{ cells: { title: 'Pier' } }], 0, 'Add row');
	on(one).typeCells([{ id: id!, cells: { title: 'Quay' } }], 'Type title');
	await expect.poll(() => other.show.rows[0]?.typed.title).toBe('Quay');
	on(other).typeCells([{ id: id!, cells: { title: 'Mole' } }], 'Type title');
	await expect.poll(() => one.show.rows[0]?.typed.title).toBe('Mole');
	one.undo();
	expect(one.show.rows[0]?.typed.title).toBe('Pier');
	one.redo();
	expect(one.show.rows[0]?.typed.title).toBe('Mole');
});

test('a row that another tab has deleted is not brought back by undo, nor redo, of what was typed into it here', async () => {
	const [one, other] = [await open('one'), await open('other')];
	const [id] = on(one).addRows([{ cells: { title: 'Pier' } }], 0, 'Add row');
	await expect.poll(() => other.show.rows.length).toBe(1);
	on(one).typeCells([{ id: id!, cells: { title: 'Quay' } }], 'Type title');
	await expect.poll(() => other.show.rows[0]?.typed.title).toBe('Quay');
	on(other).removeRows([id!]);
	await expect.poll(() => one.show.rows.length).toBe(0);
	one.undo();
	expect([one.show.rows, one.lastStep?.label]).toEqual([[], 'Add row']);
	one.redo();
	expect(one.show.rows).toEqual([]);
	other.undo();
	await expect.poll(() => one.show.rows[0]?.typed.title).toBe('Quay');
	expect(await stored()).toEqual(one.show);
});

test('taking in an edit of another tab works out again only what it changed', async () => {
	const [one, other] = [await open('one'), await open('other')];
	const ids = on(one).addRows([{ cells: { title: 'a' } }, { cells: { title: 'b' } }], 0, 'Add rows');
	await expect.poll(() => other.show.rows.length).toBe(2);
	const [before, { settings }] = [other.results, other];
	on(one).typeCells([{ id: ids[1]!, cells: { top: '70' } }], 'Type top');
	await expect.poll(() => other.show.rows[1]?.typed.top).toBe('70');
	expect([other.results[0] === before[0], other.results[1] === before[1]]).toEqual([true, false]);
	expect(other.settings).toBe(settings);
});

test(
	'two tabs that edit at random, at once, end with the same show, which is what is on disk',
	() =>
		fc.assert(
			fc.asyncProperty(fc.array(fc.tuple(fc.boolean(), step, fc.boolean()), { maxLength: 14 }), async (steps) => {
				const name = `two tabs ${crypto.randomUUID()}`;
				const one = await openSession({ databaseName: name, makeId: namer('one') });
				const other = await openSession({ databaseName: name, makeId: namer('other') });
				for (const [isFirst, done, isAwaited] of steps) {
					const session = isFirst ? one : other;
					take(session, done);
					if (isAwaited) await session.whenSaved();
				}
				await Promise.all([one.whenSaved(), other.whenSaved()]);
				const kept = await stored(name);
				await expect.poll(() => one.show, { interval: 2 }).toEqual(kept);
				await expect.poll(() => other.show, { interval: 2 }).toEqual(kept);
				await one.close();
				await other.close();
			}),
			{ numRuns: runs(12, 200) },
		),
	30_000,
);

test('where the browser clears its storage under the open page, the next edit keeps the whole show again', async () => {
	const session = await open();
	on(session).addRows([{ cells: { title: 'a' } }, { cells: { title: 'b' } }], 0, 'Add rows');
	await session.whenSaved();
	const request = indexedDB.open(databaseName);
	const db = await new Promise<IDBDatabase>((resolve) => (request.onsuccess = () => resolve(request.result)));
	const clearing = db.transaction(['shows', 'rows'], 'readwrite');
	clearing.objectStore('shows').clear();
	clearing.objectStore('rows').clear();
	await new Promise((resolve) => (clearing.oncomplete = resolve));
	db.close();
	on(session).rename('Autumn');
	on(session).addRows([{ cells: { title: 'c' } }], 2, 'Add row');
	await session.whenSaved();
	expect(await stored()).toEqual(session.show);
	expect(session.show.rows).toHaveLength(3);
});

test('a tab that a newer version of the app has superseded says so at once', async () => {
	const session = await open();
	const request = indexedDB.open(databaseName, schemaVersion + 1);
	await new Promise((resolve) => (request.onsuccess = resolve));
	onTestFinished(() => request.result.close());
	expect(session.saved).toMatchObject({ state: 'failed', problem: expect.stringContaining('newer version') as string });
	on(session).rename('Autumn');
	await expect(session.whenSaved()).rejects.toThrow('newer version');
	expect(session.show.name).toBe('Autumn');
	await expect(openSession({ databaseName })).rejects.toThrow('newer version');
});

/** A tab that is put to sleep and woken, and an edit of another that it was not told of. */
async function sleepThroughAnEdit() {
	const page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
	vi.stubGlobal('document', page);
	onTestFinished(() => void vi.unstubAllGlobals());
	const session = await open();
	const store = openShowStore(databaseName);
	onTestFinished(() => store.close());
	const edit: Edit = { label: 'elsewhere', rows: [{ after: { id: 'x', order: 1, typed: { title: 'Pier' } } }] };
	await store.apply(session.show.id, edit);
	return { session, wake: () => page.dispatchEvent(new Event('visibilitychange')) };
}

test('a page that comes to the front takes in what it was not told of', async () => {
	const { session, wake } = await sleepThroughAnEdit();
	expect(session.show.rows).toEqual([]);
	wake();
	await expect.poll(() => session.show.rows.length).toBe(1);
	const { show } = session;
	wake(); // and where there is no news, nothing is worked out again
	await new Promise((resolve) => setTimeout(resolve, 20));
	expect(session.show).toBe(show);
});

test('a page that comes to the front tries again what it could not write', async () => {
	const { session, wake } = await sleepThroughAnEdit();
	const refused = refuse('UnknownError');
	on(session).rename('Autumn');
	await expect(session.whenSaved()).rejects.toThrow();
	refused.mockRestore();
	wake();
	await session.whenSaved();
	await expect.poll(() => session.show.rows.length).toBe(1);
	expect(session.show.name).toBe('Autumn');
	expect(await stored()).toEqual(session.show);
});

test('what is selected is held once for all steps that are made with it: it may be each row of a long show', async () => {
	const session = await open();
	const [id] = on(session).addRows([{ cells: { title: 'Pier' } }], 0, 'Add row') as [string];
	const selected = () => ({ active: { id, key: 'note' }, rows: [id] });
	const type = (text: string, after = selected()) =>
		on(session).typeCells([{ id, cells: { note: text } }], 'Type note', { before: selected(), after });
	type('one');
	const { before } = session.lastStep!.focus!;
	type('two');
	const other = { active: { id, key: 'title' }, rows: [id] };
	type('three', other);
	type('four', other);
	const focuses = [];
	for (; session.lastStep?.focus; session.undo()) focuses.push(session.lastStep.focus);
	expect(focuses.map((focus) => focus.before)).toEqual([before, before, before, before]);
	for (const focus of focuses) expect(focus.before).toBe(before);
	expect(focuses.map(({ after }) => after)).toEqual([other, other, before, before]);
	expect(focuses[0]!.after).toBe(focuses[1]!.after);
	expect(focuses[3]!.after).toBe(before);
});
