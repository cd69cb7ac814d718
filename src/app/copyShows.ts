import { isFullOfPictures } from '../core/device/picturesProblem.ts';
import { isSameValue } from '../core/values/isSameValue.ts';
import type { Show } from '../core/show/show.ts';
import { showDocument } from '../files/showFile.ts';
import { type CopyAbout, openSecondCopies } from '../storage/secondCopies.ts';
import type { ShelvedShow } from '../storage/shelfStore.ts';
import { openShowStore, type StoredShow } from '../storage/showStore.ts';
import type { Session } from './session.svelte.ts';
import { storageRoom } from './storageRoom.ts';

/** The shows that there are to copy. */
export interface ToCopy {
	readonly databaseName: string;
	/** All of them, as they were when last looked at. */
	readonly shows: readonly ShelvedShow[];
	/** The one that is open here. */
	readonly session: Pick<Session, 'show' | 'saved' | 'revision'>;
}

/** Copies each show of which there is no copy as it is kept. One tab of all does it at a time. */
export async function copyShows(shelf: ToCopy): Promise<void> {
	const copy = () => copyNow(shelf);
	if (typeof navigator === 'undefined' || !('locks' in navigator)) return copy();
	await navigator.locks.request(`${shelf.databaseName} second copies`, copy);
}

async function copyNow(shelf: ToCopy): Promise<void> {
	const { usage, quota } = await storageRoom();
	if (isFullOfPictures(usage, quota)) return; // what is left is for what is typed
	const copies = openSecondCopies(shelf.databaseName);
	const listed = await copies.list();
	const store = openShowStore(shelf.databaseName);
	try {
		for (const shelved of shelf.shows) {
			const before = listed.filter(({ id }) => id === shelved.id);
			if (isBegunOnly(shelved) || before.some((about) => isOf(about, shelved))) continue;
			const stored = ownShow(shelf, shelved) ?? (isLeftToOthers() ? undefined : await store.read(shelved.id));
			if (!stored) continue;
			const now: ShelvedShow = { ...shelved, ...stored };
			if (before.some((about) => isOf(about, now))) continue; // another tab was quicker
			const { id, revision, openedAt } = now;
			const opened = openedAt !== undefined && { openedAt };
			const about = { id, revision, at: Date.now(), ...opened, ...marksOf(now) };
			await copies.keep(about, await asText(stored.show), before);
		}
	} finally {
		store.close();
	}
}

/** Nothing was ever typed into it. */
const isBegunOnly = ({ prints, revision }: ShelvedShow): boolean => prints === 0 && revision <= 1;

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

/** The show that is open here, if all of it is kept: it need not be read. */
function ownShow({ session }: ToCopy, shelved: ShelvedShow): StoredShow | undefined {
	const isKept = session.show.id === shelved.id && session.saved.state === 'saved';
	return isKept && session.revision === shelved.revision ? { ...shelved, show: session.show } : undefined;
}

/** A tab in the back copies its own show only: reading others takes time, and there is one in front. */
const isLeftToOthers = (): boolean => typeof document === 'object' && document.visibilityState === 'hidden';

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
			await new Promise((resolve) => setTimeout(resolve));
		}
		pieces.push(']');
	}
	return [...pieces, '}'];
}
