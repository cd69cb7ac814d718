import type { PartApart } from '../core/show/parts.ts';
import type { Connection } from './connection.ts';
import { type Damage, damageIn } from './damage.ts';
import { type RecordPutAside, type Schema, storesApart } from './schema.ts';
import { type Requests, write, type Writing } from './writing.ts';

/** The stores whose records may be damaged. */
export type CheckedStore = PartApart | 'shows' | 'exchanges' | 'matchings';

/** Where a damaged record is. */
export interface Place {
	readonly store: CheckedStore;
	readonly key: IDBValidKey;
}

/** What was read of a store: what can be used, and where what is damaged is. */
export interface SoundRecords<Value> {
	readonly values: readonly Value[];
	readonly damaged: readonly Place[];
}

interface StoreToRead<Value> {
	readonly name: string;
	getAll(range?: IDBKeyRange, count?: number): Promise<Value[]>;
	getAllKeys(range?: IDBKeyRange, count?: number): Promise<IDBValidKey[]>;
}

/** A store as it may be: with records of any form, under any keys. */
interface StoreOfAnything extends StoreToRead<unknown> {
	readonly keyPath: unknown;
	get(key: IDBValidKey): Promise<unknown>;
	put(value: unknown, key?: IDBValidKey): Promise<unknown>;
	delete(key: IDBValidKey): Promise<void>;
}

const storeOf = (tx: Writing, name: CheckedStore) => tx.objectStore(name) as unknown as StoreOfAnything;

/** How many records are read and looked at before the page may do something else. */
const atATime = 500;

/** Reads records of a store, a part at a time. A damaged one harms no other: what can be used of it is among the values. */
export async function readSound<Value>(store: StoreToRead<Value>, range?: IDBKeyRange): Promise<SoundRecords<Value>> {
	const values: Value[] = [];
	const damaged: Place[] = [];
	for (let rest = range; ;) {
		const [keys, kept] = await Promise.all([store.getAllKeys(rest, atATime), store.getAll(rest, atATime)]);
		for (const [place, key] of keys.entries()) {
			const value = kept[place]!;
			const damage = damageIn(store.name, key, value);
			if (damage) damaged.push({ store: store.name as CheckedStore, key });
			if (!damage) values.push(value);
			else if (damage.instead !== undefined) values.push(damage.instead as Value);
		}
		if (keys.length < atATime) return { values, damaged };
		const last = keys.at(-1);
		rest = range ? IDBKeyRange.bound(last, range.upper, true, range.upperOpen) : IDBKeyRange.lowerBound(last, true);
	}
}

/** Reads one record of a store in a transaction that writes; a damaged one is put aside by it. */
export async function getSound<Name extends CheckedStore>(
	tx: Writing,
	request: Requests,
	store: Name,
	key: Schema[Name]['key'],
): Promise<Schema[Name]['value'] | undefined> {
	const value = await storeOf(tx, store).get(key);
	const damage = value === undefined ? undefined : damageIn(store, key, value);
	if (damage) move(tx, request, { store, key }, value, damage);
	return (damage ? damage.instead : value) as Schema[Name]['value'] | undefined;
}

/**
 * Puts damaged records aside, in the place of each what can be used of it. Where there is no room for that they stay
 * where they are: they harm nothing there, and are put aside the next time.
 */
export async function putAside(connection: Connection, places: readonly Place[]): Promise<void> {
	if (places.length === 0) return;
	const all = write(connection, async (tx, request) => {
		for (const place of places) await moveIfDamaged(tx, request, place);
	});
	await all.catch(() => undefined);
}

/** Another tab may have put it aside meanwhile. */
async function moveIfDamaged(tx: Writing, request: Requests, place: Place): Promise<void> {
	const { store, key } = place;
	const value = await storeOf(tx, store).get(key);
	const damage = value === undefined ? undefined : damageIn(store, key, value);
	if (!damage) return;
	move(tx, request, place, value, damage);
	if (store === 'shows' && damage.instead === undefined) await moveItems(tx, request, key, damage);
}

/** What belongs to a show that nothing can open goes with it. */
async function moveItems(tx: Writing, request: Requests, id: IDBValidKey, { problem }: Damage): Promise<void> {
	request(tx.objectStore('steps').delete(IDBKeyRange.bound([id], [id, []])));
	for (const store of [...storesApart, 'exchanges'] as const) {
		const range = IDBKeyRange.bound([id], [id, []]);
		const [keys, values] = await Promise.all([storeOf(tx, store).getAllKeys(range), storeOf(tx, store).getAll(range)]);
		for (const [at, key] of keys.entries())
			move(tx, request, { store, key }, values[at], { problem: `of its show, ${problem}` });
	}
}

function move(
	tx: Writing,
	request: Requests,
	{ store: name, key }: Place,
	value: unknown,
	{ problem, instead }: Damage,
): void {
	const store = storeOf(tx, name);
	request(tx.objectStore('putAside').add(recordPutAside(name, key, value, problem)));
	if (instead === undefined) request(store.delete(key));
	else request(store.keyPath === null ? store.put(instead, key) : store.put(instead));
}

/** See `RecordPutAside`. */
export const recordPutAside = (store: string, key: unknown, value: unknown, problem: string): RecordPutAside => ({
	...{ store, key, value, problem },
	at: Date.now(),
	isTold: false,
});
