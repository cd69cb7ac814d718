import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { beforeEach, expect, onTestFinished, test } from 'vitest';
import { Packing } from '../../../src/app/packing.svelte.ts';
import { writePutAside } from '../../../src/files/putAsideFile.ts';
import { PutAside } from '../../../src/app/putAside.svelte.ts';
import { openShelf } from '../../../src/app/openShelf.ts';
import type { Shelf } from '../../../src/app/shelf.svelte.ts';
import { tickCuts } from '../../../src/core/bench/tickCuts.ts';
import type { CutTick } from '../../../src/core/show/tick.ts';
import { mm } from '../../../src/core/length/length.ts';
import type { CutSheet } from '../../../src/core/show/cutSheet.ts';
import { plannedBoard } from '../../../src/core/sheets/plannedSheets.ts';
import { apply } from '../../../src/core/show/edit.ts';
import type { Show } from '../../../src/core/show/show.ts';
import { openPlanStore } from '../../../src/storage/planStore.ts';
import { schemaVersion } from '../../../src/storage/schema.ts';
import { openShelfStore } from '../../../src/storage/shelfStore.ts';
import { openShowStore } from '../../../src/storage/showStore.ts';
import { jobsOfShow, plannedSheet, plansOf, showOf } from '../core/sheets/sheetsOf.ts';
import { on } from './edits.ts';

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
});

/** A show with two prints, a window cut in the first and a sheet started; another show beside it. */
function shows(): { readonly damaged: Show; readonly other: Show; readonly ticks: readonly CutTick[] } {
	const plain: Show = { ...showOf(2), id: 'damaged', name: 'Damaged' };
	const ticks = (['left', 'top'] as const).map((side): CutTick => {
		const cut = { border: mm(60), width: mm(600), height: mm(450) };
		return { row: 'r1', copy: 1, part: 'mount', side, ...cut };
	});
	const ticked = apply(plain, tickCuts(plain, ticks, true, 'Tick'));
	const damaged = { ...ticked, cutSheets: [plannedSheet(plain)] };
	return { damaged, other: { ...damaged, id: 'other', name: 'Other' }, ticks };
}

/** What is changed behind the app's back. */
type Spoil = (
	db: Awaited<ReturnType<typeof openDB>>,
	kept: { readonly tick: CutTick; readonly sheet: CutSheet },
) => unknown;

interface Fault {
	readonly what: string;
	readonly spoil: Spoil;
	/** What is said to be wrong, of each record that is put aside. */
	readonly problems: readonly RegExp[];
	/** How much of the show is left, where it is not all. */
	readonly left?: Partial<Record<'rows' | 'ticks' | 'sheets', number>>;
	/** Whether the show opens at all, by its id. */
	readonly isGone?: boolean;
}

const tickKeyOf = ({ row, copy, part, side }: CutTick) => ['damaged', row, copy, part, side];

const inRecord =
	(changes: Readonly<Record<string, unknown>>, ...without: readonly string[]): Spoil =>
	async (db) => {
		const record = new Map(Object.entries({ ...((await db.get('shows', 'damaged')) as object), ...changes }));
		for (const name of without) record.delete(name);
		return db.put('shows', Object.fromEntries(record));
	};
const asRow =
	(value: unknown): Spoil =>
	(db) =>
		db.put('rows', value, ['damaged', 'r1']);
const inRow =
	(changes: Readonly<Record<string, unknown>>, ...without: readonly string[]): Spoil =>
	async (db) => {
		const row = new Map(Object.entries({ ...((await db.get('rows', ['damaged', 'r1'])) as object), ...changes }));
		for (const name of without) row.delete(name);
		return db.put('rows', Object.fromEntries(row), ['damaged', 'r1']);
	};
const inTick =
	(changes: Readonly<Record<string, unknown>>): Spoil =>
	(db, { tick }) =>
		db.put('ticks', { ...tick, ...changes }, tickKeyOf(tick));
const inSheet =
	(changes: Readonly<Record<string, unknown>>): Spoil =>
	(db, { sheet }) =>
		inRecord({ cutSheets: [{ ...sheet, ...changes }] })(db, { sheet } as Parameters<Spoil>[1]);
const besides =
	(store: string, key: IDBValidKey, value: unknown): Spoil =>
	(db) =>
		db.put(store, value, key);

const oneRow = { left: { rows: 1 } };
const noSheet = { left: { sheets: 0 } };

