import type { RowResult } from '../../core/findings/rowResult.ts';
import type { Views } from '../../core/grid/views.ts';
import type { CostOfRow } from '../../core/record/priceOf.ts';
import type { Settings } from '../../core/settings/settings.ts';
import type { Command, Edit, FocusOfEdit } from '../../core/show/edit.ts';
import type { Row, RowId } from '../../core/show/row.ts';
import type { Show } from '../../core/show/show.ts';
import type { Tick } from '../../core/show/tick.ts';
import type { ViewsSource } from './shownColumns.svelte.ts';

/** What rows are arranged from. */
export interface ArrangedSource {
	readonly show: { readonly rows: readonly Row[]; readonly ticks?: readonly Tick[] };
	readonly settings: Settings;
	/** In the currency of the prices; left out where that is the show's. */
	readonly moneySettings?: Settings;
	/** What each row works out; where not all is worked out yet, it is done when this is read. */
	readonly results: readonly RowResult[];
	readonly isWorkedOut: boolean;
	/** Does work on all rows a slice at a time; left out where they are so few that it is done at once. */
	readonly inSlices?:
		| (<Result>(steps: Iterator<unknown, Result, undefined>, signal: AbortSignal) => Promise<Result>)
		| undefined;
	/** What the row at a place works out. */
	readonly resultAt: (place: number) => RowResult | undefined;
	/** The bench steps of each row. */
	readonly bench: { readonly stepsOfRows: readonly (readonly number[])[] };
	readonly views: Views;
	/** What each print costs; it may lag behind what is typed. */
	readonly costs?: { readonly costOfRow: (row: Row) => CostOfRow | undefined };
}

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
