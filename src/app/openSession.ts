import { guessedUnit } from './guessedUnit.ts';
import { newShow } from '../core/show/newShow.ts';
import { notOpened, otherTabsInTheWay } from '../core/device/storageProblem.ts';
import { makeId } from '../files/makeId.ts';
import { openShowStore } from '../storage/showStore.ts';
import { inSlices } from './inSlices.ts';
import type { OrderSearch } from './benchOrder.svelte.ts';
import { judgingPart } from './judging.ts';
import type { LostShows } from './lostShows.svelte.ts';
import { Session } from './session.svelte.ts';

/** What a session is opened with; all of it has a default, and tests give their own. */
export interface SessionOptions {
	readonly databaseName?: string;
	/** The show to open; by default the one that was open last. */
	readonly showId?: string | undefined;
	/** Names rows and shows. */
	readonly makeId?: () => string;
	/** Told, with a sentence, when opening waits for other tabs. */
	readonly onWaiting?: (sentence: string) => void;
	/** Sees what the browser has lost, and puts it back; absent: nobody looks. */
	readonly lost?: LostShows;
	/** Looks for the order of the cuts with the fewest changes. */
	readonly search?: OrderSearch;
	/**
	 * Whether the session may be open before its rows are judged, and the shelf before its shows are listed, so that the
	 * first screen comes first. Default: no.
	 */
	readonly isScreenFirst?: boolean;
}

/**
 * Opens the show kept on this device, or begins one.
 * @returns rejects with a sentence where what is kept cannot be opened; it is not touched then
 */
export async function openSession(options: SessionOptions = {}): Promise<Session> {
	const { databaseName = 'evenhang', makeId: newId = makeId, onWaiting, showId, lost, search, isScreenFirst } = options;
	const opened: { session?: Session; isSuperseded?: boolean } = {};
	const store = openShowStore(databaseName, {
		onBlocked: () => onWaiting?.(otherTabsInTheWay),
		onSuperseded: () => {
			opened.isSuperseded = true; // as soon as the database is open, and maybe before the session is
			opened.session?.supersede();
		},
	});
	try {
		if (!isScreenFirst) await judgingPart.load();
		const findLost = lost && ((there: readonly string[]) => lost.find(there));
		const stored = await store.openShow(() => newShow(newId(), guessedUnit()), showId, Date.now(), findLost);
		// Undo is worth no show that does not open.
		const steps = await store.steps(stored.show.id, inSlices).catch(() => []);
		// Where it cannot be kept, another show may be opened the next time; this one opens all the same. Whatever is read
		// after it waits until it is on disk: so it comes after what the show is opened with.
		if (stored.revision > 1 || showId !== undefined)
			store.keepPlace(stored.show.id, { openedAt: Date.now() }).catch(() => undefined);
		const session = new Session({ ...stored, steps }, store, databaseName, newId, search);
		if (opened.isSuperseded) session.supersede();
		return (opened.session = session);
	} catch (cause) {
		store.close();
		throw new Error(notOpened((cause as Error).name), { cause });
	}
}
