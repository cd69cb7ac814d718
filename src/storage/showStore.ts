import type { IDBPTransaction } from 'idb';
import { type Exchange, worthKeeping } from '../core/merge/exchange.ts';
import type { Edit } from '../core/show/edit.ts';
import type { PartApart } from '../core/show/parts.ts';
import type { Show } from '../core/show/show.ts';
import { changeSteps, type InSteps, readSteps, type StepFound, type StepsChange } from './stepStore.ts';
import { type Connection, type ConnectionEvents, openConnection } from './connection.ts';
import { applyToParts, readParts } from './partStores.ts';
import { putShow } from './putShow.ts';
import { getSound, type Place, putAside, readSound } from './putAside.ts';
import { type Copied, type LeftAt, type Schema, type ShowRecord, storesApart } from './schema.ts';
import { rangeOfShow, type Requests, write, type Writing } from './writing.ts';

/** A show as it is kept, and how many transactions have made it so. */
export interface StoredShow {
	readonly show: Show;
	readonly revision: number;
	/** The step that was last active at the bench. */
	readonly atBench?: string;
	/** The step that was last active at the knife. */
	readonly atKnife?: string;
	/** The place and selection at which it was last left. */
	readonly left?: LeftAt;
	/** The last copy of it that left this device. */
	readonly copied?: Copied;
	/** How many of the transactions since that copy are no change to back up; see `ShowRecord`. */
	readonly takenBack?: number;
	/** The name of the error, where it was begun just now and could not be kept. */
	readonly notKept?: string;
}

/** A show as it was opened, with the steps to undo and redo. */
export interface OpenedShow extends StoredShow {
	readonly steps?: readonly StepFound[];
}

/** Thrown where a show that should be kept is not: the browser has cleared its storage. */
export class ShowMissing extends Error {
	override readonly name = 'ShowMissing';
}

/**
 * The shows kept on this device. Everything goes in and out as plain data. All that changes anything is one
 * transaction, on disk before its promise resolves.
 */
export function openShowStore(databaseName: string, events: ConnectionEvents = {}) {
	const connection = openConnection(databaseName, events);

	const writes = <Result>(work: (tx: Writing, request: Requests) => Promise<Result>) => write(connection, work);

	/** Begins a show where there is none; another tab may have begun one meanwhile. */
	async function beginShow(makeShow: () => Show, now: number): Promise<StoredShow> {
		const begun = await writes(async (tx, request) => {
			const record = toOpen((await readSound(tx.objectStore('shows'))).values, undefined);
			if (record) return record.id;
			const show = makeShow();
			return { show, revision: await putShow(tx, request, show, { openedAt: now }) };
		});
		return typeof begun === 'string' ? readStored(connection, begun) : begun;
	}

	/** Where a new show cannot be kept there is nothing to lose: it opens all the same, and is kept with its first edit. */
	const beginAnyhow = (makeShow: () => Show, now: number): Promise<StoredShow> =>
		beginShow(makeShow, now).catch((cause: unknown) => unkept(makeShow(), cause, full));

	return {
		/**
		 * The show that is wanted, else the one that was open last; where there is none yet, `makeShow` gives it and it is
		 * kept from then on, or `notKept` says why not.
		 * @param now in milliseconds since 1970
		 * @param findLost told which shows there are; resolves with whether it has put others back
		 */
		async openShow(
			makeShow: () => Show,
			wanted?: string,
			now = Date.now(),
			findLost: (there: readonly string[]) => Promise<boolean> = () => Promise.resolve(false),
		): Promise<StoredShow> {
			const tx = await connection
				.begin((db) => db.transaction(['shows', ...storesApart]))
				.catch((cause: unknown) => unkept(makeShow(), cause, denied));
			if ('notKept' in tx) return tx;
			const { values, damaged } = await readSound(tx.objectStore('shows'));
			const record = toOpen(values, wanted);
			const there = record && (await readWhole(tx, record));
			await putAside(connection, [...damaged, ...(there?.damaged ?? [])]);
			if (await findLost(values.map(({ id }) => id))) return this.openShow(makeShow, wanted, now);
			return there?.stored ?? beginAnyhow(makeShow, now);
		},

		/** The steps of a show that are kept for undo and redo, oldest first. */
		steps: (showId: string, inSteps?: InSteps): Promise<readonly StepFound[]> => readSteps(connection, showId, inSteps),

		/** The show as it is kept now. */
		read: (showId: string): Promise<StoredShow> => readStored(connection, showId),

		/**
		 * Keeps one edit, in one transaction. It is made on what is kept, which may be more than the tab has seen: two tabs
		 * that change different cells of a row lose neither.
		 * @param takenBack how many transactions since the last copy are no change with it, itself counted
		 * @param steps what becomes of the steps that are kept for undo and redo
		 * @returns the revision that it makes
		 */
		apply: (showId: string, edit: Edit, takenBack = 0, steps?: StepsChange): Promise<number> =>
			writes(async (tx, request) => {
				const record = await getSound(tx, request, 'shows', showId);
				if (!record) throw new ShowMissing(showId);
				// A show that is still typed into, in another tab, is not deleted.
				const { deletedAt: _, ...kept } = await applyToParts(tx, request, record, edit);
				const revision = record.revision + 1;
				const allTakenBack = (record.takenBack ?? 0) + takenBack;
				const counted = { revision, ...(allTakenBack > 0 && { takenBack: allTakenBack }) };
				request(tx.objectStore('shows').put({ ...kept, ...counted }));
				if (steps) await changeSteps(tx, request, showId, steps, revision);
				const { exchange } = edit;
				if (exchange) await setStanding(tx, request, showId, exchange.after ?? exchange.before!, !!exchange.after);
				return revision;
			}),

		/**
		 * Keeps a whole show in place of what is kept of it.
		 * @param seen the last revision that the tab has seen; the new one is after it, and after the one that is kept
		 * @returns the revision that it makes
		 */
		keep: (show: Show, seen = 0): Promise<number> => writes((tx, request) => putShow(tx, request, show, { seen })),

		/** Keeps the active step of the bench or the knife, the open place, or when the show was opened; none of these is an edit. */
		keepPlace: (showId: string, place: Pick<ShowRecord, 'atBench' | 'atKnife' | 'left' | 'openedAt'>): Promise<void> =>
			writes(async (tx, request) => {
				const record = await getSound(tx, request, 'shows', showId);
				if (record) request(tx.objectStore('shows').put({ ...record, ...place }));
			}),

		/**
		 * Keeps that a copy of the show has left this device.
		 * @param takenBack how many of the transactions since that copy are no change to back up
		 */
		keepCopied: (showId: string, copied: Copied, takenBack = 0): Promise<void> =>
			writes(async (tx, request) => {
				const record = await getSound(tx, request, 'shows', showId);
				if (!record) return;
				const { takenBack: _, ...kept } = record;
				request(tx.objectStore('shows').put({ ...kept, copied, ...(takenBack > 0 && { takenBack }) }));
			}),

		/** The exchanges of a show that stand, newest first. */
		async exchanges(showId: string): Promise<readonly Exchange[]> {
			const tx = await connection.begin((db) => db.transaction('exchanges'));
			const { values, damaged } = await readSound(tx.store, rangeOfShow(showId));
			await putAside(connection, damaged);
			return values.filter(({ stands }) => stands).sort((a, b) => b.at - a.at);
		},

		/**
		 * Keeps what a file held that came in or went out, and forgets what is too old to be needed.
		 * @param stands false for one that stands only once the edit is kept that names it
		 */
		keepExchange: (showId: string, exchange: Exchange, stands: boolean): Promise<void> =>
			writes(async (tx, request) => {
				const exchanges = tx.objectStore('exchanges');
				const kept = [{ id: exchange.id, at: exchange.at, rows: exchange.rows.length }];
				for (let cursor = await exchanges.index('worth').openKeyCursor(); cursor; cursor = await cursor.continue()) {
					const [ofShow, id] = cursor.primaryKey;
					const [at, rows] = cursor.key;
					if (ofShow === showId) kept.push({ id, at, rows });
				}
				const worth = new Set(worthKeeping(kept));
				for (const each of kept) if (!worth.has(each)) request(exchanges.delete([showId, each.id]));
				request(exchanges.put({ ...exchange, stands }, [showId, exchange.id]));
			}),

		close: () => connection.close(),
	};
}