const faults: readonly Fault[] = [
	// Rows
	{ what: 'a row is a number', spoil: asRow(7), problems: [/it is not a record/], ...oneRow },
	{ what: 'a row is a text', spoil: asRow('Low water'), problems: [/it is not a record/], ...oneRow },
	{ what: 'a row is nothing', spoil: asRow(null), problems: [/it is not a record/], ...oneRow },
	{ what: 'a row is a list', spoil: asRow([{ id: 'r1' }]), problems: [/it is not a record/], ...oneRow },
	{ what: 'a row is empty', spoil: asRow({}), problems: [/id is not a text/], ...oneRow },
	{ what: 'a row has no id', spoil: inRow({}, 'id'), problems: [/id is not a text/], ...oneRow },
	{
		what: 'a row has the id of another',
		spoil: inRow({ id: 'r2' }),
		problems: [/under the key of another/],
		...oneRow,
	},
	{ what: 'a row has no order', spoil: inRow({}, 'order'), problems: [/order is missing/] },
	{
		what: 'a row has an order in words',
		spoil: inRow({ order: 'last' }),
		problems: [/order is not a number/],
		...oneRow,
	},
	{
		what: 'a row has no number for its order',
		spoil: inRow({ order: NaN }),
		problems: [/order is not a number/],
		...oneRow,
	},
	{ what: 'a row has nothing typed', spoil: inRow({}, 'typed'), problems: [/typed is missing/] },
	{ what: 'what is typed is a list', spoil: inRow({ typed: ['70'] }), problems: [/typed is not a record/], ...oneRow },
	{
		what: 'a cell is a number',
		spoil: inRow({ typed: { title: 7 } }),
		problems: [/typed\["title"\] is not a text/],
		...oneRow,
	},
	{
		what: 'a cell is a record',
		spoil: inRow({ typed: { side: {} } }),
		problems: [/typed\["side"\] is not a text/],
		...oneRow,
	},
	{
		what: 'a cell has a unit of no kind',
		spoil: inRow({ units: { side: 'ell' } }),
		problems: [/the unit “ell”/],
		...oneRow,
	},
	{
		what: 'other columns are a text',
		spoil: inRow({ extra: 'lab 7' }),
		problems: [/extra is not a record/],
		...oneRow,
	},
	{ what: 'a row holds itself', spoil: inRow(roundAndRound()), problems: [/lists in lists/], ...oneRow },
	{
		what: 'a row under a key with too much in it',
		spoil: besides('rows', ['damaged', 'r1', 1], { id: 'r1', order: 9, typed: {} }),
		problems: [/key of another/],
	},
	{ what: 'a row under a key of no show', spoil: besides('rows', 7, { id: 'r1' }), problems: [] },
	// Ticks
	{
		what: 'a tick is a text',
		spoil: (db, { tick }) => db.put('ticks', 'cut', tickKeyOf(tick)),
		problems: [/row is not a text/],
		left: { ticks: -1 },
	},
	{
		what: 'a tick is nothing',
		spoil: (db, { tick }) => db.put('ticks', null, tickKeyOf(tick)),
		problems: [/no known form/],
		left: { ticks: -1 },
	},
	{
		what: 'a tick has no border',
		spoil: inTick({ border: undefined }),
		problems: [/border is not a length/],
		left: { ticks: -1 },
	},
	{
		what: 'a tick has a border in words',
		spoil: inTick({ border: '70 mm' }),
		problems: [/border is not a length/],
		left: { ticks: -1 },
	},
	{
		what: 'a tick is of no side',
		spoil: inTick({ side: 'middle' }),
		problems: [/side is no side/],
		left: { ticks: -1 },
	},
	{
		what: 'a tick is of half a copy',
		spoil: inTick({ copy: 0.5 }),
		problems: [/copy is not a whole number/],
		left: { ticks: -1 },
	},
	{
		what: 'a tick is of another row than its key',
		spoil: inTick({ row: 'r9' }),
		problems: [/key of another/],
		left: { ticks: -1 },
	},
	{
		what: 'a tick under the key of a spoilt board',
		spoil: (db, { tick }) => db.put('ticks', { ...tick, side: 'spoilt' }, tickKeyOf(tick)),
		problems: [/times is not a whole number/],
		left: { ticks: -1 },
	},
	// Cut sheets, which lie in the show's record
	{
		what: 'the cut sheets are a text',
		spoil: inRecord({ cutSheets: 'two' }),
		problems: [/cutSheets has no known form/],
		...noSheet,
	},
	{
		what: 'the cut sheets are nothing',
		spoil: inRecord({ cutSheets: null }),
		problems: [/cutSheets has no known form/],
		...noSheet,
	},
	{
		what: 'a cut sheet is nothing',
		spoil: inRecord({ cutSheets: [null] }),
		problems: [/cutSheets has no known form/],
		...noSheet,
	},
	{
		what: 'a cut sheet has no stock',
		spoil: inSheet({ stock: undefined }),
		problems: [/cutSheets has no known form/],
		...noSheet,
	},
	{
		what: 'a cut sheet names a cut that is not there',
		spoil: inSheet({ made: [99] }),
		problems: [/names a cut that is not there/],
		...noSheet,
	},
	{
		what: 'a blank of a cut sheet has no width',
		spoil: inSheet({ blanks: [{ row: 1, copy: 1, part: 'mount' }] }),
		problems: [/is not a length/],
		...noSheet,
	},
	{
		what: 'a cut sheet is there twice',
		spoil: (db, { sheet }) => inRecord({ cutSheets: [sheet, sheet] })(db, { sheet } as Parameters<Spoil>[1]),
		problems: [/is there twice/],
	},
	{
		what: 'one cut sheet of two is damaged',
		spoil: (db, { sheet }) =>
			inRecord({ cutSheets: [{ ...sheet, id: 7 }, sheet] })(db, { sheet } as Parameters<Spoil>[1]),
		problems: [/id is not a text/],
	},
	// The rest of the show's record
	{ what: 'a show has no name', spoil: inRecord({}, 'name'), problems: [/name is missing/] },
	{ what: 'a show is called 7', spoil: inRecord({ name: 7 }), problems: [/name is not a text/] },
	{ what: 'a show is called nothing', spoil: inRecord({ name: null }), problems: [/name is not a text/] },
	{ what: 'a show has no settings', spoil: inRecord({}, 'settings'), problems: [/settings is missing/] },
	{ what: 'settings are a list', spoil: inRecord({ settings: [] }), problems: [/settings is not a record/] },
	{ what: 'settings are nothing', spoil: inRecord({ settings: null }), problems: [/settings is not a record/] },
	{
		what: 'settings hold themselves',
		spoil: inRecord({ settings: roundAndRound() }),
		problems: [/settings has lists in lists/],
	},
	{
		what: 'views hold themselves',
		spoil: inRecord({ views: roundAndRound() }),
		problems: [/views has lists in lists/],
	},
	{ what: 'views are a number', spoil: inRecord({ views: 7 }), problems: [] },
	{ what: 'a show has no revision', spoil: inRecord({}, 'revision'), problems: [/revision is missing/] },
	{
		what: 'a show has a revision in words',
		spoil: inRecord({ revision: 'third' }),
		problems: [/revision is of the wrong kind/],
	},
	{ what: 'where one was is a text', spoil: inRecord({ left: 'prints' }), problems: [/left is of the wrong kind/] },
	{ what: 'the last copy has no time', spoil: inRecord({ copied: {} }), problems: [/copied is of the wrong kind/] },
	{
		what: 'a step at the bench is a record',
		spoil: inRecord({ atBench: {} }),
		problems: [/atBench is of the wrong kind/],
	},
	{
		what: 'when it was opened is a text',
		spoil: inRecord({ openedAt: 'yesterday' }),
		problems: [/openedAt is of the wrong kind/],
	},
	{
		what: 'whether it is put away is a text',
		spoil: inRecord({ isArchived: 'yes' }),
		problems: [/isArchived is of the wrong kind/],
	},
	{
		what: 'a show is only its id',
		spoil: (db) => db.put('shows', { id: 'damaged' }),
		problems: [/revision is missing; name is missing; settings is missing/],
		...noSheet,
	},
	{
		what: 'another show has a number for its id',
		spoil: async (db) => {
			await db.put('rows', { id: 'a' }, [7, 'a']);
			await db.put('shows', { id: 7, name: 'Seven' });
		},
		problems: [/its id is not a text/, /of its show/],
	},
	{
		what: 'another show has a list for its id',
		spoil: (db) => db.put('shows', { id: ['a'], settings: 7 }),
		problems: [/its id is not a text/],
	},
	{
		what: 'another show has no text in its id',
		spoil: (db) => db.put('shows', { id: '' }),
		problems: [/its id is not a text/],
	},
	// Exchanges and what columns mean
	{
		what: 'an exchange is a text',
		spoil: besides('exchanges', ['damaged', 'x'], 'file.csv'),
		problems: [/it is not a record/],
	},
	{
		what: 'an exchange has no rows',
		spoil: besides('exchanges', ['damaged', 'x'], {
			id: 'x',
			direction: 'given',
			fileName: 'a.csv',
			at: 1,
			unit: 'mm',
			stands: true,
		}),
		problems: [/rows is not a list/],
	},
	{
		what: 'an exchange has no direction',
		spoil: besides('exchanges', ['damaged', 'x'], {
			id: 'x',
			fileName: 'a.csv',
			at: 1,
			unit: 'mm',
			rows: [],
			stands: true,
		}),
		problems: [/direction is of the wrong kind/],
	},
	{
		what: 'what columns mean is a list',
		spoil: besides('matchings', 'a,b', ['title']),
		problems: [/it is not a record/],
	},
	{
		what: 'a column means no column',
		spoil: besides('matchings', 'a,b', { a: 'colour of the sky' }),
		problems: [/means no column/],
	},
];

