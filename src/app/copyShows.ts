import { isBegunOnly } from '../core/device/isBegunOnly.ts';
import { isFullOfPictures } from '../core/device/picturesProblem.ts';
import { forgottenBefore } from '../core/device/shelf.ts';
import { isSameValue } from '../core/values/isSameValue.ts';
import type { Show } from '../core/show/show.ts';
import { showDocument } from '../files/showFile.ts';
import { type CopyAbout, letGoOfCopies, openSecondCopies, type SecondCopies } from '../storage/secondCopies.ts';
import { openShelfStore, type ShelvedShow } from '../storage/shelfStore.ts';
import { openShowStore, type ShowStore, type StoredShow } from '../storage/showStore.ts';
import { otherWork } from './inSlices.ts';
import type { Session } from './session.svelte.ts';
import { storageRoom } from './storageRoom.ts';

/** What there is to copy. */
export interface ToCopy {
	readonly databaseName: string;
	/** The show that is open here: where all of it is kept it need not be read. */
	readonly session: Pick<Session, 'show' | 'saved' | 'revision'>;
}

/** Copies each show of which there is no copy as it is kept now; one tab at a time. */
export async function copyShows(shelf: ToCopy): Promise<void> {
	const copy = () => copyNow(shelf);
	if (typeof navigator === 'undefined' || !('locks' in navigator)) return copy();
	await navigator.locks.request(`${shelf.databaseName} second copies`, copy);
}

/** Rejects with the first problem once all shows were tried: one that cannot be copied must not stop the others. */
async function copyNow({ databaseName, session }: ToCopy): Promise<void> {
	const forgotten = forgottenBefore(Date.now());
	const isForgotten = ({ deletedAt = Infinity }: Pick<CopyAbout, 'deletedAt'>) => deletedAt < forgotten;
	await letGoOfCopies(databaseName, isForgotten);
	const copies = openSecondCopies(databaseName);
	const listed = await copies.list();
	const shelf = openShelfStore(databaseName);
	const store = openShowStore(databaseName);
	const room = await roomForCopies();
	const problems: Error[] = [];
	try {
		// As they are kept now: what the page has seen may have been deleted since, in another tab.
		for (const shelved of await shelf.list()) {
			const before = listed.filter(({ id }) => id === shelved.id);
			if (isBegunOnly(shelved) || isForgotten(shelved) || before.some((about) => isOf(about, shelved))) continue;
			try {
				if (await copyOne(copies, shelved, before, room, () => showToCopy(session, store, shelved))) continue;
			} catch (cause) {
				problems.push(cause as Error);
			}
			// What was deleted must not come back from a copy that does not know of it.
			if (shelved.deletedAt !== undefined) for (const each of before) await copies.remove(each);
		}
	} finally {
		shelf.close();
		store.close();
	}
	if (problems[0]) throw problems[0];
}

/** @returns whether there is a copy of the show as it is kept, or another tab will make it */
async function copyOne(
	copies: SecondCopies,
	shelved: ShelvedShow,
	before: readonly CopyAbout[],
	room: RoomForCopies,
	read: () => Promise<Pick<StoredShow, 'show' | 'revision'> | undefined>,
): Promise<boolean> {
	const { id, revision, openedAt } = shelved;
	const about = { id, revision, at: Date.now(), ...(openedAt !== undefined && { openedAt }), ...marksOf(shelved) };
	const same = before.find((each) => each.revision === revision);
	if (!room.has(0)) return false;
	if (same && (await copies.mark(about, same, before))) return true;
	const stored = await read();
	if (!stored) return true;
	const text = new Blob([...(await asText(stored.show))]);
	if (!room.has(text.size)) return false;
	await copies.keep({ ...about, revision: stored.revision }, text, before);
	room.take(text.size);
	return true;
}

/** The room that the browser has, as far as it says. */
type RoomForCopies = Awaited<ReturnType<typeof roomForCopies>>;

async function roomForCopies() {
	const { usage, quota } = await storageRoom();
	let taken = 0;
	return {
		/** Whether there is room for a copy of so many bytes: what is left beside is for what is typed. */
		has: (bytes: number): boolean => !isFullOfPictures(usage === undefined ? usage : usage + taken + bytes, quota),
		take: (bytes: number): void => void (taken += bytes),
	};
}

/** Whether a copy is of the show as it is kept. */
const isOf = ({ at: _, id: __, openedAt: ___, revision, ...marks }: CopyAbout, shelved: ShelvedShow): boolean =>
	revision === shelved.revision && isSameValue(marks, marksOf(shelved));

/** What is kept of a show beside its parts, and goes with the copy. */
const marksOf = ({ isArchived, deletedAt, copied, takenBack }: ShelvedShow) => ({
	...(isArchived && { isArchived }),
	...(deletedAt !== undefined && { deletedAt }),
	...(copied && { copied }),
	...(takenBack !== undefined && { takenBack }),
});

/**
 * A show of that revision or a later one; nothing where another tab copies it. A tab in the back copies its own show only:
 * reading others takes time, and there may be one in front.
 */
async function showToCopy(session: ToCopy['session'], store: ShowStore, { id, revision }: ShelvedShow) {
	const isOwn = session.show.id === id && session.saved.state === 'saved' && session.revision === revision;
	if (isOwn) return { show: session.show, revision };
	return isInBack() ? undefined : store.read(id);
}

const isInBack = (): boolean => typeof document === 'object' && document.visibilityState === 'hidden';

/** How many items of a list are made text before the page may do something else. */
const slice = 400;

/** A show file in pieces, made in slices: a large show must not hold up typing. */
async function asText(show: Show): Promise<readonly string[]> {
	const pieces: string[] = [];
	for (const [name, value] of Object.entries(showDocument(show))) {
		pieces.push(`${pieces.length === 0 ? '{' : ','}${JSON.stringify(name)}:`);
		if (!Array.isArray(value) || value.length <= slice) {
			pieces.push(JSON.stringify(value));
			continue;
		}
		for (let start = 0; start < value.length; start += slice) {
			pieces.push(start === 0 ? '[' : ',', JSON.stringify(value.slice(start, start + slice)).slice(1, -1));
			// In the back nobody types; there, timers wait for seconds, and the page may end meanwhile.
			if (!isInBack()) await otherWork();
		}
		pieces.push(']');
	}
	return [...pieces, '}'];
}
