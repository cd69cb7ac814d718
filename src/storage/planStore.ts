import { type DBSchema, openDB } from 'idb';
import type { PlannedBoard } from '../core/sheets/plannedSheets.ts';

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
	const opening = openDB<PlanSchema>(`${databaseName} plans`, 1, {
		upgrade: (db) => void db.createObjectStore('plans'),
	}).catch(() => undefined);

	return {
		/** The plans of a show; none where there are none. */
		async read(showId: string): Promise<readonly PlannedBoard[]> {
			const kept = await opening.then((db) => db?.get('plans', showId)).catch(() => undefined);
			return kept?.form === formVersion ? kept.boards : [];
		},

		/** Keeps the plans of a show in place of those before. @param now in milliseconds since 1970 */
		async keep(showId: string, boards: readonly PlannedBoard[], now = Date.now()): Promise<void> {
			const db = await opening;
			if (!db) return;
			try {
				const tx = db.transaction('plans', 'readwrite');
				const [keys, all] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()]);
				const oldest = keys.map((key, place) => ({ key, at: all[place]!.at })).sort((a, b) => b.at - a.at);
				for (const { key } of oldest.slice(mostShows - 1)) if (key !== showId) void tx.store.delete(key);
				await Promise.all([tx.store.put({ form: formVersion, at: now, boards }, showId), tx.done]);
			} catch {
				// no room, or the database is gone: the plans are worked out again next time
			}
		},

		close: () => void opening.then((db) => db?.close()),
	};
}

/** See `openPlanStore`. */
export type PlanStore = ReturnType<typeof openPlanStore>;
