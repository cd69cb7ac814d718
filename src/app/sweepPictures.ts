import type { Row } from '../core/show/row.ts';
import { openShowStore } from '../storage/showStore.ts';
import { inSlices } from './inSlices.ts';
import type { Shelf } from './shelf.svelte.ts';

/**
 * Removes pictures that nothing has used for a day: no row of any show, and no step of undo or redo. Where a show cannot
 * be read none is removed, for they may be its pictures.
 */
export const sweepPictures = (shelf: Shelf, now = Date.now()): Promise<void> =>
	withRowsOf(shelf, (rows) => shelf.session.pictures.sweep(rows, now));

/** Lets go of the pictures that an import has brought which was left, but for those that a row of any show has, undo's too. */
export const letGoPictures = async (shelf: Shelf, by: string): Promise<void> => {
	await shelf.session.pictures.announce().catch(() => undefined);
	return withRowsOf(shelf, (rows) => shelf.session.pictures.letGo(rows, by));
};

async function withRowsOf(shelf: Shelf, work: (rows: readonly Row[]) => Promise<void>): Promise<void> {
	const { pictures } = shelf.session;
	await pictures.whenListed();
	if (pictures.known.byHash.size === 0) return;
	const rows: Row[] = [];
	const store = openShowStore(shelf.databaseName);
	try {
		await shelf.refresh();
		for (const { id } of shelf.shows) {
			rows.push(...(await shelf.read(id)).rows);
			// Undo, which stays over a reload, brings rows back.
			for (const { edit } of await store.steps(id, inSlices))
				rows.push(...edit.rows.flatMap(({ before, after }) => [before ?? [], after ?? []].flat()));
		}
		rows.push(...shelf.session.show.rows);
		await work(rows);
	} catch {
		// the next time
	} finally {
		store.close();
	}
}
