import { type FileReport, restored } from '../core/imports/fileReports.ts';
import type { Show } from '../core/show/show.ts';
import { isSameShow, type StandingOfShow } from './backupStandings.ts';
import type { Shelf } from './shelf.svelte.ts';

/**
 * Puts back the shows of a backup that this device lacks, up to the first that cannot be kept.
 * @returns what has come of it
 */
export async function restoreShows(shelf: Shelf, shows: readonly StandingOfShow[]): Promise<FileReport> {
	const missing = shows.filter(({ standing }) => standing === 'missing');
	const names: string[] = [];
	for (const { show, isArchived } of missing) {
		if (!(await putBack(shelf, show, isArchived))) break;
		names.push(show.name);
	}
	return restored(names, names.length === missing.length ? undefined : shelf.problem);
}

/** Puts a show back; one that was deleted comes back as it was, or stays so beside this one where that is another. */
async function putBack(shelf: Shelf, show: Show, isArchived: boolean): Promise<boolean> {
	if (!shelf.shows.some(({ id }) => id === show.id)) return shelf.keep([show], isArchived, Date.now());
	const deleted = await shelf.read(show.id).catch(() => undefined);
	if (deleted && isSameShow(deleted, show)) return shelf.bringBack(show.id);
	return (await shelf.add([{ ...show, name: shelf.freeName(show.name) }], isArchived)) !== undefined;
}
