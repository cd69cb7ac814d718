import 'fake-indexeddb/auto';
import { afterAll, beforeEach, describe, expect, onTestFinished, test, vi } from 'vitest';
import type { ColumnName } from '../../../src/core/show/columns.ts';
import type { Edit } from '../../../src/core/show/edit.ts';
import type { Show } from '../../../src/core/show/show.ts';

interface Wall {
	readonly name: string;
	readonly wide: string;
}

// Test files of a worker share their modules: this one has its own, and leaves none behind.
vi.resetModules();
afterAll(() => {
	vi.doUnmock('../../../src/core/show/parts.ts');
	vi.doUnmock('../../../src/core/show/columns.ts');
	vi.resetModules();
});

/** What a later version may add to a show, each in the one place where the parts are named. */
vi.doMock(import('../../../src/core/show/parts.ts'), async (importOriginal) => {
	const original = await importOriginal();
	const { keyedList, replaceItem } = await import('../../../src/core/show/keyedList.ts');
	const { recordByKey } = await import('../../../src/core/show/recordByKey.ts');
	const { singleValue } = await import('../../../src/core/show/singleValue.ts');
	const walls = { keyOf: ({ name }: Wall) => [name], merge: replaceItem<Wall> };
	const form = {
		...{ isToBackUp: true, left: () => ({}) },
		...{ write: (value: unknown) => value, read: (value: unknown) => ({ value }) },
	};
	const later = {
		walls: {
			...keyedList(walls),
			...{ ...form, nothing: [], isInEvery: false, apart: walls },
			left: (diffs: readonly unknown[]) => ({ done: [`${diffs.length} walls measured`] }),
		},
		lighting: { ...recordByKey(), ...form, nothing: {}, isInEvery: false, apart: undefined },
		opening: { ...singleValue<unknown>(), ...form, nothing: undefined, isInEvery: false, apart: undefined },
	};
	return { ...original, parts: { ...original.parts, ...later } };
});

/** And to a row: a column. */
vi.doMock(import('../../../src/core/show/columns.ts'), async (importOriginal) => {
	const original = await importOriginal();
	const list = [...original.columns, { name: 'weave', kind: 'text' } as const];
	return {
		...original,
		columns: list as unknown as typeof original.columns,
		...original.columnsIn(list),
	} as unknown as typeof original;
});

const { isSameShow } = await import('../../../src/app/backupStandings.ts');
const { openSession } = await import('../../../src/app/openSession.ts');
const { orderBench } = await import('../../../src/core/bench/orderBench.ts');
const { chooseMerge } = await import('../../../src/core/merge/choices.ts');
const { mergeEdit } = await import('../../../src/core/merge/mergeEdit.ts');
const { mergeRows } = await import('../../../src/core/merge/mergeRows.ts');
const { judgeRow } = await import('../../../src/core/findings/judgeRow.ts');
const { changeSettings } = await import('../../../src/core/commands/changeSettings.ts');
const { columns, isColumnName } = await import('../../../src/core/show/columns.ts');
const { duplicateRows } = await import('../../../src/core/commands/duplicateRows.ts');
const { apply, compose, difference, invert, isEmpty, rebase } = await import('../../../src/core/show/edit.ts');
const { moveRows } = await import('../../../src/core/commands/moveRows.ts');
const { replaceShow } = await import('../../../src/core/commands/replaceShow.ts');
const { readSettings } = await import('../../../src/core/settings/readSettings.ts');
const { leftOfShow } = await import('../../../src/core/imports/settingsOfShow.ts');
const { keepObjects } = await import('../../../src/core/show/keepObjects.ts');
const { typeCells } = await import('../../../src/core/commands/typeCells.ts');
const { readRows, writeRows } = await import('../../../src/files/csv.ts');
const { readBackup, writeBackup } = await import('../../../src/files/backupFile.ts');
const { readShowFile, writeShowFile } = await import('../../../src/files/showFile.ts');
const { openShelfStore } = await import('../../../src/storage/shelfStore.ts');
const { openShowStore } = await import('../../../src/storage/showStore.ts');

const weave = 'weave' as ColumnName;

/** A show of a later version; its rows have a field that this one knows nothing of. */
const laterShow = (more: object) =>
	({ id: 'salt', name: 'Salt', settings: { border: '70' }, ...more }) as unknown as Show;
