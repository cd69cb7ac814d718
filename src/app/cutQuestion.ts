import { rowsWronged, type WorkedOutShow, type WrongedRow } from '../core/bench/cutWarning.ts';
import { blanksLeftOver, type LeftOverRow } from '../core/sheets/blankWarning.ts';
import type { Edit } from '../core/show/edit.ts';
import type { Step } from './history.svelte.ts';

/** A change that waits for a word, because something that is cut would be wrong, or left over. */
export interface Question {
	/** What the change does: "Type picture width". */
	readonly label: string;
	/** Rows whose windows are cut, in part at least, otherwise than they would be asked. */
	readonly wronged: readonly WrongedRow[];
	/** Rows whose blanks are cut and would be wanted no more. */
	readonly leftOver: readonly LeftOverRow[];
}

/** An edit that waits for an answer. */
export interface Asked {
	readonly edit: Edit;
	readonly question: Question;
	/** The step in whose place the edit comes. */
	readonly former: Step | undefined;
}

/** An answer to a `Question`: leave all as it is, or change and keep the cuts that stand, or begin the mounts again. */
export type Answer = 'leave' | 'keep' | 'begin again';

/** Whether anything is cut that an edit might make wrong; what only ticks and marks does not. */
export const mayBeAsked = (edit: Edit, { ticks = [], cutSheets = [] }: WorkedOutShow['show']): boolean =>
	ticks.length + cutSheets.length > 0 && !edit.ticks && !edit.cutSheets;

/** What has to be asked before a change; undefined where it leaves all that is cut as it is. */
export function questionOf(label: string, before: WorkedOutShow, after: WorkedOutShow): Question | undefined {
	const wronged = rowsWronged(before, after);
	const leftOver = blanksLeftOver(before, after);
	return wronged.length + leftOver.length > 0 ? { label, wronged, leftOver } : undefined;
}
