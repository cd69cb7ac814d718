import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { beforeEach, expect, onTestFinished, test } from 'vitest';
import { mm } from '../../../src/core/length/length.ts';
import { mostExchanges } from '../../../src/core/merge/exchange.ts';
import type { Show } from '../../../src/core/show/show.ts';
import { openPutAsideStore } from '../../../src/storage/putAsideStore.ts';
import { schemaVersion } from '../../../src/storage/schema.ts';
import { openShelfStore } from '../../../src/storage/shelfStore.ts';
import { openShowStore } from '../../../src/storage/showStore.ts';

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
});

/** A record as a version of the app left it. */
type Kept = readonly [store: string, value: unknown, key?: IDBValidKey];

/** What a version of the app left, and what of the show is there after it. */
interface Sample {
	readonly stores: readonly string[];
	readonly kept: readonly Kept[];
	readonly settings: Show['settings'];
	readonly views?: unknown;
	/** How many exchanges stand. */
	readonly exchanges: number;
	readonly hung?: Show['hung'];
}

const rows = [
	{ id: 'a', order: 1, typed: { title: 'Pier', side: '70' }, units: { side: 'mm' }, extra: { lab: '7' } },
	{ id: 'b', order: 2.5, typed: { title: 'Quay', frame: 'Oak', paper: 'Frame' } },
] as const satisfies Show['rows'];
/** A blank mount cell was the show's mount beside any frame, and a size could be called `frame`. */
const renewedRows = [
	rows[0],
	{ ...rows[1], typed: { ...rows[1].typed, mount: 'show', paper: 'frame size' } },
] as const satisfies Show['rows'];
const spoilt = { row: 'a', copy: 1, part: 'mount', side: 'spoilt', times: 2 } as const;
const innerCut = {
	...{ row: 'b', copy: 1, part: 'inner mount', side: 'left' },
	...{ border: mm(60), width: mm(600), height: mm(450) },
} as const;
const hung = { row: 'a', wall: 'North', left: mm(120), centre: mm(1450) };
const exchange = { id: 'x', direction: 'given', fileName: 'a.csv', at: 5, unit: 'mm', rows: [rows[0]], stands: true };

const items: readonly Kept[] = [
	...rows.map((row): Kept => ['rows', row, ['show', row.id]]),
	['ticks', spoilt, ['show', 'a', 1, 'mount', 'spoilt']],
	['ticks', innerCut, ['show', 'b', 1, 'inner mount', 'left']],
];
const since2: readonly Kept[] = [
	...items,
	['exchanges', exchange, ['show', 'x']],
	['matchings', { Foto: 'title' }, 'Foto'],
];
const record = (more: Readonly<Record<string, unknown>>): Kept => ['shows', { id: 'show', name: 'Low tide', ...more }];

const oldFrames = {
	boards: [{ name: 'Chalk', width: 600, height: 900, price: '1250' }],
	frames: [{ name: 'Oak', width: '502', height: 402 }],
	sizes: [{ name: 'Frame', width: 297, height: 420 }],
};
const newFrames = {
	boards: [{ name: 'Chalk', width: 600, height: 900, price: 1250 }],
	frames: [{ name: 'Oak', rebateWidth: '502', rebateHeight: 402 }],
	sizes: [{ name: 'frame size', width: 297, height: 420 }],
};
/** The new ones, but for the size's name. */
const framesUntil6 = { ...newFrames, sizes: oldFrames.sizes };
const views = { sort: { column: 'title', way: 'down' } };
const ownBlanks = { bench: { inner: 'own blank' } };

