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
