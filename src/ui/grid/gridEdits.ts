import { type Command, type Edit, type FocusOfEdit, isEmpty } from '../../core/show/edit.ts';
import { saidOfRedone, saidOfUndone } from '../../core/grid/saidOfSteps.ts';
import type { RowId } from '../../core/show/row.ts';
import type { GridNotices } from './gridNotices.svelte.ts';
import type { GridSelection } from './gridSelection.svelte.ts';
import type { GridSource } from './gridSource.ts';

/** The edits of the grid, each kept with what was selected before and after it, which undo and redo select again. */
export class GridEdits {
	readonly #source: GridSource;
	readonly #selection: GridSelection;
	readonly #notices: GridNotices;

	constructor(source: GridSource, selection: GridSelection, notices: GridNotices) {
		this.#source = source;
		this.#selection = selection;
		this.#notices = notices;
	}

	/** Names for rows to be added. */
	newIds(count: number): readonly RowId[] {
		return Array.from({ length: count }, () => this.#source.makeId());
	}

	/**
	 * Makes an edit.
	 * @param focus what is selected before and after it, by default the same
	 * @returns the step; undefined where nothing was changed, or an answer is waited for
	 */
	do(command: Command, focus: FocusOfEdit = this.#staying()): Edit | undefined {
		return this.#source.do(command, focus);
	}

	/** Whether a command has anything to change in the show as it is. */
	wouldChange(command: Command): boolean {
		return !isEmpty(command(this.#source.show, this.#source.settings));
	}

	/** Makes an edit in the place of a step. */
	doInstead(step: Edit, command: Command, focus: FocusOfEdit): Edit | undefined {
		return this.#source.doInstead(step, command, focus);
	}

	/** Takes back a step that nobody has to hear of; what is selected stays. */
	withdraw(step: Edit): void {
		this.#source.undoStep(step);
	}

	/** Undoes one step, whatever was done since. */
	undoStep(step: Edit | undefined): void {
		this.#selection.restore(this.#source.undoStep(step));
		if (step) this.#notices.say(saidOfUndone(step.label));
	}

	undo(): void {
		const step = this.#source.lastStep;
		this.#selection.restore(this.#source.undo());
		if (step && this.#source.lastStep !== step) this.#notices.say(saidOfUndone(step.label));
	}

	redo(): void {
		const step = this.#source.nextStep;
		this.#selection.restore(this.#source.redo());
		if (step && this.#source.nextStep !== step) this.#notices.say(saidOfRedone(step.label));
	}

	#staying(): FocusOfEdit {
		const { focus } = this.#selection;
		return { before: focus, after: focus };
	}
}
