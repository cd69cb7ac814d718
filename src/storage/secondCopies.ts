import type { Copied } from './schema.ts';

/** What is known of a second copy of a show before it is read. */
export interface CopyAbout {
	readonly id: string;
	/** The revision of the show that it has. */
	readonly revision: number;
	/** When it was made, in milliseconds since 1970. */
	readonly at: number;
	/** When the show was last opened, in milliseconds since 1970; as it was when the copy was made. */
	readonly openedAt?: number;
	readonly isArchived?: boolean;
	/** When the show was deleted, in milliseconds since 1970. */
	readonly deletedAt?: number;
	readonly copied?: Copied;
	readonly takenBack?: number;
}

/** The name of the cache that they are in. */
export const nameOfCopies = (databaseName: string): string => `${databaseName} second copies`;

/** The addresses of the copies begin so. Nothing is ever fetched from there. */
const base = 'https://second-copy.invalid/';

const addressOf = (about: CopyAbout): string => base + encodeURIComponent(JSON.stringify(about));

/** What an address says of its copy; nothing where it is none of ours. */
function aboutOf(address: string): CopyAbout[] {
	try {
		const about = JSON.parse(decodeURIComponent(address.slice(base.length))) as Partial<CopyAbout> | null;
		const isOurs =
			typeof about?.id === 'string' && Number.isSafeInteger(about.revision) && typeof about.at === 'number';
		return isOurs ? [about as CopyAbout] : [];
	} catch {
		return [];
	}
}

/**
 * A second copy of each show, as the text of a file, outside the database: where a browser finds its database damaged it
 * begins an empty one. They lie in the cache storage, which browsers keep in other files. Where there is none, or it
 * fails, there are no copies, and everything rejects.
 */
export function openSecondCopies(databaseName: string) {
	const name = nameOfCopies(databaseName);
	const open = () => caches.open(name);

	return {
		/** All copies, of one show maybe more than one: the browser may have been killed between two. */
		async list(): Promise<readonly CopyAbout[]> {
			if (!(await caches.has(name))) return [];
			return (await (await open()).keys()).flatMap(({ url }) => aboutOf(url));
		},

		/** The text of a copy; undefined where it is gone. */
		read: async (about: CopyAbout): Promise<string | undefined> =>
			(await (await open()).match(addressOf(about)))?.text(),

		/** Keeps a copy, and only then lets go of those before it. */
		async keep(about: CopyAbout, text: Blob, before: readonly CopyAbout[]): Promise<void> {
			const cache = await open();
			await cache.put(addressOf(about), new Response(text));
			for (const each of before) await cache.delete(addressOf(each));
		},

		/**
		 * Keeps that another thing is known of a show, with the text of a copy as it is: the page need not make it again.
		 * @returns whether that copy is there
		 */
		async mark(about: CopyAbout, same: CopyAbout, before: readonly CopyAbout[]): Promise<boolean> {
			const cache = await open();
			const response = await cache.match(addressOf(same));
			if (!response) return false;
			await cache.put(addressOf(about), response);
			for (const each of before) await cache.delete(addressOf(each));
			return true;
		},

		/** Lets go of a copy. */
		remove: async (about: CopyAbout): Promise<void> => void (await (await open()).delete(addressOf(about))),
	};
}

/** Lets go of all copies of which something is true. */
export async function letGoOfCopies(databaseName: string, isOver: (about: CopyAbout) => boolean): Promise<void> {
	const copies = openSecondCopies(databaseName);
	for (const about of (await copies.list()).filter(isOver)) await copies.remove(about);
}

/** See `openSecondCopies`. */
export type SecondCopies = ReturnType<typeof openSecondCopies>;
