import type { ColumnMatching } from '../core/imports/columnMatching.ts';
import type { Show } from '../core/show/show.ts';
import { type ConnectionEvents, openConnection } from './connection.ts';
import { getSound, putAside, readSound } from './putAside.ts';
import { type ShowRecord, storesApart } from './schema.ts';
import { putShow } from './putShow.ts';
import { readStored, ShowMissing } from './showStore.ts';
import { rangeOfShow, type Requests, write, type Writing } from './writing.ts';

/** A show on the shelf: its record, and how many prints it has. */
export interface ShelvedShow extends ShowRecord {
	readonly prints: number;
}

/** All shows kept on this device, and what is kept beside them. */
export function openShelfStore(databaseName: string, events: ConnectionEvents = {}) {
	const connection = openConnection(databaseName, events);
	const writes = <Result>(work: (tx: Writing, request: Requests) => Promise<Result>) => write(connection, work);

	return {
		/** Every show, the deleted ones too, in no order. */
		async list(): Promise<readonly ShelvedShow[]> {
			const tx = await connection.begin((db) => db.transaction(['shows', 'rows']));
			const { values: records, damaged } = await readSound(tx.objectStore('shows'));
			const counts = await Promise.all(records.map(({ id }) => tx.objectStore('rows').count(rangeOfShow(id))));
			await putAside(connection, damaged);
			return records.map((record, index) => ({
				...record,
				prints: Math.max(0, counts[index]! - (record.blankRows ?? 0)),
			}));
		},

		/** A show that is not open here, as it is kept. */
		read: async (showId: string): Promise<Show> => (await readStored(connection, showId)).show,

		/** Keeps shows that are new here, all of them or none. */
		add: (shows: readonly Show[], more: Pick<ShowRecord, 'isArchived' | 'copied'> = {}): Promise<void> =>
			writes(async (tx, request) => {
				for (const show of shows) await putShow(tx, request, show, more);
			}),

		/** Puts a show away or deletes it, or undoes either. */
		mark: (showId: string, marks: MarksOfShow): Promise<void> =>
			writes(async (tx, request) => {
				const record = await getSound(tx, request, 'shows', showId);
				if (!record) throw new ShowMissing(showId);
				const { isArchived = record.isArchived, deletedAt = record.deletedAt } = marks;
				const { isArchived: _, deletedAt: __, ...kept } = record;
				request(
					tx.objectStore('shows').put({
						...kept,
						...(isArchived && { isArchived }),
						...(typeof deletedAt === 'number' && { deletedAt }),
					}),
				);
			}),

		/**
		 * Forgets for good the shows that were deleted before a time, in milliseconds since 1970.
		 * @param letGo lets go first of what is kept of them elsewhere; where it rejects, none is forgotten
		 */
		async forget(
			deletedBefore: number,
			letGo: (ids: readonly string[]) => Promise<void> = () => Promise.resolve(),
		): Promise<void> {
			const isOver = ({ deletedAt = Infinity }: ShowRecord) => deletedAt < deletedBefore;
			const reading = await connection.begin((db) => db.transaction('shows'));
			const over = new Set((await readSound(reading.store)).values.filter(isOver).map(({ id }) => id));
			if (over.size === 0) return;
			await letGo([...over]);
			await writes(async (tx, request) => {
				const { values } = await readSound(tx.objectStore('shows'));
				for (const { id } of values.filter((record) => over.has(record.id) && isOver(record))) {
					request(tx.objectStore('shows').delete(id));
					for (const store of [...storesApart, 'exchanges', 'steps'] as const)
						request(tx.objectStore(store).delete(rangeOfShow(id)));
				}
			});
		},

		/** What the columns of a file with these headers were said to mean. */
		async matching(headers: string): Promise<ColumnMatching | undefined> {
			const tx = await connection.begin((db) => db.transaction('matchings'));
			const { values, damaged } = await readSound(tx.store, IDBKeyRange.only(headers));
			await putAside(connection, damaged);
			return values[0];
		},

		/** Keeps what the columns of a file with these headers mean. */
		async keepMatching(headers: string, matching: ColumnMatching): Promise<void> {
			const tx = await connection.begin((db) => db.transaction('matchings', 'readwrite', { durability: 'strict' }));
			await Promise.all([tx.store.put(matching, headers), tx.done]);
		},

		close: () => connection.close(),
	};
}

/** What is changed of the marks of a show; what is absent stays. */
export interface MarksOfShow {
	readonly isArchived?: boolean;
	/** When it was deleted, in milliseconds since 1970; false brings it back. */
	readonly deletedAt?: number | false;
}

/** See `openShelfStore`. */
export type ShelfStore = ReturnType<typeof openShelfStore>;
