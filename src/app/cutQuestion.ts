import { rowsWronged, type WrongedRow } from '../core/bench/cutWarning.ts';
import type { WorkedOutShow } from '../core/findings/workedOutShow.ts';
import { blanksLeftOver, type LeftOverRow } from '../core/sheets/blankWarning.ts';
import { apply, type Edit, isEmpty } from '../core/show/edit.ts';
import { readSettings } from '../core/settings/readSettings.ts';
import type { Row } from '../core/show/row.ts';
import type { Settings } from '../core/settings/settings.ts';

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
	readonly former: Edit | undefined;
}

/** An answer to a `Question`: leave all as it is, or change and keep the cuts that stand, or begin the mounts again. */
export type Answer = 'leave' | 'keep' | 'begin again';

/** Works out the rows that an edit would leave. */
export type WorkOut = (rows: readonly Row[], settings: Settings) => WorkedOutShow['results'];

/** What has to be asked before an edit; undefined where it leaves all that is cut as it is. */
export function questionOf(edit: Edit, before: WorkedOutShow, workOut: WorkOut): Question | undefined {
	if (isEmpty(edit)) return undefined;
	const show = apply(before.show, edit);
	const settings = edit.settings ? readSettings(show.settings).settings : before.settings;
	const after = { show, settings, results: workOut(show.rows, settings) };
	const wronged = rowsWronged(before, after);
	const leftOver = blanksLeftOver(before, after);
	return wronged.length + leftOver.length > 0 ? { label: edit.label, wronged, leftOver } : undefined;
}
