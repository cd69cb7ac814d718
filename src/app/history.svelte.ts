import { type Edit, invert } from '../core/show/edit.ts';

/** The edits that can be taken back, and those taken back that can be done again. */
export class History {
	#done = $state.raw<readonly Edit[]>([]);
	#undone = $state.raw<readonly Edit[]>([]);

	/** The edit that undo would take back. */
	get last(): Edit | undefined {
		return this.#done.at(-1);
	}

	/** The edit that redo would do again. */
	get next(): Edit | undefined {
		return this.#undone.at(-1);
	}

	/** How many edits can be taken back. */
	get depth(): number {
		return this.#done.length;
	}

	/** Adds an edit that was just made: what had been taken back before cannot be done again. */
	add(edit: Edit): void {
		this.#done = [...this.#done, edit];
		this.#undone = [];
	}

	/**
	 * Takes the last edit back.
	 * @param make does an edit on the show as it is now and returns what it really changed
	 */
	undo(make: (edit: Edit) => Edit): Edit | undefined {
		const edit = this.last;
		if (!edit) return undefined;
		const made = make(invert(edit));
		this.#done = this.#done.slice(0, -1);
		this.#undone = [...this.#undone, invert(made)];
		return made;
	}

	/** Does again what was taken back last; see `undo`. */
	redo(make: (edit: Edit) => Edit): Edit | undefined {
		const edit = this.next;
		if (!edit) return undefined;
		const made = make(edit);
		this.#undone = this.#undone.slice(0, -1);
		this.#done = [...this.#done, made];
		return made;
	}
}
