import { type ConnectionEvents, openConnection } from './connection.ts';
import type { RecordPutAside } from './schema.ts';

/** The records that were put aside because they were damaged. */
export function openPutAsideStore(databaseName: string, events: ConnectionEvents = {}) {
	const connection = openConnection(databaseName, events);
	const writing = () => connection.begin((db) => db.transaction('putAside', 'readwrite', { durability: 'strict' }));

	return {
		/** All of them, the first first. */
		async list(): Promise<readonly RecordPutAside[]> {
			const tx = await connection.begin((db) => db.transaction('putAside'));
			return tx.store.getAll();
		},

		/** Puts one more aside. */
		async add(record: RecordPutAside): Promise<void> {
			const tx = await writing();
			await Promise.all([tx.store.add(record), tx.done]);
		},

		/** Keeps that the person has seen the report of them. */
		async noteReported(): Promise<void> {
			const tx = await writing();
			for (let cursor = await tx.store.openCursor(); cursor; cursor = await cursor.continue())
				if (!cursor.value.isTold) await cursor.update({ ...cursor.value, isTold: true });
			await tx.done;
		},

		close: () => connection.close(),
	};
}

/** See `openPutAsideStore`. */
export type PutAsideStore = ReturnType<typeof openPutAsideStore>;
