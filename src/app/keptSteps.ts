import type { StepKey } from '../storage/schema.ts';
import { mostSteps, type StepFound, type StepsChange } from '../storage/stepStore.ts';
import type { Step } from './history.svelte.ts';

/** What is kept on the device of the steps of a session, so that undo is there when the show is opened again. */
export class KeptSteps {
	/** Where steps are on the device, as far as they can still be there, the latest last. */
	readonly #keys = new Map<Step, StepKey>();
	readonly #showId: string;
	readonly #tab: string;
	readonly #now: () => number;
	#last = 0;

	/**
	 * @param tab names the session among all that keep steps of the show
	 * @param now in milliseconds since 1970
	 */
	constructor(showId: string, tab: string, now: () => number = Date.now) {
		this.#showId = showId;
		this.#tab = tab;
		this.#now = now;
	}

	/** The steps that were kept, as a history has them. */
	restore(found: readonly StepFound[]): { readonly done: readonly Step[]; readonly undone: readonly Step[] } {
		for (const { edit, key } of found) {
			this.#name(edit, key);
			this.#last = Math.max(this.#last, key[2]);
		}
		const of = (isUndone: 0 | 1) => found.filter(({ key }) => key[1] === isUndone).map(({ edit }) => edit);
		return { done: of(0), undone: of(1) };
	}

	/** Something new was done. @param former the step that it stands in the place of */
	made(step: Step, former?: Step): StepsChange {
		const place = former && this.#keys.get(former);
		if (former) this.#keys.delete(former);
		for (const [undone, [, isUndone]] of this.#keys) if (isUndone === 1) this.#keys.delete(undone);
		const key = place ? this.#name(step, [...place.slice(0, 4), step.rows.length] as StepKey) : this.#place(step, 0);
		return { remove: place ? [place] : [], put: { key, edit: step }, isNew: true };
	}

	/** A step was undone, or done again, and stands among the others as another step. */
	moved(former: Step, step: Step, isUndone: 0 | 1): StepsChange {
		const from = this.#keys.get(former);
		this.#keys.delete(former);
		return { remove: from ? [from] : [], put: { key: this.#place(step, isUndone), edit: step }, isNew: false };
	}

	/** Where a step goes: after all that were there. */
	#place(step: Step, isUndone: 0 | 1): StepKey {
		this.#last = Math.max(this.#last + 1, this.#now());
		return this.#name(step, [this.#showId, isUndone, this.#last, this.#tab, step.rows.length]);
	}

	#name(step: Step, key: StepKey): StepKey {
		this.#keys.delete(step);
		this.#keys.set(step, key);
		// What was done and undone longer ago is no longer kept: thousands of steps need no key each.
		for (const [longAgo] of this.#keys) {
			if (this.#keys.size <= 2 * mostSteps) break;
			this.#keys.delete(longAgo);
		}
		return key;
	}
}
