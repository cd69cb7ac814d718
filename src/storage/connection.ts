import { type IDBPDatabase, openDB } from 'idb';
import { abort } from './abort.ts';
import { type Schema, schemaVersion, upgrade } from './schema.ts';

type Database = IDBPDatabase<Schema>;

/** What ends by itself: a transaction. */
interface Ending {
	readonly done: Promise<unknown>;
}

/**
 * A transaction that the browser cuts off fails twice, in its requests and as a whole. Where only the requests are waited
 * for, the other failure would be reported as one that nobody looks after.
 */
export function alsoWithoutEnd<Transaction extends Ending>(transaction: Transaction): Transaction {
	transaction.done.catch(() => undefined);
	return transaction;
}

/** What a connection may have to tell. */
export interface ConnectionEvents {
	/** The database has to be brought to a newer form, and waits for tabs with an older version of the app. */
	readonly onBlocked?: () => void;
	/** A newer version of the app, in another tab, upgrades the database: this tab has closed it. */
	readonly onSuperseded?: () => void;
}

/** A connection that is opened again where the browser has cut it, as it does to pages that were long in the back. */
export interface Connection {
	/**
	 * Begins a transaction. Rejects where the database cannot be opened; the next call tries again.
	 * @param transaction called twice where the connection turns out to be dead
	 */
	begin<Transaction extends Ending>(transaction: (db: Database) => Transaction): Promise<Transaction>;
	/** Lets go of the database, for good. */
	close(): void;
}

/** A connection to the database of that name, opened when it is first needed. */
export function openConnection(databaseName: string, { onBlocked, onSuperseded }: ConnectionEvents): Connection {
	let opened: Promise<Database> | undefined;
	let isClosed = false;

	function database(): Promise<Database> {
		if (isClosed) return Promise.reject(new DOMException('This connection has been closed.', 'AbortError'));
		if (typeof indexedDB === 'undefined')
			return Promise.reject(new DOMException('This browser keeps nothing for pages.', 'NotSupportedError'));
		if (opened) return opened;
		const forget = () => {
			if (opened === opening) opened = undefined;
		};
		const opening = openDB<Schema>(databaseName, schemaVersion, {
			upgrade: (db, oldVersion, _newVersion, tx) => void upgrade(db, oldVersion, tx).catch(() => abort(tx)),
			blocked: () => onBlocked?.(),
			blocking(_current, wanted, event) {
				(event.target as IDBDatabase).close();
				forget();
				if (wanted !== null) onSuperseded?.(); // else it is deleted, and begun again when it is next needed
			},
			terminated: forget,
		});
		opening.catch(forget);
		return (opened = opening);
	}

	return {
		async begin(transaction) {
			const db = await database();
			try {
				return alsoWithoutEnd(transaction(db));
			} catch (cause) {
				// Some browsers do not tell that they have cut a connection.
				if ((cause as DOMException).name !== 'InvalidStateError') throw cause;
				opened = undefined;
				return alsoWithoutEnd(transaction(await database()));
			}
		},
		close() {
			isClosed = true;
			opened?.then((db) => db.close()).catch(() => undefined);
			opened = undefined;
		},
	};
}