/** Something that holds itself, which a browser keeps and JSON cannot. */
function roundAndRound(): Readonly<Record<string, unknown>> {
	const round: Record<string, unknown> = {};
	return Object.assign(round, { round });
}

async function putInto(...all: readonly Show[]) {
	const store = openShowStore(databaseName);
	for (const show of all) await store.keep(show);
	store.close();
}

async function openTab(showId?: string): Promise<{ readonly shelf: Shelf; readonly putAside: PutAside }> {
	const shelf = await openShelf({ databaseName, showId });
	const putAside = new PutAside(databaseName);
	onTestFinished(async () => {
		putAside.close();
		await shelf.close();
	});
	await shelf.session.exchanges.all();
	await shelf.memory.matching('a,b');
	await putAside.refresh();
	return { shelf, putAside };
}

test.each(faults)('$what: that record alone is put aside, said once, and everything else opens', async (fault) => {
	const { damaged, other, ticks } = shows();
	await putInto(damaged, other);
	const db = await openDB(databaseName);
	await fault.spoil(db, { tick: ticks[0]!, sheet: damaged.cutSheets![0]! });
	db.close();

	const { shelf, putAside } = await openTab('damaged');
	const { session } = shelf;
	expect(session.show.id).toBe('damaged');
	const [rows, cuts, sheets] = [session.show.rows, session.show.ticks ?? [], session.show.cutSheets ?? []];
	const { left = {} } = fault;
	expect(rows).toHaveLength(left.rows ?? 2);
	expect(cuts).toHaveLength(left.ticks === -1 ? ticks.length - 1 : ticks.length);
	expect(sheets).toHaveLength(left.sheets ?? 1);
	expect(session.results).toHaveLength(rows.length);
	expect(session.bench).toBeDefined();
	expect(typeof session.views.active).toBe('string');
	expect(await shelf.read('other')).toEqual(other);
	expect(shelf.shows.map(({ id }) => id).sort()).toEqual(['damaged', 'other']);

	expect(putAside.unreported).toBe(fault.problems.length);
	const file = JSON.parse(writePutAside(putAside.records)) as { records: { problem: string; value: unknown }[] };
	expect(file.records).toHaveLength(fault.problems.length);
	for (const problem of fault.problems)
		expect(file.records.map((each) => each.problem)).toContainEqual(expect.stringMatching(problem));

	// It is typed into, kept, and opened again as it was left; nothing is said a second time.
	on(session).typeCells([{ id: rows[0]!.id, cells: { note: 'mended' } }], 'Type note');
	await session.whenSaved();
	await putAside.noteReported();
	const again = await openTab('damaged');
	expect(again.shelf.session.show).toEqual(session.show);
	expect(again.putAside.unreported).toBe(0);
	expect(again.putAside.count).toBe(fault.problems.length);
});