const rowOf = (id: string, order: number, typed: object, hung: object = { by: 'Ada', at: [1, 2] }) => ({
	...{ id, order, hung },
	typed: { title: id, ...typed },
});
const north: Wall = { name: 'north', wide: '4 m' };
const south: Wall = { name: 'south', wide: '3 m' };
const rows = [rowOf('a', 1, { weave: 'linen' }), rowOf('b', 2, {})];
const older = laterShow({ rows, walls: [north], lighting: { north: '50 lux' } });
const newer = laterShow({
	rows: [rowOf('a', 1, { weave: 'twill', top: '70' }), rowOf('b', 2, {}, { by: 'Bo' }), rowOf('c', 3, { weave: 'x' })],
	...{ walls: [{ ...north, wide: '5 m' }, south], lighting: { north: '40 lux', south: '50 lux' }, opening: 'May' },
});
const bare = laterShow({ rows: [] });
const shows = [older, newer, bare];
const pairs = shows.flatMap((from) => shows.map((to) => [from, to] as const));
const step = (from: Show, to: Show) => difference(from, to, 'step');

/** As a show has it that came from a file or the device: without what is nothing. */
const plain = (show: Show) => {
	const read = readShowFile(writeShowFile(show));
	if ('problem' in read) throw new Error(read.problem);
	return { id: show.id, ...read.value };
};

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
});
const openStore = () => {
	const store = openShowStore(databaseName);
	onTestFinished(() => store.close());
	return store;
};

test('a part and a column, each added in one place, are there', () => {
	expect(isColumnName('weave')).toBe(true);
	expect(columns.at(-1)).toEqual({ name: 'weave', kind: 'text' });
	expect(Object.keys(step(older, newer))).toEqual(expect.arrayContaining(['walls', 'lighting', 'opening']));
});

describe('in edits', () => {
	test('they are done, undone and redone', () => {
		for (const [from, to] of pairs) {
			const edit = step(from, to);
			const done = apply(from, edit);
			expect(plain(done)).toEqual(to);
			expect(plain(apply(done, invert(edit)))).toEqual(from);
			expect(plain(apply(apply(done, invert(edit)), edit))).toEqual(to);
			expect(isEmpty(edit)).toBe(from === to);
		}
	});

	test('two edits are one, and undone at once', () => {
		for (const [from, between] of pairs)
			for (const to of shows) {
				const both = compose(step(from, between), step(between, to));
				expect(plain(apply(from, both))).toEqual(to);
				expect(plain(apply(apply(from, both), invert(both)))).toEqual(from);
			}
	});

	test('one that is rebased keeps what another tab has done, and is undone to it', () => {
		const theirs = laterShow({
			rows: [rowOf('a', 1, { weave: 'linen', side: '65' }, { by: 'Ada', at: [1, 2], note: 'low' }), rows[1]],
			walls: [
				{ ...north, wide: '4.2 m' },
				{ name: 'west', wide: '2 m' },
			],
			...{ lighting: { north: '45 lux', west: '9 lux' }, opening: 'June' },
		});
		const mine = rebase(step(older, newer), theirs);
		const both = apply(theirs, mine);
		expect(both).toEqual(
			laterShow({
				rows: [
					rowOf('a', 1, { weave: 'twill', side: '65', top: '70' }, { by: 'Ada', at: [1, 2], note: 'low' }),
					...newer.rows.slice(1),
				],
				walls: [{ ...north, wide: '5 m' }, { name: 'west', wide: '2 m' }, south],
				lighting: { north: '40 lux', south: '50 lux', west: '9 lux' },
				opening: 'May',
			}),
		);
		expect(apply(both, invert(mine))).toEqual(theirs);
	});

	test('read again, what is the same stays the same objects', () => {
		const read = structuredClone(newer);
		const taken = keepObjects(newer, read) as unknown as Record<string, unknown>;
		for (const [name, value] of Object.entries(newer)) expect(taken[name]).toBe(value);
		expect(keepObjects(older, read)).toEqual(newer);
	});
});

describe('what a row holds that nobody here knows stays with it', () => {
	const { settings } = readSettings(older.settings);
	const type = { id: 'a', cells: { top: '70', [weave]: 'twill' } };
	test.each<[string, Edit]>([
		['typed into', typeCells(older, [type], settings, 'type')],
		['moved', moveRows(older, ['a'], 2, 'move')],
		['copied', duplicateRows(older, ['a', 'b'], ['a2', 'b2'], 'copy')],
		['given another unit', changeSettings(apply(older, typeCells(older, [type], settings, '')), { unit: 'in' }, '')],
	])('%s', (_, edit) => {
		expect(edit.rows.length).toBeGreaterThan(0);
		for (const row of apply(older, edit).rows) expect(row).toMatchObject({ hung: { by: 'Ada', at: [1, 2] } });
	});

	test('merged with what another tab has made of the row', () => {
		const [before] = older.rows;
		const edit = typeCells(older, [type], settings, 'type');
		const theirs = { ...older, rows: [{ ...before!, extra: { lab: '7' }, hung: { by: 'Bo' } }, older.rows[1]!] };
		expect(apply(theirs, edit).rows[0]).toEqual({
			...rowOf('a', 1, { weave: 'twill', top: '70' }, { by: 'Bo' }),
			extra: { lab: '7' },
		});
	});
});

