import type { Show } from '../core/show/show.ts';
import { openConnection } from './connection.ts';
import { readSound } from './putAside.ts';
import type { CopyAbout } from './secondCopies.ts';
import { putShow } from './putShow.ts';
import { write } from './writing.ts';

/** A show as its second copy has it. */
export interface CopiedShow {
	readonly show: Show;
	readonly about: CopyAbout;
}

/** What has come of putting shows back, by their ids. */
export interface PutBack {
	readonly putBack: ReadonlySet<string>;
	/** The shows that should be there and are not. */
	readonly missing: ReadonlySet<string>;
}

/**
 * Puts shows back that are kept no more, all of them or none; one that is kept, by another tab meanwhile, stays as it is.
 * @param expected the ids of the shows that should be there
 */
export async function putBack(
	databaseName: string,
	copies: readonly CopiedShow[],
	expected: readonly string[],
): Promise<PutBack> {
	const connection = openConnection(databaseName, {});
	try {
		return await write(connection, async (tx, request) => {
			const kept = new Set((await readSound(tx.objectStore('shows'))).values.map(({ id }) => id));
			const lacking = copies.filter(({ show }) => !kept.has(show.id));
			for (const { show, about } of lacking) {
				const { id: _, at: __, revision, ...marks } = about;
				await putShow(tx, request, show, { seen: revision - 1, ...marks });
			}
			const restored = new Set(lacking.map(({ show }) => show.id));
			return { putBack: restored, missing: new Set(expected.filter((id) => !kept.has(id) && !restored.has(id))) };
		});
	} finally {
		connection.close();
	}
}
