import type { DBSchema, IDBPDatabase, IDBPTransaction } from 'idb';
import type { Exchange } from '../core/merge/exchange.ts';
import type { ColumnMatching } from '../core/imports/columnMatching.ts';
import { everyPart } from '../core/show/everyPart.ts';
import type { PartApart, ValueOf } from '../core/show/parts.ts';
import type { Edit } from '../core/show/edit.ts';
import type { Show } from '../core/show/show.ts';
import {
	fromThirdForm,
	hasFrameSize,
	rowBeforeFrames,
	viewsApart,
	withoutFrameSize,
	withOwnBlanks,
} from '../core/show/upgrade.ts';

/** The place and selection at which a show was last left: plain values for the screens, never read here. */
export interface LeftAt {
	readonly place?: string;
	readonly focus?: unknown;
}

/** The last copy of a show that left this device. */
export interface Copied {
	/** When, in milliseconds since 1970. */
	readonly at: number;
	/** The revision that was given. */
	readonly revision: number;
	/** What the file held: all of the show. An older app noted a list of its rows too. */
	readonly what: 'rows' | 'show';
}

/** What is kept of a show beside the items of the parts that are kept apart: its other parts, and what is known of it. */
export interface ShowRecord extends Omit<Show, PartApart> {
	/** Goes up by one with each transaction on the show: tells a tab whether it has seen them all. */
	readonly revision: number;
	/** The step that was last active at the bench, by the key that the bench gives it. */
	readonly atBench?: string;
	/** The step that was last active at the knife, by the key that the knife work gives it. */
	readonly atKnife?: string;
	/** How many of its rows are blank: no prints, and not counted. */
	readonly blankRows?: number;
	/** When it was last opened, in milliseconds since 1970. */
	readonly openedAt?: number;
	/** Whether it is put away: kept, and out of the way. */
	readonly isArchived?: boolean;
	/** When it was deleted; it can be brought back for a while. */
	readonly deletedAt?: number;
	readonly left?: LeftAt;
	readonly copied?: Copied;
	/** How many of the transactions since then are no change to back up: they undo each other, or change only views. */
	readonly takenBack?: number;
}

/** An exchange as it is kept. One that was undone does not stand: the show is as if it had never been. */
export interface KeptExchange extends Exchange {
	readonly stands: boolean;
}

/** A record that could not be used as it was kept, put aside so that nothing of it is lost. */
export interface RecordPutAside {
	/** The store that it was in; `plans` for a board plan. */
	readonly store: string;
	readonly key: unknown;
	/** The record, as it was. */
	readonly value: unknown;
	/** What is wrong with it, in words. */
	readonly problem: string;
	/** When it was put aside, in milliseconds since 1970. */
	readonly at: number;
	/** Whether the person has seen the report. */
	readonly isTold: boolean;
}

/** Where a step is kept: what is undone by itself; then as it was made or undone, in milliseconds since 1970, and by which tab. */
export type StepKey = [showId: string, isUndone: 0 | 1, at: number, tab: string, rows: number];

/** A step that can be undone or, once it was undone, done again. */
export interface KeptStep {
	/** What it did; of one that was undone, what redoing it would do. */
	readonly edit: Edit;
	/** The revision of the show that it made first. */
	readonly revision: number;
}

/** The key of an item that belongs to a show. */
export type KeyInShow = [showId: string, ...keyOfItem: (string | number)[]];

/** The stores of the parts that are kept apart; each has the name of its part. */
export const storesApart = everyPart.flatMap(([name, { apart }]) => (apart ? [name as PartApart] : []));

type ItemOf<List> = List extends readonly (infer Item)[] ? Item : never;
type StoresApart = { [Name in PartApart]: { key: KeyInShow; value: ItemOf<ValueOf<Name>> } };

/** The stores. What belongs to a show is keyed by show first, so that one show is one range of keys. */
export interface Schema extends DBSchema, StoresApart {
	shows: { key: string; value: ShowRecord };
	exchanges: {
		key: [showId: string, exchangeId: string];
		value: KeptExchange;
		/** When each was, and how many rows it holds: which are worth keeping is known without reading thousands of rows. */
		indexes: { worth: [at: number, rows: number] };
	};
	/** What the columns of files mean, by the headers that they have together. */
	matchings: { key: string; value: ColumnMatching };
	/** The last steps of each show, for undo and redo after it is opened again. */
	steps: { key: StepKey; value: KeptStep };
	/** Records that could not be used, as they were. */
	putAside: { key: number; value: RecordPutAside };
}

