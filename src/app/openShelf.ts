import { forgottenBefore } from '../core/device/shelf.ts';
import { openShelfStore } from '../storage/shelfStore.ts';
import { LostShows } from './lostShows.svelte.ts';
import { openSession, type SessionOptions } from './openSession.ts';
import { Shelf } from './shelf.svelte.ts';
import { showOfTab } from './tabShow.ts';

/**
 * Opens the show that was open in this tab, else the one that was open last, and the shelf with all of them.
 * @returns rejects with a sentence where what is kept cannot be opened; it is not touched then
 */
export async function openShelf(options: SessionOptions = {}): Promise<Shelf> {
	const { databaseName = 'evenhang' } = options;
	const lost = new LostShows(databaseName);
	const session = await openSession({ showId: showOfTab(), lost, ...options });
	const store = openShelfStore(databaseName);
	const shelf = new Shelf(session, store, lost, { ...options, databaseName });
	const listed = store
		.forget(forgottenBefore(Date.now()), (ids) => lost.letGo(ids))
		.catch(() => undefined)
		.then(() => shelf.refresh());
	if (!options.isScreenFirst) await listed;
	return shelf;
}
