import { deleteDB } from 'idb';
import { onTestFinished } from 'vitest';
import { openShelf } from '../../../src/app/openShelf.ts';
import type { Shelf } from '../../../src/app/shelf.svelte.ts';
import { on } from './edits.ts';

/** Opens a shelf that closes with the test. */
export async function openShelfOf(databaseName: string): Promise<Shelf> {
	const shelf = await openShelf({ databaseName, showId: undefined });
	onTestFinished(() => void shelf.close().catch(() => undefined));
	return shelf;
}

/** Types titles into the show that is open, each a print. */
export async function type({ session, refresh }: Shelf, ...titles: readonly string[]): Promise<void> {
	for (const title of titles) on(session).addRows([{ cells: { title } }], session.show.rows.length, 'Add row');
	await session.whenSaved();
	await refresh();
}

export const titlesOf = ({ rows }: Shelf['session']['show']) => rows.map(({ typed }) => typed.title);

/** The shows that are not deleted: names and titles. */
export async function held(shelf: Shelf): Promise<Record<string, readonly (string | undefined)[]>> {
	await shelf.refresh();
	const there = shelf.shows.filter(({ deletedAt }) => deletedAt === undefined);
	const titles = await Promise.all(there.map(async ({ id, name }) => [name, titlesOf(await shelf.read(id))] as const));
	return Object.fromEntries(titles);
}

/** Three shows: Spring, open last, with two prints; Autumn with one, archived; and one that is deleted. */
export async function withShows(databaseName: string): Promise<Shelf> {
	const shelf = await openShelfOf(databaseName);
	on(shelf.session).rename('Autumn');
	await type(shelf, 'Quay');
	const autumn = shelf.session.show.id;
	await shelf.open((await shelf.create())!);
	on(shelf.session).rename('Winter');
	await type(shelf, 'Ice');
	const winter = shelf.session.show.id;
	await shelf.open((await shelf.create())!);
	on(shelf.session).rename('Spring');
	await type(shelf, 'Pier', 'Low water');
	await shelf.archive(autumn, true);
	await shelf.delete(winter);
	return shelf;
}

/** The browser finds its database damaged and begins an empty one. */
export async function lose(shelf: Shelf): Promise<void> {
	const { databaseName } = shelf;
	await shelf.close();
	await deleteDB(databaseName);
	await deleteDB(`${databaseName} plans`);
}