/** See `openShowStore`. */
export type ShowStore = ReturnType<typeof openShowStore>;

/** What a browser says that lets a page keep nothing at all, as some do in private windows. */
const denied = new Set(['SecurityError', 'NotSupportedError']);
/** What it says where a page may keep things, and there is no room for more. */
const full = new Set(['QuotaExceededError']);

/** A new show that cannot be kept for one of these reasons; any other is thrown again, for there may be shows. */
function unkept(show: Show, cause: unknown, reasons: ReadonlySet<string>): StoredShow & { readonly notKept: string } {
	const { name } = cause as Error;
	if (!reasons.has(name)) throw cause;
	return { show, revision: 1, notKept: name };
}

/** The record of the show to open: the one wanted, else the last that was open, those put away only if there is no other. */
function toOpen(records: readonly ShowRecord[], wanted: string | undefined): ShowRecord | undefined {
	const there = records.filter(({ deletedAt }) => deletedAt === undefined);
	const lastFirst = there.toSorted((a, b) => (b.openedAt ?? 0) - (a.openedAt ?? 0));
	return there.find(({ id }) => id === wanted) ?? lastFirst.find(({ isArchived }) => !isArchived) ?? lastFirst[0];
}

/** A show as it is kept now. */
export async function readStored(connection: Connection, showId: string): Promise<StoredShow> {
	const tx = await connection.begin((db) => db.transaction(['shows', ...storesApart]));
	const { values, damaged } = await readSound(tx.objectStore('shows'), IDBKeyRange.only(showId));
	const there = values[0] && (await readWhole(tx, values[0]));
	await putAside(connection, [...damaged, ...(there?.damaged ?? [])]);
	if (!there) throw new ShowMissing(showId);
	return there.stored;
}

type WholeReading = IDBPTransaction<Schema, ('shows' | PartApart)[]>;

/** What is kept of a show, put together. */
async function readWhole(
	tx: WholeReading,
	record: ShowRecord,
): Promise<{ readonly stored: StoredShow; readonly damaged: readonly Place[] }> {
	const { revision, atBench, atKnife, left, copied, takenBack } = record;
	const damaged: Place[] = [];
	const show = await readParts(record, async (name) => {
		const items = await readSound(tx.objectStore(name), rangeOfShow(record.id));
		damaged.push(...items.damaged);
		return items.values;
	});
	const stored = {
		...{ show, revision },
		...(atBench !== undefined && { atBench }),
		...(atKnife !== undefined && { atKnife }),
		...(left && { left }),
		...(copied && { copied }),
		...(takenBack !== undefined && { takenBack }),
	};
	return { stored, damaged };
}

/** Keeps or removes an exchange, in the transaction of the edit that imports it or undoes that. */
async function setStanding(tx: Writing, request: Requests, showId: string, id: string, stands: boolean): Promise<void> {
	const exchanges = tx.objectStore('exchanges');
	const kept = await getSound(tx, request, 'exchanges', [showId, id]);
	if (kept) request(exchanges.put({ ...kept, stands }, [showId, id]));
}
