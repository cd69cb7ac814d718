import type { DBSchema, IDBPDatabase } from 'idb';
import type { Tick } from '../core/bench/ticks.ts';
import type { CutSheet } from '../core/sheets/cutSheet.ts';
import type { Row, RowId } from '../core/show/row.ts';
import type { TypedSettings } from '../core/show/settings.ts';

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
}

/** The stores. Rows and ticks are keyed by show first, so that one show is one range of keys. */
export interface Schema extends DBSchema {
	shows: { key: string; value: ShowRecord };
	rows: { key: [showId: string, rowId: RowId]; value: Row };
	ticks: { key: [showId: string, rowId: RowId, copy: number, part: string, side: string]; value: Tick };
}

/** The form in which this version of the app keeps things. */
export const schemaVersion = 1;

/**
 * Brings the stores from an older form to this one, one step a version; all of it happens in one transaction.
 * @param oldVersion the form they are in; 0 where there is nothing yet
 */
export function upgrade(db: IDBPDatabase<Schema>, oldVersion: number): void {
	if (oldVersion < 1) {
		db.createObjectStore('shows', { keyPath: 'id' });
		db.createObjectStore('rows');
		db.createObjectStore('ticks');
	}
}
