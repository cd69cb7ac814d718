import { type Edit, isToBackUp } from '../core/show/edit.ts';
import type { Copied } from '../storage/schema.ts';
import type { OpenedShow, StoredShow } from '../storage/showStore.ts';

/** The show as it was when a copy of it was made: opaque to who hands the copy out. */
export interface CopyMark {
	readonly revision: number;
}

interface Since extends CopyMark {
	/** How deep the history was when the show was as in the copy: below nothing, for a copy from before it began. */
	depth: number;
	/** How many of the edits since then are no change to back up. */
	takenBack: number;
	/** To which of them that is due; see `CopyCount.takenBackBy`. */
	readonly takenBackBy: WeakMap<Edit, number>;
}

/** What the changes are counted from, as a show is kept with it. */
interface Counted {
	readonly revision: number;
	readonly copied?: Copied | undefined;
	readonly takenBack?: number;
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

/** The last backup of a show, as it is kept: a list of its rows, which an older app noted too, is none. */
export const backupOf = ({ copied }: Pick<Counted, 'copied'>): Copied | undefined =>
	copied?.what === 'show' ? copied : undefined;

/** When a show was last backed up, to be noted outside the database; nothing where it never was. */
export function backedUpAt(kept: Pick<Counted, 'copied'>): { readonly copiedAt?: number } {
	const backup = backupOf(kept);
	return backup ? { copiedAt: backup.at } : {};
}

/** How many changes of a show are in no file, as it is kept. */
export const changesSinceCopy = (kept: Counted): number =>
	Math.max(0, kept.revision - (backupOf(kept)?.revision ?? begun) - (kept.takenBack ?? 0));

/**
 * What is in no file that has left this device: the edits since the last copy, less those that take each other back and
 * those that only change how the show is looked at.
 */
export class CopyCount {
	#last = $state.raw<Copied>();
	#takenBack = $state.raw(0);
	#since: Since;
	/** The copies that are being handed out; which of them leave is not known yet. */
	readonly #leaving = new Set<Since>();
	readonly #source: CopySource;

	constructor(stored: OpenedShow, source: CopySource) {
		const { takenBack = 0, steps = [] } = stored;
		const copied = backupOf(stored);
		this.#source = source;
		this.#last = copied;
		this.#takenBack = takenBack;
		const revision = copied?.revision ?? begun;
		// Of the steps that were kept, those that the copy has; none of them: it may be further back than they go.
		const inCopy = steps.filter((step) => step.revision <= revision).length;
		const depth = inCopy > 0 ? inCopy : steps.length > 0 ? 0 : -changesSinceCopy(stored);
		this.#since = { revision, depth, takenBack, takenBackBy: new WeakMap() };
	}

	/** The last copy that left this device; undefined where none has. */
	get last(): Copied | undefined {
		return this.#last;
	}

	/** How many changes are in no file that was given; one that was taken back is none. */
	get changes(): number {
		return changesSinceCopy({ revision: this.#source.revision(), copied: this.#last, takenBack: this.#takenBack });
	}

	/** Marks the show as it is now, for a copy that is about to leave: edits from now on are not in it. */
	mark(): CopyMark {
		const { revision, depth } = this.#source;
		const mark: Since = { revision: revision(), depth: depth(), takenBack: 0, takenBackBy: new WeakMap() };
		this.#leaving.add(mark);
		return mark;
	}

	/** A copy that was marked has not left. */
	forget(mark: CopyMark): void {
		this.#leaving.delete(mark as Since);
	}

	/** A copy that was marked has left. Where that cannot be kept, it counts as not given for longer than it need. */
	async note(mark: CopyMark, at: number): Promise<void> {
		await this.#source.whenSaved().catch(() => undefined);
		this.forget(mark);
		this.#since = mark as Since;
		this.#takenBack = this.#since.takenBack;
		this.#last = { at, what: 'show', revision: mark.revision };
		await this.#source.keep(this.#last, this.#takenBack).catch(() => undefined);
	}

	/** A copy has left in another tab: what this one has made up to its revision is in it. @param takenBack as that tab has it */
	copiedElsewhere(copied: Copied, takenBack: number): void {
		const { revision, depth } = this.#source;
		const since = Math.max(0, revision() - copied.revision);
		this.#since = { revision: copied.revision, depth: depth() - since, takenBack, takenBackBy: new WeakMap() };
		this.#takenBack = takenBack;
		this.#last = copied;
	}

	/**
	 * How many of the edits since the last copy are no change with this one, itself counted: two where it takes one of
	 * them back, one where it only changes how the show is looked at.
	 */
	takenBackBy(edit: Edit): number {
		return this.#since.takenBackBy.get(edit) ?? 0;
	}

	/**
	 * An edit is about to be made: past this there is no way back to what was copied by taking back.
	 * @param instead where it comes in the place of a step: that one, what both are together, and where they stand
	 */
	making(edit: Edit, instead?: { readonly former: Edit; readonly step: Edit; readonly place: number }): void {
		for (const since of this.#all) {
			const isNew = instead === undefined || instead.place < since.depth;
			this.#count(since, edit, 1 - (isNew ? changesIn(edit) : changesIn(instead.step) - changesIn(instead.former)));
			since.depth = Math.min(since.depth, this.#source.depth());
		}
	}

	/**
	 * An edit takes a step back, or does it again.
	 * @param isTowards whether that leads towards a copy that was made at that depth of the history
	 */
	returning(edit: Edit, isTowards: (depth: number) => boolean): void {
		for (const since of this.#all)
			this.#count(since, edit, 1 - (isTowards(since.depth) ? -changesIn(edit) : changesIn(edit)));
	}

	/** Another tab has made an edit. @param takenBack see `takenBackBy`, as that tab has it */
	madeElsewhere(edit: Edit, takenBack: number): void {
		for (const since of this.#leaving) since.takenBack += 1 - changesIn(edit);
		this.#since.takenBack = this.#takenBack += takenBack;
	}

	/** What has come from the disk, with what other tabs have done. @param unsaved the edits that are not on it yet */
	caughtUp({ takenBack = 0 }: StoredShow, unsaved: readonly Edit[]): void {
		const waiting = unsaved.reduce((sum, edit) => sum + this.takenBackBy(edit), 0);
		this.#since.takenBack = this.#takenBack = takenBack + waiting;
	}

	#count(since: Since, edit: Edit, takenBack: number): void {
		since.takenBackBy.set(edit, takenBack);
		since.takenBack += takenBack;
		this.#takenBack = this.#since.takenBack;
	}

	get #all(): readonly Since[] {
		return [this.#since, ...this.#leaving];
	}
}

/** How many changes to back up an edit is. */
const changesIn = (edit: Edit): number => (isToBackUp(edit) ? 1 : 0);
