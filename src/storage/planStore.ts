import { type DBSchema, openDB } from 'idb';
import type { PlannedBoard } from '../core/sheets/plannedSheets.ts';
import { plansProblem } from '../core/sheets/plansProblem.ts';
import { isRecord } from '../core/values/isRecord.ts';
import { recordPutAside } from './putAside.ts';
import { alsoWithoutEnd } from './connection.ts';
import { openPutAsideStore } from './putAsideStore.ts';

/** The form of what is kept; another form is as good as nothing, for plans can be worked out again. */
const formVersion = 1;

/** How many shows have their plans kept; those planned longest ago are forgotten. */
const mostShows = 20;

interface Kept {
	readonly form: number;
	/** When it was kept, in milliseconds since 1970. */
	readonly at: number;
	readonly boards: readonly PlannedBoard[];
}

interface PlanSchema extends DBSchema {
	plans: { key: string; value: Kept };
}

/**
 * The board plans of shows, so that the sheets of a show are those that they were after a reload, half cut or not. They
 * are no part of a show and lie in a database of their own: whatever goes wrong with it, nothing is lost that cannot be
 * worked out again, so no method rejects.
 */
export function openPlanStore(databaseName: string) {
	const open = async () =>
		openDB<PlanSchema>(`${databaseName} plans`, 1, { upgrade: (db) => void db.createObjectStore('plans') });
	const opening = open().catch(() => undefined);

	/** Plans that cannot be used are put aside, for the knife may have begun by them. */
	async function putAside(showId: string, kept: unknown, problem: string): Promise<void> {
		const store = openPutAsideStore(databaseName);
		try {
			await store.add(recordPutAside('plans', showId, kept, problem));
			await (await opening)?.delete('plans', showId);
		} finally {
			store.close();
		}
	}

	return {
		/** The plans of a show; none where there are none. */
		async read(showId: string): Promise<readonly PlannedBoard[]> {
			const kept = await opening
				.then((db) => db && alsoWithoutEnd(db.transaction('plans')).store.get(showId))
				.catch(() => undefined);
			if (kept === undefined || (isRecord(kept) && typeof kept.form === 'number' && kept.form !== formVersion))
				return [];
			const problem = isRecord(kept) && kept.form === formVersion ? plansProblem(kept.boards) : 'it has no known form';
			if (problem === undefined) return kept.boards;
			await putAside(showId, kept, problem).catch(() => undefined);
			return [];
		},

		/** Keeps the plans of a show in place of those before. @param now in milliseconds since 1970 */
		async keep(showId: string, boards: readonly PlannedBoard[], now = Date.now()): Promise<void> {
			const db = await opening;
			if (!db) return;
			try {
				const tx = alsoWithoutEnd(db.transaction('plans', 'readwrite'));
				const [keys, all] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()]);
				const oldest = keys.map((key, place) => ({ key, at: whenKept(all[place]) })).sort((a, b) => b.at - a.at);
				for (const { key } of oldest.slice(mostShows - 1))
					if (key !== showId) void tx.store.delete(key).catch(() => undefined);
				await Promise.all([tx.store.put({ form: formVersion, at: now, boards }, showId), tx.done]);
			} catch {
				// no room, or the database is gone: the plans are worked out again next time
			}
		},

		close: () => void opening.then((db) => db?.close()),
	};
}

/** What has no time that can be read, as the oldest. */
const whenKept = (kept: unknown): number => (isRecord(kept) && typeof kept['at'] === 'number' ? kept['at'] : 0);

/** See `openPlanStore`. */
export type PlanStore = ReturnType<typeof openPlanStore>;
