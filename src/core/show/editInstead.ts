import { readSettings } from '../settings/readSettings.ts';
import type { Settings } from '../settings/settings.ts';
import { apply, type Command, compose, type Edit, invert, isEmpty, rebase } from './edit.ts';
import type { Show } from './show.ts';

/**
 * The edit that a command makes in the place of a step, as if that had never been: what leads from the show, which has the
 * step in it, to the one that has the command's edit instead.
 * @returns undefined where the command does nothing: then the step has only to be taken back
 */
export function editInstead(former: Edit, command: Command, show: Show, settings: Settings): Edit | undefined {
	const back = rebase(invert(former), show);
	const before = apply(show, back);
	const edit = command(before, back.settings ? readSettings(before.settings).settings : settings);
	return isEmpty(edit) ? undefined : { ...compose(back, edit), label: edit.label };
}
