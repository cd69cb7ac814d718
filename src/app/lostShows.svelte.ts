import { isBegunOnly } from '../core/device/isBegunOnly.ts';
import type { LostReport } from '../core/device/lostShows.ts';
import { nameOfCopies } from '../storage/secondCopies.ts';
import type { ShelvedShow } from '../storage/shelfStore.ts';
import { backedUpAt } from './copyCount.svelte.ts';
import { type Notes, openNotes } from './notedShows.ts';
import { copiesPart } from './secondCopies.ts';

/**
 * Notices that the browser has lost shows, and puts them back: they are noted outside the database (`notedShows.ts`), and
 * there is a second copy of each (`secondCopies.ts`).
 */
export class LostShows {
	#report = $state.raw<LostReport>();
	#hasFailed = false;
	readonly #databaseName: string;
	readonly #notes: Notes;

	constructor(databaseName: string) {
		this.#databaseName = databaseName;
		this.#notes = openNotes(databaseName);
		this.#report = this.#notes.lost();
	}

	/** What was lost, and has not been read yet. */
	get report(): LostReport | undefined {
		return this.#report;
	}

	/** The report has been read. */
	noteRead(): void {
		this.#report = undefined;
		this.#notes.noteLost(undefined);
	}

	/**
	 * Puts back what is not there any more.
	 * @param there the ids of all shows, the deleted ones too
	 * @returns whether anything was put back
	 */
	async find(there: readonly string[]): Promise<boolean> {
		if (this.#hasFailed) return false; // it is tried again when the page opens the next time
		const known = new Set(there);
		const isNoted = this.#notes.shows().some(({ id }) => !known.has(id));
		if (!isNoted && (there.length > 0 || !(await this.#hasCopies()))) return false;
		const part = await copiesPart.load();
		if (!part) return false; // what is noted stays so, and is looked for again the next time
		const { report, isChanged, hasFailed = false } = await part.putBackLost(this.#databaseName, known, this.#notes);
		this.#report = report;
		this.#hasFailed = hasFailed;
		return isChanged;
	}

	/**
	 * Lets go of the notes and copies of shows that are forgotten for good: nothing of them may come back, or stay.
	 * @param ids of the shows
	 */
	async letGo(ids: readonly string[]): Promise<void> {
		const isLeft = ({ id }: { readonly id: string }) => !ids.includes(id);
		this.#notes.noteShows(this.#notes.shows().filter(isLeft));
		if (!(await this.#hasCopies())) return;
		const part = await copiesPart.load();
		if (!part) throw new Error('copies cannot be let go of without their part');
		await part.letGoOfCopies(this.#databaseName, (copy) => !isLeft(copy));
	}

	/** Whether there may be copies, although nothing is noted: a browser may keep the ones and not the others. */
	async #hasCopies(): Promise<boolean> {
		try {
			return await caches.has(nameOfCopies(this.#databaseName));
		} catch {
			return false;
		}
	}

	/**
	 * Notes which shows there are. Those noted before that are not among them stay noted: they are lost, or another tab has
	 * begun them just now.
	 * @param shows all of them, the deleted ones too
	 */
	note(shows: readonly ShelvedShow[]): void {
		const known = new Set(shows.map(({ id }) => id));
		const there = shows
			.filter((show) => show.deletedAt === undefined && !isBegunOnly(show))
			.map(({ id, name, prints, copied }) => ({ id, name, prints, ...backedUpAt({ copied }) }));
		this.#notes.noteShows([...there, ...this.#notes.shows().filter(({ id }) => !known.has(id))]);
	}
}
