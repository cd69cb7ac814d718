import type { IDBPTransaction } from 'idb';
import type { PartApart } from '../core/show/parts.ts';
import { abort } from './abort.ts';
import type { Connection } from './connection.ts';
import { type Schema, storesApart } from './schema.ts';

const stores: ('shows' | 'exchanges' | 'matchings' | 'steps' | 'putAside' | PartApart)[] = [
	'shows',
	...storesApart,
	'exchanges',
	'matchings',
	'steps',
	'putAside',
];

/** A transaction that writes. */
export type Writing = IDBPTransaction<Schema, typeof stores, 'readwrite'>;

/** Takes a request that the transaction waits for, and is undone with. */
export type Requests = (request: Promise<unknown>) => void;

/** Does some work in one transaction: all of it is kept, or none. */
export async function write<Result>(
	connection: Connection,
	work: (tx: Writing, request: Requests) => Promise<Result>,
): Promise<Result> {
	const tx = await connection.begin((db) => db.transaction(stores, 'readwrite', { durability: 'strict' }));
	const pending: Promise<unknown>[] = [tx.done];
	try {
		const result = await work(tx, (request) => {
			request.catch(() => undefined); // it may fail while the work waits for something else; all are waited for below
			pending.push(request);
		});
		await Promise.all(pending);
		return result;
	} catch (cause) {
		abort(tx); // a put that throws would otherwise leave the puts before it to be committed
		await Promise.allSettled(pending);
		throw tx.error ?? cause;
	}
}

/** All that belongs to a show in a store that is keyed by show first: an array sorts after every text. */
export const rangeOfShow = (showId: string) => IDBKeyRange.bound([showId], [showId, []]);

/** How many requests are made before the page may do something else in between. */
const slice = 400;

/** Makes many requests in slices, so that a large file does not hold up typing; the transaction stays open between. */
export async function inSlices<Item>(
	items: readonly Item[],
	request: Requests,
	make: (item: Item) => Promise<unknown>,
): Promise<void> {
	for (let start = 0; start < items.length; start += slice) {
		let last: Promise<unknown> | undefined;
		for (const item of items.slice(start, start + slice)) request((last = make(item)));
		if (start + slice < items.length) await last;
	}
}