test('there are at least 35 kinds of damage, in every store', () => {
	expect(faults.length).toBeGreaterThanOrEqual(35);
});

test('damage under a running page: the edit of that row is made on nothing, and what was there is put aside', async () => {
	const { damaged, other } = shows();
	await putInto(damaged, other);
	const { shelf, putAside } = await openTab('damaged');
	const db = await openDB(databaseName);
	await db.put('rows', 'nonsense', ['damaged', 'r1']);
	await db.put('shows', { ...((await db.get('shows', 'damaged')) as object), settings: 7 });
	db.close();
	on(shelf.session).typeCells([{ id: 'r1', cells: { note: 'mended' } }], 'Type note');
	await shelf.session.whenSaved();
	await putAside.refresh();
	expect(putAside.count).toBe(2);
	const again = await openTab('damaged');
	expect(again.shelf.session.show.rows.find(({ id }) => id === 'r1')!.typed).toMatchObject({ note: 'mended' });
});

test('where there is no room to put a damaged record aside, everything opens all the same, and it stays where it is', async () => {
	const { damaged, other } = shows();
	await putInto(damaged, other);
	const db = await openDB(databaseName);
	await db.put('rows', 7, ['damaged', 'r1']);
	const add = Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, 'add')!;
	IDBObjectStore.prototype.add = () => {
		throw new DOMException('no room', 'QuotaExceededError');
	};
	const full = await openTab('damaged').finally(() => Object.defineProperty(IDBObjectStore.prototype, 'add', add));
	expect(full.shelf.session.show.rows).toHaveLength(1);
	expect(full.putAside.count).toBe(0);
	expect(await db.get('rows', ['damaged', 'r1'])).toBe(7);
	db.close();
	expect((await openTab('damaged')).putAside.unreported).toBe(1);
});