test('a file of rows that is merged changes the column, and leaves parts and fields alone', () => {
	const { settings } = readSettings(older.settings);
	const there = { rows: [rowOf('a', 1, { weave: 'twill' }, {})] as unknown as Show['rows'], columns: [weave] };
	const merge = mergeRows(older.rows, there, [], settings, () => 'new');
	const edit = mergeEdit(older.rows, merge, chooseMerge(merge, 'there'), settings, 'import');
	expect(apply(older, edit)).toEqual({ ...older, rows: [rowOf('a', 1, { weave: 'twill' }), rows[1]] });
});

test('of a show of which only the prints are compared, it is said that the part differs', () => {
	expect(leftOfShow(older, newer)).toEqual([expect.stringContaining('2 walls measured')]);
	expect(leftOfShow(older, older)).toEqual([]);
});

test('a list of rows has the column', () => {
	const { settings } = readSettings({});
	const results = newer.rows.map((row) => judgeRow(row, settings));
	const bench = orderBench(newer.rows, results, settings);
	const text = writeRows({ rows: newer.rows, results, settings, bench }, { lineEnd: '\n', hasIds: true });
	const read = readRows(text, settings, () => 'new');
	expect('rows' in read && read.rows.map(({ typed }) => typed[weave])).toEqual(['twill', undefined, 'x']);
});

test('a show file and a backup give all of it back', () => {
	for (const show of shows) {
		expect(plain(show)).toEqual(show);
		expect(readBackup(writeBackup([{ show, isArchived: false }]))).toEqual({ value: [{ show, isArchived: false }] });
	}
	expect(isSameShow(older, plain(older))).toBe(true);
	expect(isSameShow(older, { ...older, walls: [south] } as unknown as Show)).toBe(false);
});

describe('on the device', () => {
	test('all of it is kept, with every edit and its undoing', async () => {
		const store = openStore();
		await store.openShow(() => older);
		for (const [from, to] of pairs) {
			await store.keep(from);
			expect((await store.read('salt')).show).toEqual(from);
			await store.apply('salt', step(from, to));
			expect((await store.read('salt')).show).toEqual(to);
			await store.apply('salt', invert(step(from, to)));
			expect((await store.read('salt')).show).toEqual(from);
		}
	});

	test('of two tabs that change the same part neither loses anything', async () => {
		const [one, other] = [openStore(), openStore()];
		await one.openShow(() => older);
		const west: Wall = { name: 'west', wide: '2 m' };
		await one.apply('salt', step(older, newer));
		await other.apply('salt', step(older, { ...older, walls: [north, west], lighting: {} } as unknown as Show));
		const { show } = await one.read('salt');
		expect(show).toMatchObject({ lighting: { south: '50 lux' }, opening: 'May' });
		expect((show as unknown as { walls: Wall[] }).walls).toEqual([{ ...north, wide: '5 m' }, south, west]);
	});

	test('a show that is forgotten leaves nothing of it', async () => {
		const shelf = openShelfStore(databaseName);
		onTestFinished(() => shelf.close());
		await shelf.add([newer]);
		expect(await shelf.read('salt')).toEqual(newer);
		await shelf.mark('salt', { deletedAt: 1 });
		await shelf.forget(2);
		await shelf.add([bare]);
		expect(await shelf.read('salt')).toEqual(bare);
	});

	test('a session undoes, redoes and keeps it', async () => {
		const open = async () => {
			const session = await openSession({ databaseName, makeId: () => 'new' });
			onTestFinished(() => session.close());
			return session;
		};
		const session = await open();
		const parted = ({ id: _, ...others }: Show) => others;
		const put = (next: Show, label: string) => session.do((show) => replaceShow(show, next, session.makeId, label));
		put(older, 'Open older');
		put(newer, 'Open newer');
		expect(parted(session.show)).toEqual(parted(newer));
		session.undo();
		expect(parted(plain(session.show))).toEqual(parted(older));
		session.redo();
		await session.whenSaved();
		expect(parted((await open()).show)).toEqual(parted(newer));
	});
});
