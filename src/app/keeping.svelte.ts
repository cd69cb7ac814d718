import { apply, type Edit } from '../core/show/edit.ts';
import type { Show } from '../core/show/show.ts';
import { keepObjects } from '../core/show/keepObjects.ts';
import type { Copied } from '../storage/schema.ts';
import type { ShowStore, StoredShow } from '../storage/showStore.ts';
import type { StepsChange } from '../storage/stepStore.ts';
import { askToPersist } from './askToPersist.ts';
import type { CopyCount } from './copyCount.svelte.ts';
import { oneForMany } from './oneForMany.ts';
import { listenToOtherTabs, type News, type OtherTabs } from './otherTabs.ts';
import type { GivenNotes } from './outliving.ts';
import { type Saved, Saving } from './saving.svelte.ts';
import { warnBeforeLeaving } from './warnBeforeLeaving.ts';

/** What keeping needs of the session. */
export interface KeepingSource {
	/** The show as it is now, all edits made. */
	readonly show: () => Show;
	/** Puts the show as other tabs have made it in the place of the one that is here. */
	readonly set: (show: Show) => void;
	readonly copies: Pick<CopyCount, 'takenBackBy' | 'madeElsewhere' | 'caughtUp' | 'copiedElsewhere'>;
}

/** Keeps the show on the device, and the same in all tabs: edits go to the disk and to the others, theirs come in. */
export class Keeping {
	readonly #store: ShowStore;
	readonly #source: KeepingSource;
	readonly #saving: Saving;
	readonly #tabs: OtherTabs;
	readonly #stopWarning: () => void;
	#isClosed = false;
	/** Reads the show from the disk where other tabs have changed it: once, however much that was. */
	readonly #catchUp = oneForMany(() => this.#readAgain());

	constructor(store: ShowStore, { show, revision, notKept }: StoredShow, databaseName: string, source: KeepingSource) {
		this.#store = store;
		this.#source = source;
		this.#tabs = listenToOtherTabs(databaseName, {
			onNews: (news) => this.#hear(news),
			onReturn: () => {
				this.#saving.hear();
				this.#saving.retry();
				void this.#catchUp();
			},
		});
		this.#saving = new Saving(store, revision, {
			show: source.show,
			takenBackBy: (edit) => source.copies.takenBackBy(edit),
			onKept: (kept, edit) => {
				const made = edit && { edit, takenBack: source.copies.takenBackBy(edit) };
				this.#tabs.announce({ showId: show.id, revision: kept, ...made });
				askToPersist();
			},
			onRest: () => void this.#catchUp(),
		});
		if (notKept !== undefined) this.#saving.fail(notKept);
		this.#stopWarning = warnBeforeLeaving(() => this.saved.state === 'saved');
	}

	get saved(): Saved {
		return this.#saving.saved;
	}

	/** The revision that the show will have when all is on disk. */
	get revision(): number {
		return this.#saving.revision + this.#saving.unsaved.length;
	}

	/** Has an edit written that was made. */
	add(edit: Edit, steps: StepsChange): void {
		this.#saving.add(edit, steps);
	}

	/** Keeps that a copy of the show has left, and tells the other tabs. @param notes see `outliving` */
	async keepCopy(notes: GivenNotes, copied: Copied, takenBack: number): Promise<void> {
		const showId = this.#source.show().id;
		await notes.keepCopied(showId, copied, takenBack);
		this.#tabs.announce({ showId, revision: copied.revision, copied, takenBack });
	}

	/** Resolves when everything is on disk; rejects with the sentence of `saved` if it cannot be written. */
	whenSaved(): Promise<void> {
		return this.#saving.whenSaved();
	}

	/** Tries again what could not be written, and waits for the rest; see `whenSaved`. */
	flush(): Promise<void> {
		this.#saving.retry();
		return this.whenSaved();
	}

	/** See `Saving.supersede`. */
	supersede(): void {
		this.#saving.supersede();
	}

	/** Stops listening and lets go of the database. */
	close(): void {
		this.#isClosed = true;
		this.#stopWarning();
		this.#tabs.close();
		this.#store.close();
	}

	/** Makes what another tab has made, where nothing came between; else it is read from the disk. */
	#hear({ showId, revision, edit, copied, takenBack = 0 }: News): void {
		const { show, set, copies } = this.#source;
		if (showId !== show().id) return;
		if (copied) return copies.copiedElsewhere(copied, takenBack);
		if (edit && this.#saving.follows(revision)) {
			copies.madeElsewhere(edit, takenBack);
			return set(apply(show(), edit));
		}
		this.#saving.hear(revision);
		void this.#catchUp();
	}

	/** See `#catchUp`. Nothing of this tab may be on its way: the write after it finds out again. */
	async #readAgain(): Promise<void> {
		const isBusy = () => this.#saving.isWriting || this.#isClosed;
		if (isBusy() || !this.#saving.isBehind) return;
		const { show, set, copies } = this.#source;
		const stored = await this.#store.read(show().id).catch(() => undefined);
		if (!stored || isBusy() || !this.#saving.caughtUp(stored.revision)) return;
		const { unsaved } = this.#saving;
		copies.caughtUp(stored, unsaved);
		set(unsaved.reduce(apply, keepObjects(show(), stored.show)));
	}
}
