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
	/** The step to take back when the columns of what it brought are said anew. */
	#again: UndoStep | undefined;
	/** The comparison from which the columns are asked about: one goes back to it. */
	#compared: Step | undefined;

	/** What is asked; undefined where nothing is. */
	get step(): Step | undefined {
		return this.#step;
	}

	/** Whether the columns are asked about of what came in already, and goes out again with the answer. */
	get isAskedAgain(): boolean {
		return this.#again !== undefined;
	}

	/**
	 * Asks, in the place of what was asked before.
	 * @param again the step that brought what is asked about, where that came in already
	 */
	ask(step: Step, again?: UndoStep): void {
		this.#again = again;
		this.#compared = undefined;
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

	/** It is answered, or left. @returns the step that brought what was asked about, where that came in already */
	end(): UndoStep | undefined {
		const again = this.#again;
		this.#step = this.#again = this.#compared = undefined;
		return again;
	}
}
