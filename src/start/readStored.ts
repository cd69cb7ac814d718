/** A record as it is stored, and where. */
export interface StoredRecord {
	readonly store: string;
	readonly key: IDBValidKey;
	readonly value: unknown;
}

/** How long a browser may take to open what is stored, in milliseconds. */
const longestMs = 10_000;

/**
 * Reads everything of a database as it is, whichever version of the app has written it: it is not brought to a newer
 * form, and not made where there is none.
 * @returns undefined where there is no such database; rejects where it cannot be read
 */
export async function readStored(databaseName: string): Promise<readonly StoredRecord[] | undefined> {
	const db = await open(databaseName);
	if (!db) return undefined;
	try {
		const stores = [...db.objectStoreNames];
		if (stores.length === 0) return [];
		const tx = db.transaction(stores);
		const records = await Promise.all(stores.map((store) => recordsOf(tx.objectStore(store))));
		return records.flat();
	} finally {
		db.close();
	}
}

function open(databaseName: string): Promise<IDBDatabase | undefined> {
	return new Promise((resolve, reject) => {
		const late = () => reject(new DOMException('it does not open', 'TimeoutError'));
		setTimeout(late, longestMs);
		const request = indexedDB.open(databaseName);
		request.onupgradeneeded = () => {
			request.transaction?.abort(); // there was none, and there shall be none
			resolve(undefined);
		};
		request.onerror = () => reject(request.error ?? new Error('it does not open'));
		request.onsuccess = () => resolve(request.result);
	});
}

function recordsOf(store: IDBObjectStore): Promise<readonly StoredRecord[]> {
	return new Promise((resolve, reject) => {
		const records: StoredRecord[] = [];
		const request = store.openCursor();
		request.onerror = () => reject(request.error ?? new Error('it cannot be read'));
		request.onsuccess = () => {
			const cursor = request.result;
			if (!cursor) return resolve(records);
			records.push({ store: store.name, key: cursor.primaryKey, value: cursor.value as unknown });
			cursor.continue();
		};
	});
}
