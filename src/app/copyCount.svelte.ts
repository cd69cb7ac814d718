import type { Edit } from '../core/show/edit.ts';
import type { Copied } from '../storage/schema.ts';
import { pairOfEdits, type StoredShow } from '../storage/showStore.ts';

/** The show as it was when a copy of it was made: opaque to who hands the copy out. */
export interface CopyMark {
	readonly revision: number;
}

interface Since extends CopyMark {
	/** How deep the history was when the show was as in the copy: below nothing, for a copy from before it began. */
	depth: number;
	/** How many of the edits since then take each other back. */
	takenBack: number;
	/** The edits since then that take others back. */
	readonly takingBack: WeakSet<Edit>;
}

/** What is counted from: how the session stands now, and how a copy is kept. */
export interface CopySource {
	/** The revision that the show will have when all is on disk. */
	readonly revision: () => number;
	/** How many steps can be taken back. */
	readonly depth: () => number;
	readonly whenSaved: () => Promise<void>;
	readonly keep: (copied: Copied, takenBack: number) => Promise<void>;
}

/** The first revision of a show is the empty one, which nobody misses. */
const begun = 1;

/** What is in no file that has left this device: the edits since the last copy, less those that take each other back. */
export class CopyCount {
	#last = $state.raw<Copied>();
	#takenBack = $state.raw(0);
	#since: Since;
	/** The copies that are being handed out; which of them leave is not known yet. */
	readonly #leaving = new Set<Since>();
	readonly #source: CopySource;

	constructor({ copied, takenBack = 0, revision }: StoredShow, source: CopySource) {
		this.#source = source;
		this.#last = copied;
		this.#takenBack = takenBack;
		const since = copied?.revision ?? begun;
		const changes = Math.max(0, revision - since - takenBack);
		this.#since = { revision: since, depth: -changes, takenBack, takingBack: new WeakSet() };
	}

	/** The last copy that left this device; undefined where none has. */
	get last(): Copied | undefined {
		return this.#last;
	}

	/** How many changes are in no file that was given; one that was taken back is none. */
	get changes(): number {
		return Math.max(0, this.#source.revision() - (this.#last?.revision ?? begun) - this.#takenBack);
	}

	/** Marks the show as it is now, for a copy that is about to leave: edits from now on are not in it. */
	mark(): CopyMark {
		const { revision, depth } = this.#source;
		const mark: Since = { revision: revision(), depth: depth(), takenBack: 0, takingBack: new WeakSet() };
		this.#leaving.add(mark);
		return mark;
	}

	/** A copy that was marked has not left. */
	forget(mark: CopyMark): void {
		this.#leaving.delete(mark as Since);
	}

	/** A copy that was marked has left. Where that cannot be kept, it counts as not given for longer than it need. */
	async note(mark: CopyMark, what: Copied['what'], at: number): Promise<void> {
		await this.#source.whenSaved().catch(() => undefined);
		this.forget(mark);
		this.#since = mark as Since;
		this.#takenBack = this.#since.takenBack;
		this.#last = { at, what, revision: mark.revision };
		await this.#source.keep(this.#last, this.#takenBack).catch(() => undefined);
	}

	/** Whether an edit takes one back that came after the last copy. */
	isTakingBack(edit: Edit): boolean {
		return this.#since.takingBack.has(edit);
	}

	/** An edit is about to be made: past this there is no way back to what was copied by taking back. */
	making(): void {
		for (const since of this.#all) since.depth = Math.min(since.depth, this.#source.depth());
	}

	/**
	 * An edit takes a step back, or does it again.
	 * @param isTowards whether that leads towards a copy that was made at that depth of the history
	 */
	returning(edit: Edit, isTowards: (depth: number) => boolean): void {
		for (const since of this.#all) {
			if (!isTowards(since.depth)) continue;
			since.takingBack.add(edit);
			since.takenBack += pairOfEdits;
		}
		this.#takenBack = this.#since.takenBack;
	}

	/** Another tab has taken back an edit that came after the last copy. */
	returnedElsewhere(): void {
		this.#since.takenBack = this.#takenBack += pairOfEdits;
	}

	/** What has come from the disk, with what other tabs have done. @param unsaved the edits that are not on it yet */
	caughtUp({ takenBack = 0 }: StoredShow, unsaved: readonly Edit[]): void {
		const waiting = unsaved.filter((edit) => this.isTakingBack(edit));
		this.#since.takenBack = this.#takenBack = takenBack + waiting.length * pairOfEdits;
	}

	get #all(): readonly Since[] {
		return [this.#since, ...this.#leaving];
	}
}
