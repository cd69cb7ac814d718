import type { Command, Edit, FocusOfEdit } from '../../core/show/edit.ts';
import type { Row, RowId } from '../../core/show/row.ts';
import type { Show } from '../../core/show/show.ts';
import type { ArrangedSource } from './arrangedRows.svelte.ts';
import type { ViewsSource } from './shownColumns.svelte.ts';

/** What the grid reads: the show as it is, how it is looked at, and what it works out. */
export interface RowsSource extends ArrangedSource {
	/** The bench steps in which the cuts of each row come; it may lag behind what is typed. */
	readonly lateBench: { readonly stepsOf: (row: Row) => readonly number[] };
	/** The pictures of rows; what is asked for and not there yet comes by itself. */
	readonly pictures?: { readonly addressOf: (row: Row, size: 'small') => string | undefined };
}

/** Where the grid's edits are made: each is one step of undo. The selection is kept with the step, and undo returns it. */
export interface GridSource extends RowsSource, ViewsSource {
	readonly show: Show;
	readonly settings: RowsSource['settings'];
	/** The step that undo would take back, and the one that redo would do again. */
	readonly lastStep: Edit | undefined;
	readonly nextStep: Edit | undefined;
	/** Names rows. */
	readonly makeId: () => RowId;
	/** Makes an edit. @returns the step; undefined where nothing was done, or not yet */
	do(command: Command, focus?: FocusOfEdit): Edit | undefined;
	/** Makes an edit in the place of a step. */
	doInstead(step: Edit, command: Command, focus?: FocusOfEdit): Edit | undefined;
	/** Undoes one step. @returns what was selected before it */
	undoStep(step: Edit | undefined): unknown;
	/** Undoes the last step. @returns what was selected before it */
	undo(): unknown;
	/** @returns what was selected after the step that is done again */
	redo(): unknown;
}