/** One for each version of the stores that there ever was, by its number. */
const samples: Readonly<Record<number, Sample>> = {
	1: {
		stores: ['rows', 'ticks'],
		kept: [...items, record({ settings: { ...oldFrames, views }, revision: 7, atBench: 'a step' })],
		settings: { ...newFrames, ...ownBlanks },
		views,
		exchanges: 0,
	},
	2: {
		stores: ['rows', 'ticks', 'exchanges', 'matchings'],
		kept: [...since2, record({ settings: { ...oldFrames, views }, revision: 7, openedAt: 3 })],
		settings: { ...newFrames, ...ownBlanks },
		views,
		exchanges: 1,
	},
	3: {
		stores: ['rows', 'ticks', 'exchanges', 'matchings'],
		kept: [...since2, record({ settings: { ...framesUntil6, views }, cutSheets: [], revision: 7 })],
		settings: { ...newFrames, ...ownBlanks },
		views,
		exchanges: 1,
	},
	4: {
		stores: ['rows', 'ticks', 'exchanges', 'matchings'],
		kept: [...since2, record({ settings: framesUntil6, views, cutSheets: [], revision: 7 })],
		settings: { ...newFrames, ...ownBlanks },
		views,
		exchanges: 1,
	},
	5: {
		stores: ['rows', 'ticks', 'exchanges', 'matchings'],
		kept: [...since2, record({ settings: framesUntil6, views, cutSheets: [], revision: 7, takenBack: 2 })],
		settings: newFrames,
		views,
		exchanges: 1,
	},
	6: {
		stores: ['rows', 'ticks', 'exchanges', 'matchings', 'putAside'],
		kept: [...since2, record({ settings: framesUntil6, views, cutSheets: [], revision: 7, takenBack: 2 })],
		settings: newFrames,
		views,
		exchanges: 1,
	},
	7: {
		stores: ['rows', 'ticks', 'exchanges', 'matchings', 'putAside'],
		kept: [
			...renewedRows.map((row): Kept => ['rows', row, ['show', row.id]]),
			...since2.slice(rows.length),
			record({ settings: newFrames, views, cutSheets: [], revision: 7, takenBack: 2 }),
		],
		settings: newFrames,
		views,
		exchanges: 1,
	},
	8: {
		stores: ['rows', 'ticks', 'exchanges', 'matchings', 'putAside', 'steps'],
		kept: [
			...renewedRows.map((row): Kept => ['rows', row, ['show', row.id]]),
			...since2.slice(rows.length),
			record({ settings: newFrames, views, cutSheets: [], revision: 7, takenBack: 2 }),
		],
		settings: newFrames,
		views,
		exchanges: 1,
	},
	9: {
		stores: ['rows', 'ticks', 'exchanges', 'matchings', 'putAside', 'steps'],
		kept: [
			...renewedRows.map((row): Kept => ['rows', row, ['show', row.id]]),
			...since2.slice(rows.length),
			record({ settings: newFrames, views, cutSheets: [], hung: [hung], revision: 7, takenBack: 2 }),
		],
		settings: newFrames,
		views,
		exchanges: 1,
		hung: [hung],
	},
	10: {
		stores: ['rows', 'ticks', 'exchanges', 'matchings', 'putAside', 'steps', 'made'],
		kept: [
			...renewedRows.map((row): Kept => ['rows', row, ['show', row.id]]),
			...since2.slice(rows.length),
			record({ settings: newFrames, views, cutSheets: [], hung: [hung], revision: 7, takenBack: 2 }),
		],
		settings: newFrames,
		views,
		exchanges: 1,
		hung: [hung],
	},
	11: {
		stores: ['rows', 'ticks', 'exchanges', 'matchings', 'putAside', 'steps', 'made'],
		kept: [
			...renewedRows.map((row): Kept => ['rows', row, ['show', row.id]]),
			...since2.slice(rows.length),
			record({ settings: newFrames, views, cutSheets: [], hung: [hung], revision: 7, takenBack: 2 }),
		],
		settings: newFrames,
		views,
		exchanges: 1,
		hung: [hung],
	},
};

async function leave(version: number, { stores, kept }: Sample, ...more: readonly Kept[]): Promise<void> {
	const db = await openDB(databaseName, version, {
		upgrade(old) {
			old.createObjectStore('shows', { keyPath: 'id' });
			for (const name of stores) old.createObjectStore(name, name === 'putAside' ? { autoIncrement: true } : {});
		},
	});
	for (const [store, value, key] of [...kept, ...more]) await db.put(store, value, key);
	db.close();
}

function open() {
	const store = openShowStore(databaseName);
	onTestFinished(() => store.close());
	return store;
}

test('there is a sample of every version before this one', () => {
	expect(Object.keys(samples).map(Number)).toEqual(Array.from({ length: schemaVersion - 1 }, (_, at) => at + 1));
});

test.each(Object.entries(samples))('what version %s left is there, in the form of today', async (version, sample) => {
	await leave(Number(version), sample);
	const store = open();
	const { settings, views: seen, exchanges, hung: hangs } = sample;
	const { show, revision } = await store.openShow(() => {
		throw new Error('there is a show already');
	});
	const whole = {
		id: 'show',
		name: 'Low tide',
		settings,
		rows: renewedRows,
		ticks: [spoilt, innerCut],
		...(seen !== undefined && { views: seen }),
		...(hangs !== undefined && { hung: hangs }),
	};
	expect({ ...show, ticks: show.ticks?.toSorted((a, b) => (a.row < b.row ? -1 : 1)) }).toEqual(whole);
	expect(revision).toBe(7);
	expect(await store.exchanges('show')).toHaveLength(exchanges);
	const putAside = openPutAsideStore(databaseName);
	expect(await putAside.list()).toEqual([]);
	putAside.close();
});

test('an exchange that an older version left is counted among those worth keeping', async () => {
	await leave(11, samples[11]!);
	const store = open();
	for (let at = 6; at < 6 + mostExchanges; at++)
		await store.keepExchange('show', { ...exchange, direction: 'given', unit: 'mm', id: `${at}`, at }, true);
	expect((await store.exchanges('show')).map(({ id }) => id)).toEqual(['11', '10', '9', '8', '7', '6']);
});

test.each(Object.entries(samples))(
	'damage in what version %s left is in the way of nothing else',
	async (version, sample) => {
		const hasExchanges = sample.stores.includes('exchanges');
		await leave(
			Number(version),
			sample,
			['rows', 7, ['show', 'c']],
			['rows', { id: 'd' }, 'd'],
			['ticks', 'nonsense', 7],
			['ticks', null, ['show', 'c', 1, 'mount', 'left']],
			['shows', { id: 'other', name: 7, settings: [{}] }],
			['shows', { id: 'third', name: 'Third', settings: { frames: [null, 7], boards: 'many', views: 7 }, revision: 1 }],
			['shows', { id: 8 }],
			...(hasExchanges ? [['exchanges', [], ['show', 'y']] satisfies Kept] : []),
		);
		const store = open();
		expect((await store.read('show')).show.rows).toEqual(renewedRows);
		const shelf = openShelfStore(databaseName);
		onTestFinished(() => shelf.close());
		expect((await shelf.list()).map(({ id, prints }) => [id, prints])).toEqual([
			['other', 0],
			['show', 2],
			['third', 0],
		]);
		await store.exchanges('show');
		const putAside = openPutAsideStore(databaseName);
		onTestFinished(() => putAside.close());
		expect(await putAside.list()).toHaveLength(hasExchanges ? 5 : 4);
	},
);
