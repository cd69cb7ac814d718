import type { Edit } from '../core/show/edit.ts';
import type { Show } from '../core/show/show.ts';
import { notKept } from '../core/device/storageProblem.ts';
import { ShowMissing, type ShowStore } from '../storage/showStore.ts';
import type { StepsChange } from '../storage/stepStore.ts';
import { tryAgain } from './tryAgain.ts';

/**
 * Whether everything typed is on disk. `failed` says why not; what was typed is held and tried again, by itself and with
 * the next change, and the words stand until it is on disk.
 */
export type Saved =
	| { readonly state: 'saved' }
	| { readonly state: 'saving' }
	| { readonly state: 'failed'; readonly problem: string };

/** What writing needs of the session. */
export interface SavingSource {
	/** The show as it is now, all edits made. */
	readonly show: () => Show;
	/** How many edits since the last copy are no change with this one; see `CopyCount.takenBackBy`. */
	readonly takenBackBy: (edit: Edit) => number;
	/** Something is on disk, as that revision of the show; an edit, or where the show was missing there, all of it. */
	readonly onKept: (revision: number, edit?: Edit) => void;
	/** There is nothing left to write, or it failed. */
	readonly onRest: () => void;
}

/** Writes edits to the device one after the other, and holds those that could not be written. */
export class Saving {
	#saved = $state.raw<Saved>({ state: 'saved' });
	#unsaved = $state.raw<readonly Edit[]>([]);
	#writing: Promise<void> | undefined;
	#revision = $state.raw(0);
	/** The latest revision that is known to be on disk. */
	#heard = 0;
	/** Whether there may be later ones. */
	#isUnsure = false;
	#isSuperseded = false;
	readonly #steps = new WeakMap<Edit, StepsChange>();
	readonly #again = tryAgain(() => this.retry());
	readonly #store: ShowStore;
	readonly #source: SavingSource;

	/** @param revision the revision of the show that the session begins with */
	constructor(store: ShowStore, revision: number, source: SavingSource) {
		this.#store = store;
		this.#revision = revision;
		this.#source = source;
	}

	get saved(): Saved {
		return this.#saved;
	}

	/** The edits that are not on disk, oldest first. */
	get unsaved(): readonly Edit[] {
		return this.#unsaved;
	}

	/** The revision of the show on disk that the session has seen. */
	get revision(): number {
		return this.#revision;
	}

	get isWriting(): boolean {
		return this.#writing !== undefined;
	}

	/** Whether the show on disk holds edits, of another tab, that this one does not show yet. */
	get isBehind(): boolean {
		return this.#isUnsure || this.#heard > this.#revision;
	}

	/**
	 * Notes an edit that is to be written, after those that could not be written before.
	 * @param steps what becomes of the kept steps with it
	 */
	add(edit: Edit, steps: StepsChange): void {
		this.#steps.set(edit, steps);
		this.#unsaved = [...this.#unsaved, edit];
		this.retry();
	}

	/** Another tab has made that revision; without one, it is not known whether any has. */
	hear(revision?: number): void {
		if (revision === undefined) this.#isUnsure = true;
		else this.#heard = Math.max(this.#heard, revision);
	}

	/**
	 * An edit of another tab has made that revision.
	 * @returns whether it can be made here as it is: nothing came between, and nothing of this tab is on its way
	 */
	follows(revision: number): boolean {
		if (this.isWriting || this.#unsaved.length > 0 || this.isBehind || revision !== this.#revision + 1) return false;
		this.#revision = revision;
		return true;
	}

	/**
	 * The session has read all that is on disk, up to that revision.
	 * @returns whether it was more than had been seen
	 */
	caughtUp(revision: number): boolean {
		const isNews = revision > this.#revision;
		this.#revision = Math.max(revision, this.#revision);
		this.#isUnsure = false;
		return isNews;
	}

	/** Tries again what could not be written before. */
	retry(): void {
		if (this.#unsaved.length > 0) this.#writing ??= this.#writeAll();
	}

	/** A newer version of the app keeps the shows now: nothing more can be written from here, though what is on its way still is. */
	supersede(): void {
		this.#isSuperseded = true;
		this.fail('VersionError');
	}

	/** Says why nothing can be written; what was typed is held. */
	fail(errorName: string): void {
		this.#saved = { state: 'failed', problem: notKept(this.#isSuperseded ? 'VersionError' : errorName) };
	}

	/** Resolves when everything is on disk; rejects with the sentence of `saved` if it cannot be written. */
	async whenSaved(): Promise<void> {
		while (this.#writing) await this.#writing;
		if (this.#saved.state === 'failed') throw new Error(this.#saved.problem);
	}

	async #writeAll(): Promise<void> {
		if (this.#saved.state === 'saved') this.#saved = { state: 'saving' };
		try {
			await nextTask(); // what was typed is painted first
			while (this.#unsaved.length > 0) await this.#writeOldest();
			this.#again.worked();
			if (this.#isSuperseded) this.supersede();
			else this.#saved = { state: 'saved' };
		} catch (cause) {
			this.fail((cause as Error).name);
			if (!this.#isSuperseded) this.#again.failed();
		}
		this.#writing = undefined;
		this.#source.onRest();
	}

	/** Writes an edit. Where there is no room for the steps as well, they are forgotten: what was typed comes first. */
	async #apply(edit: Edit): Promise<number> {
		const { show, takenBackBy } = this.#source;
		const write = (steps?: StepsChange) => this.#store.apply(show().id, edit, takenBackBy(edit), steps);
		try {
			return await write(this.#steps.get(edit));
		} catch (cause) {
			if ((cause as Error).name !== 'QuotaExceededError') throw cause;
			return write('forget');
		}
	}

	async #writeOldest(): Promise<void> {
		const { show } = this.#source;
		const held = this.#unsaved;
		let edit = held[0];
		let written = 1;
		let revision: number;
		try {
			revision = await this.#apply(held[0]!);
			// The browser has lost the show, and an older copy of it was put back: what the page holds is newer.
			if (revision <= this.#revision) throw new ShowMissing(show().id);
		} catch (cause) {
			if (!(cause instanceof ShowMissing)) throw cause;
			// The browser has cleared its storage under an open page: what the page holds is all there is.
			edit = undefined;
			written = held.length;
			revision = await this.#store.keep(show(), this.#revision);
			this.#revision = revision - 1;
		}
		this.#unsaved = this.#unsaved.slice(written);
		if (revision === this.#revision + 1) this.#revision = revision;
		else this.hear(revision);
		this.#source.onKept(revision, edit);
	}
}

/** Resolves in a task of its own: after a key a browser paints first. A timer would wait for a page that is not seen. */
const nextTask = (): Promise<void> =>
	new Promise((resolve) => {
		const { port1, port2 } = new MessageChannel();
		port1.onmessage = () => resolve(port1.close());
		port2.postMessage(0);
	});