type Database = IDBPDatabase<Schema>;
/** The transaction in which the stores are brought to another form. */
export type Upgrading = IDBPTransaction<
	Schema,
	(PartApart | 'shows' | 'exchanges' | 'matchings' | 'steps' | 'putAside')[],
	'versionchange'
>;

function beginShows(db: Database): void {
	db.createObjectStore('shows', { keyPath: 'id' });
}

/** One show was kept until then, and it had been exchanged with nobody; its record holds what it held. */
function addExchanges(db: Database): void {
	db.createObjectStore('exchanges');
	db.createObjectStore('matchings');
}

async function changeRecords(tx: Upgrading, change: (record: ShowRecord) => ShowRecord): Promise<void> {
	const shows = tx.objectStore('shows');
	for (const record of await shows.getAll()) await shows.put(change(record));
}

/** A frame's width and height were its rebate until then, and prices were typed in the smallest coin. */
const renewSettings = (_db: Database, tx: Upgrading): Promise<void> =>
	changeRecords(tx, (record) => ({ ...record, settings: fromThirdForm(record.settings) }));

/** How a show is looked at was one of its settings until then. */
const splitOffViews = (_db: Database, tx: Upgrading): Promise<void> =>
	changeRecords(tx, (record) => viewsApart({ ...record }) as unknown as ShowRecord);

/** Inner mounts were cut on their own blanks until then; where the window of one is ticked off, it stays right. */
async function keepInnerCut(_db: Database, tx: Upgrading): Promise<void> {
	const keys = await tx.objectStore('ticks').getAllKeys();
	const ofInner = ([id, , , part, side]: KeyInShow) => (part === 'inner mount' && side !== 'spoilt' ? id : []);
	const cut = new Set(keys.flatMap((key) => (Array.isArray(key) ? ofInner(key) : [])));
	await changeRecords(tx, (record) =>
		cut.has(record.id) ? { ...record, settings: withOwnBlanks(record.settings) } : record,
	);
}

/** A record that could not be used was in the way until then. */
function addPutAside(db: Database): void {
	db.createObjectStore('putAside', { autoIncrement: true });
}

/** Mounts were never made to their frames until then: a blank mount cell beside a frame was the show's mount. */
async function keepShowsMounts(_db: Database, tx: Upgrading): Promise<void> {
	const withSize = new Set<string>();
	await changeRecords(tx, (record) => {
		if (hasFrameSize(record.settings)) withSize.add(record.id);
		return { ...record, settings: withoutFrameSize(record.settings) };
	});
	const rows = tx.objectStore('rows');
	for (const key of await rows.getAllKeys()) {
		const row = await rows.get(key);
		const changed = rowBeforeFrames(row, Array.isArray(key) && withSize.has(key[0]));
		if (changed !== undefined && changed !== row) await rows.put(changed, key);
	}
}

/** Steps were forgotten when the app was closed until then. */
function addSteps(db: Database): void {
	db.createObjectStore('steps');
}

/** Nothing was hung until then; what is stands in the show's record, so that there is nothing to change. */
const addHung = (): void => undefined;

/** What is made was not ticked off until then; it has a store, which `upgrade` makes. */
const addMade = (): void => undefined;

/** What is printed was not remembered until then; it stands in the show's record, so that there is nothing to change. */
const addPrinting = (): void => undefined;

/** To know how large an exchange is, all of it was read until then. */
const addWorth = (_db: Database, tx: Upgrading): void =>
	void tx.objectStore('exchanges').createIndex('worth', ['at', 'rows.length']);

/** What makes each form of the stores into the next, the first of nothing. */
const steps: readonly ((db: Database, tx: Upgrading) => void | Promise<void>)[] = [
	beginShows,
	addExchanges,
	renewSettings,
	splitOffViews,
	keepInnerCut,
	addPutAside,
	keepShowsMounts,
	addSteps,
	addHung,
	addMade,
	addPrinting,
	addWorth,
];

/** The form in which this version of the app keeps things. */
export const schemaVersion = steps.length;

/**
 * Brings the stores from an older form to this one, one step a version; all of it happens in one transaction. A part that
 * has come to be kept apart gets its store.
 * @param oldVersion the form they are in; 0 where there is nothing yet
 */
export async function upgrade(db: Database, oldVersion: number, tx: Upgrading): Promise<void> {
	for (const name of storesApart) if (!db.objectStoreNames.contains(name)) db.createObjectStore(name);
	for (const step of steps.slice(oldVersion)) await step(db, tx);
	// A step of an older form would undo in that form: it is not worth a step of its own here.
	await tx.objectStore('steps').clear();
}
