import type { IDBPTransaction } from 'idb';
import type { Tick } from '../core/bench/ticks.ts';
import { apply, type Edit, type RowDiff, rowIdOf } from '../core/show/edit.ts';
import { mergeRow } from '../core/show/mergeRow.ts';
import { byOrder } from '../core/show/orderNumbers.ts';
import type { Row, RowId } from '../core/show/row.ts';
import type { Show } from '../core/show/show.ts';
import { type ConnectionEvents, openConnection } from './connection.ts';
import type { Schema, ShowRecord } from './schema.ts';

/** A show as it is kept, and how many transactions have made it so. */
export interface StoredShow {
	readonly show: Show;
	readonly revision: number;
	/** The step that was last in hand at the bench. */
	readonly atBench?: string;
}

/** Thrown where a show that should be kept is not: the browser has cleared its storage. */
export class ShowMissing extends Error {
	override readonly name = 'ShowMissing';
}

const stores: ['shows', 'rows', 'ticks'] = ['shows', 'rows', 'ticks'];
type Writing = IDBPTransaction<Schema, typeof stores, 'readwrite'>;
/** Takes a request that the transaction waits for, and is undone with. */
type Requests = (request: Promise<unknown>) => void;

/** All rows or ticks of a show: an array sorts after every text. */
const rowsOf = (showId: string) => IDBKeyRange.bound([showId], [showId, []]);

const keyOfTick = (showId: string, { row, copy, part, side }: Tick): Schema['ticks']['key'] => [
	showId,
	row,
	copy,
	part,
	side,
];

/**
 * The shows kept on this device. Everything goes in and out as plain data. All that changes anything is one
 * transaction, on disk before its promise resolves.
 */
export function openShowStore(databaseName: string, events: ConnectionEvents = {}) {
	const connection = openConnection(databaseName, events);

	/** Does some work in one transaction: all of it is kept, or none. */
	async function write<Result>(work: (tx: Writing, request: Requests) => Promise<Result>): Promise<Result> {
		const tx = await connection.begin((db) => db.transaction(stores, 'readwrite', { durability: 'strict' }));
		const pending: Promise<unknown>[] = [tx.done];
		try {
			const result = await work(tx, (request) => pending.push(request));
			await Promise.all(pending);
			return result;
		} catch (cause) {
			abort(tx); // a put that throws would otherwise leave the puts before it to be committed
			await Promise.allSettled(pending);
			throw tx.error ?? cause;
		}
	}

	return {
		/** The show kept here; where there is none yet, `makeShow` gives it and it is kept from then on. */
		openShow: (makeShow: () => Show): Promise<StoredShow> =>
			write(async (tx, request) => {
				const record = await tx.objectStore('shows').get(IDBKeyRange.lowerBound(''));
				if (record) {
					const [rows, ticks] = await Promise.all([
						tx.objectStore('rows').getAll(rowsOf(record.id)),
						tx.objectStore('ticks').getAll(rowsOf(record.id)),
					]);
					return stored(record, rows, ticks);
				}
				const show = makeShow();
				return { show, revision: await putShow(tx, request, show, 0) };
			}),

		/** The show as it is kept now. */
		async read(showId: string): Promise<StoredShow> {
			const tx = await connection.begin((db) => db.transaction(stores));
			const [record, rows, ticks] = await Promise.all([
				tx.objectStore('shows').get(showId),
				tx.objectStore('rows').getAll(rowsOf(showId)),
				tx.objectStore('ticks').getAll(rowsOf(showId)),
				tx.done,
			]);
			if (!record) throw new ShowMissing(showId);
			return stored(record, rows, ticks);
		},

		/**
		 * Keeps one edit, in one transaction. It is made on what is kept, which may be more than the tab has seen: two tabs
		 * that change different cells of a row lose neither.
		 * @returns the revision that it makes
		 */
		apply: (showId: string, edit: Edit): Promise<number> =>
			write(async (tx, request) => {
				const record = await tx.objectStore('shows').get(showId);
				if (!record) throw new ShowMissing(showId);
				const rows = tx.objectStore('rows');
				const keyOf = (diff: RowDiff): [string, RowId] => [showId, rowIdOf(diff)];
				const nothing = Promise.resolve(undefined);
				const current = await Promise.all(edit.rows.map((diff) => (diff.before ? rows.get(keyOf(diff)) : nothing)));
				edit.rows.forEach((diff, index) => {
					const row = mergeRow(current[index], diff);
					request(row ? rows.put(row, keyOf(diff)) : rows.delete(keyOf(diff)));
				});
				const ticks = tx.objectStore('ticks');
				for (const { before, after } of edit.ticks ?? [])
					request(after ? ticks.put(after, keyOfTick(showId, after)) : ticks.delete(keyOfTick(showId, before!)));
				const { name, settings, cutSheets = [] } = apply({ ...record, rows: [] }, { ...edit, rows: [] });
				const revision = record.revision + 1;
				request(tx.objectStore('shows').put({ ...record, name, settings, cutSheets, revision }));
				return revision;
			}),

		/**
		 * Keeps a whole show in place of what is kept of it.
		 * @param seen the last revision that the tab has seen; the new one is after it, and after the one that is kept
		 * @returns the revision that it makes
		 */
		keep: (show: Show, seen = 0): Promise<number> => write((tx, request) => putShow(tx, request, show, seen)),

		/** Keeps which step is in hand at the bench; that is no edit of the show. */
		keepAtBench: (showId: string, atBench: string): Promise<void> =>
			write(async (tx, request) => {
				const record = await tx.objectStore('shows').get(showId);
				if (record) request(tx.objectStore('shows').put({ ...record, atBench }));
			}),

		close: () => connection.close(),
	};
}

/** See `openShowStore`. */
export type ShowStore = ReturnType<typeof openShowStore>;

const stored = (
	{ id, name, settings, cutSheets = [], revision, atBench }: ShowRecord,
	rows: readonly Row[],
	ticks: readonly Tick[],
): StoredShow => ({
	show: {
		...{ id, name, settings, rows: rows.toSorted(byOrder) },
		...(ticks.length > 0 && { ticks }),
		...(cutSheets.length > 0 && { cutSheets }),
	},
	revision,
	...(atBench !== undefined && { atBench }),
});

async function putShow(tx: Writing, request: Requests, show: Show, seen: number): Promise<number> {
	const { id, name, settings, rows, ticks = [], cutSheets = [] } = show;
	const before = await tx.objectStore('shows').get(id);
	const revision = Math.max(seen, before?.revision ?? 0) + 1;
	request(tx.objectStore('shows').put({ ...before, id, name, settings, cutSheets, revision }));
	request(tx.objectStore('rows').delete(rowsOf(id)));
	for (const row of rows) request(tx.objectStore('rows').put(row, [id, row.id]));
	request(tx.objectStore('ticks').delete(rowsOf(id)));
	for (const tick of ticks) request(tx.objectStore('ticks').put(tick, keyOfTick(id, tick)));
	return revision;
}

/** Undoes all that a transaction has done, unless it has failed and done so by itself. */
function abort(tx: Writing): void {
	try {
		tx.abort();
	} catch (cause) {
		if ((cause as DOMException).name !== 'InvalidStateError') throw cause;
	}
}
