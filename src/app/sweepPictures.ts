import type { Row } from '../core/show/row.ts';
import { openShowStore } from '../storage/showStore.ts';
import type { Shelf } from './shelf.svelte.ts';

/**
 * Lets go of pictures that no row of any show, nor of a step that undo or redo has, has had for a day. Where a show cannot be read none is let go: they may be
 * its.
 */
export async function sweepPictures(shelf: Shelf, now = Date.now()): Promise<void> {
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
			for (const { edit } of await store.steps(id))
				rows.push(...edit.rows.flatMap(({ before, after }) => [before ?? [], after ?? []].flat()));
		}
		rows.push(...shelf.session.show.rows);
		await pictures.sweep(rows, now);
	} catch {
		// the next time
	} finally {
		store.close();
	}
}