test('two tabs that open a damaged show at once put each record aside once', async () => {
	const { damaged, other } = shows();
	await putInto(damaged, other);
	const db = await openDB(databaseName);
	await db.put('rows', 7, ['damaged', 'r1']);
	db.close();
	await Promise.all([openTab('damaged'), openTab('damaged')]);
	expect((await openTab()).putAside.count).toBe(1);
});

/** Plans as they are kept, of a show with two prints. */
function keptPlans() {
	const show = showOf(2);
	const [job] = jobsOfShow(show);
	const [plan] = plansOf(show);
	return [plannedBoard(job!, plan!, () => 'sheet')];
}

test.each<readonly [what: string, spoil: (board: Record<string, unknown>) => unknown]>([
	['plans are nothing', () => null],
	['plans are a text', () => 'planned'],
	['the boards are a record', () => ({ form: 1, at: 1, boards: {} })],
	['a board is nothing', () => ({ form: 1, at: 1, boards: [null] })],
	['a board has no plan', ({ plan: _, ...board }) => ({ form: 1, at: 1, boards: [board] })],
	['a board has no job', ({ job: _, ...board }) => ({ form: 1, at: 1, boards: [board] })],
	[
		'a plan has no layouts',
		(board) => ({ form: 1, at: 1, boards: [{ ...board, plan: { ...(board['plan'] as object), layouts: 7 } }] }),
	],
	[
		'a layout has no stock',
		(board) => ({ form: 1, at: 1, boards: [{ ...board, plan: { ...(board['plan'] as object), layouts: [{}] } }] }),
	],
	[
		'a plan costs words',
		(board) => ({ form: 1, at: 1, boards: [{ ...board, plan: { ...(board['plan'] as object), cost: 'little' } }] }),
	],
	[
		'what has no place is a text',
		(board) => ({
			form: 1,
			at: 1,
			boards: [{ ...board, plan: { ...(board['plan'] as object), unplaced: ['a blank'] } }],
		}),
	],
	['sheets are nothing', (board) => ({ form: 1, at: 1, boards: [{ ...board, sheets: null }] })],
])('%s: they are put aside and planned again, and new ones are kept', async (_what, spoil) => {
	await putInto({ ...showOf(2), id: 'damaged' });
	const boards = keptPlans();
	const plans = openPlanStore(databaseName);
	await plans.keep('damaged', boards);
	expect(await plans.read('damaged')).toEqual(boards);
	const db = await openDB(`${databaseName} plans`);
	await db.put('plans', spoil({ ...boards[0] }), 'damaged');
	await db.put('plans', null, 'another show');
	db.close();

	const { shelf, putAside } = await openTab('damaged');
	const packing = new Packing(shelf.session, { databaseName });
	await packing.restored;
	expect(packing.boards).toEqual([]);
	packing.close();
	await putAside.refresh();
	expect(putAside.unreported).toBe(1);
	expect(JSON.parse(writePutAside(putAside.records))).toMatchObject({ records: [{ store: 'plans', key: 'damaged' }] });
	await plans.keep('damaged', boards);
	expect(await plans.read('damaged')).toEqual(boards);
	plans.close();
});

test('a database of a newer version is left alone, and said so', async () => {
	const { damaged } = shows();
	await putInto(damaged);
	const newer = await openDB(databaseName, schemaVersion + 1, {
		upgrade: (db) => void db.createObjectStore('something new'),
	});
	await newer.put('rows', 'a form of tomorrow', ['damaged', 'r1']);
	const before = await newer.getAll('rows');
	newer.close();
	await expect(openShelf({ databaseName })).rejects.toThrow(/newer version of this app has been used here/);
	const shelf = openShelfStore(databaseName);
	await expect(shelf.list()).rejects.toMatchObject({ name: 'VersionError' });
	const after = await openDB(databaseName);
	expect(after.version).toBe(schemaVersion + 1);
	expect(await after.getAll('rows')).toEqual(before);
	after.close();
});
