import type { Show } from '../core/show/show.ts';
import type { Shelf } from './shelf.svelte.ts';

/** A show of the shelf, whole. */
export interface ShowOfShelf {
	readonly show: Show;
	readonly isArchived: boolean;
}

/** All shows as they were, for a copy that is about to leave. */
export interface CopyOfAll {
	readonly shows: readonly ShowOfShelf[];
	/** Counts them as given, as they were then. */
	readonly note: (at: number) => Promise<void>;
	/** They have not left. */
	readonly forget: () => void;
}

/** All shows that are not deleted, whole; the open one too where this device could not keep it. */
export async function everyShow(shelf: Shelf): Promise<readonly ShowOfShelf[]> {
	await shelf.session.whenSaved().catch(() => undefined);
	await shelf.refresh();
	const kept = shelf.shows.filter(({ deletedAt }) => deletedAt === undefined);
	const all = await Promise.all(
		kept.map(async ({ id, isArchived = false }) => ({ show: await shelf.read(id), isArchived })),
	);
	const { show } = shelf.session;
	return shelf.shows.some(({ id }) => id === show.id) ? all : [{ show, isArchived: false }, ...all];
}

/** All shows, for a copy of them that is about to leave. */
export async function copyAll(shelf: Shelf): Promise<CopyOfAll> {
	const { session } = shelf;
	const mark = session.copies.mark();
	const shows = await everyShow(shelf);
	const others = shelf.shows.filter(({ id, deletedAt }) => deletedAt === undefined && id !== session.show.id);
	return {
		shows,
		note: async (at) => {
			await shelf.noteCopied(others, at);
			await session.copies.note(mark, at);
		},
		forget: () => session.copies.forget(mark),
	};
}
