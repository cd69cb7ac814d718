import { type Edit, invert } from '../core/show/edit.ts';

/** A step that can be taken back. Who offers to do so holds it, and takes back that one and no other. */
export type Step = Edit;

/** What undo or redo really changed, and the step that it leaves among those to do again, or to take back. */
export interface Made {
	readonly made: Edit;
	readonly step: Step;
}

/** The steps that can be taken back, and those taken back that can be done again. */
export class History {
	#done: readonly Step[];
	#undone: readonly Step[];

	/** Begins with the steps that were kept. */
	constructor({ done, undone }: { readonly done: readonly Step[]; readonly undone: readonly Step[] }) {
		this.#done = $state.raw(done);
		this.#undone = $state.raw(undone);
	}

	/** The step that undo would take back. */
	get last(): Step | undefined {
		return this.#done.at(-1);
	}

	/** The step that redo would do again. */
	get next(): Step | undefined {
		return this.#undone.at(-1);
	}

	/** How many steps can be taken back. */
	get depth(): number {
		return this.#done.length;
	}

	/** The latest step for which `answers` has an answer, if that is yes; undefined where it is no for that step. */
	latest(answers: (step: Step) => boolean | undefined): Step | undefined {
		const step = this.#done.findLast((each) => answers(each) !== undefined);
		return step && answers(step) ? step : undefined;
	}

	/** How many steps were made before this one; -1 for a step that is not to be taken back. */
	placeOf(step: Step): number {
		return this.#done.indexOf(step);
	}

	/** Adds a step that was just made: what had been taken back before cannot be done again. */
	add(step: Step): void {
		this.#done = [...this.#done, step];
		this.#undone = [];
	}

	/** Puts a step in the place of another. */
	replace(former: Step, step: Step): void {
		this.#done = this.#done.map((each) => (each === former ? step : each));
		this.#undone = [];
	}

	/**
	 * Takes a step back, whatever was made since; it can be done again.
	 * @param make does an edit on the show as it is now
	 */
	undo(step: Step, make: (edit: Edit) => Made): Edit {
		const { made, step: toRedo } = make(invert(step));
		this.#done = this.#done.filter((each) => each !== step);
		this.#undone = [...this.#undone, toRedo];
		return made;
	}

	/** Does again what was taken back last; see `undo`. */
	redo(make: (edit: Edit) => Made): Edit | undefined {
		const next = this.next;
		if (!next) return undefined;
		const { made, step } = make(next);
		this.#undone = this.#undone.slice(0, -1);
		this.#done = [...this.#done, step];
		return made;
	}
}
