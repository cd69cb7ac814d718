import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { Tick } from '../core/bench/ticks.ts';
import type { Exchange } from '../core/merge/exchange.ts';
import type { CutSheet } from '../core/sheets/cutSheet.ts';
import type { ColumnMatching } from '../core/show/columnMatching.ts';
import type { Row, RowId } from '../core/show/row.ts';
import type { TypedSettings } from '../core/show/settings.ts';
import { withRebates } from '../core/show/upgrade.ts';

/** Where one was in a show when it was last left: plain values, kept for the screens and never looked into. */
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
	/** What the file held: rows alone, or all of the show. */
	readonly what: 'rows' | 'show';
}

/** What is kept of a show beside its rows. */
export interface ShowRecord {
	readonly id: string;
	readonly name: string;
	readonly settings: TypedSettings;
	/** The sheets of board that the knife has begun: few, and kept here so that they need no store of their own. */
	readonly cutSheets?: readonly CutSheet[];
	/** Goes up by one with each transaction on the show: tells a tab whether it has seen them all. */
	readonly revision: number;
	/** The step that was last in hand at the bench, as the bench names it. */
	readonly atBench?: string;
	/** The step that was last in hand at the knife, as the knife names it. */
	readonly atKnife?: string;
	/** When it was last opened, in milliseconds since 1970. */
	readonly openedAt?: number;
	/** Whether it is put away: kept, and out of the way. */
	readonly isArchived?: boolean;
	/** When it was deleted; it can be brought back for a while. */
	readonly deletedAt?: number;
	readonly left?: LeftAt;
	readonly copied?: Copied;
	/** How many of the transactions since then only take others of them back, these counted too. */
	readonly takenBack?: number;
}

/** An exchange as it is kept. One that was undone does not stand: the show is as if it had never been. */
export interface KeptExchange extends Exchange {
	readonly stands: boolean;
}

/** The stores. What belongs to a show is keyed by show first, so that one show is one range of keys. */
export interface Schema extends DBSchema {
	shows: { key: string; value: ShowRecord };
	rows: { key: [showId: string, rowId: RowId]; value: Row };
	ticks: { key: [showId: string, rowId: RowId, copy: number, part: string, side: string]; value: Tick };
	exchanges: { key: [showId: string, exchangeId: string]; value: KeptExchange };
	/** What the columns of files mean, by the headers that they have together. */
	matchings: { key: string; value: ColumnMatching };
}

/** The form in which this version of the app keeps things. */
export const schemaVersion = 3;

/** The transaction in which the stores are brought to a newer form. */
type Upgrading = IDBPTransaction<Schema, StoreNames<Schema>[], 'versionchange'>;

/**
 * Brings the stores from an older form to this one, one step a version; all of it happens in one transaction.
 * @param oldVersion the form they are in; 0 where there is nothing yet
 */
export function upgrade(db: IDBPDatabase<Schema>, oldVersion: number, tx: Upgrading): void {
	if (oldVersion < 1) {
		db.createObjectStore('shows', { keyPath: 'id' });
		db.createObjectStore('rows');
		db.createObjectStore('ticks');
	}
	if (oldVersion < 2) {
		// One show was kept until then, and it had been exchanged with nobody; its record holds what it held.
		db.createObjectStore('exchanges');
		db.createObjectStore('matchings');
	}
	if (oldVersion < 3) {
		// A frame's width and height were its rebate until then.
		changeSettings(tx, withRebates).catch(() => tx.abort());
	}
}

async function changeSettings(tx: Upgrading, change: (settings: TypedSettings) => TypedSettings): Promise<void> {
	const shows = tx.objectStore('shows');
	for (const record of await shows.getAll()) await shows.put({ ...record, settings: change(record.settings) });
}
