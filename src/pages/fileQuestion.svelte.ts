import type { Step as UndoStep } from '../app/history.svelte.ts';
import type { ImportOutcome } from '../app/importFile.ts';
import type { ColumnOfFile } from '../ui/exchange/columnOfFile.ts';

/** What has to be answered before something comes in. */
export type Step =
	| Exclude<ImportOutcome, { readonly kind: 'reported' }>
	/** Columns of other programs that were kept with the prints. */
	| { readonly kind: 'kept'; readonly columns: readonly ColumnOfFile[] };

/** The question that stands before something comes in, one at a time: nothing has changed so far. */
export class FileQuestion {
	#step = $state.raw<Step>();
	/** The step to undo once its columns are matched again; undefined where nothing has come in yet. */
	#again: UndoStep | undefined;
	/** The comparison that the question about columns was asked from, to go back to. */
	#compared: Step | undefined;
	/** A comparison with what was chosen in it, and the place that was left while it was asked. */
	#waiting: { readonly step: Step; readonly place: string; readonly of: object } | undefined;

	/** What is asked; undefined where nothing is. */
	get step(): Step | undefined {
		return this.#step;
	}

	/** Whether the question is about columns of what came in already: the answer replaces it. */
	get isAskedAgain(): boolean {
		return this.#again !== undefined;
	}

	/**
	 * Asks, in the place of what was asked before.
	 * @param again the step that brought it, where what is asked about came in already
	 */
	ask(step: Step, again?: UndoStep): void {
		this.end();
		this.#again = again;
		this.#step = step;
	}

	/** Asks about the columns of what is being compared. */
	askFromComparison(step: Step): void {
		this.#compared = this.#step;
		this.#step = step;
	}

	/** Goes back to the comparison from which it was asked. @returns whether there is one */
	goBack(): boolean {
		if (this.#compared === undefined) return false;
		this.ask(this.#compared);
		return true;
	}

	/** Whether a comparison waits for one to come back. */
	get isWaiting(): boolean {
		return this.#waiting !== undefined;
	}

	/**
	 * The place is left in which it is asked: a comparison waits there, with what was chosen.
	 * @param of the session that it is of
	 * @returns whether one does
	 */
	wait(place: string, of: object): boolean {
		const step = this.#compared ?? this.#step;
		if (step?.kind !== 'review') return false;
		this.end();
		this.#waiting = { step, place, of };
		return true;
	}

	/** Asks again what waits at a place, where one has come back to it. @returns false where what waits is of another session */
	goOn(place: string, of: object): boolean {
		const waiting = this.#waiting;
		if (waiting?.of !== of) return false;
		if (waiting.place === place) this.ask(waiting.step);
		return true;
	}

	/** It is answered, or left. @returns the step that brought what was asked about, where that came in already */
	end(): UndoStep | undefined {
		const again = this.#again;
		this.#step = this.#again = this.#compared = this.#waiting = undefined;
		return again;
	}
}
