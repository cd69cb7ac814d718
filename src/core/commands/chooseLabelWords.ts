import type { LabelWord } from '../settings/labels.ts';
import type { Edit } from '../show/edit.ts';
import type { Show } from '../show/show.ts';
import { isRecord } from '../values/isRecord.ts';
import { changeSettings } from './changeSettings.ts';

/** Chooses what stands on the labels for the back or for the wall; what stands on the others stays. */
export function chooseLabelWords(show: Show, kind: 'back' | 'wall', words: readonly LabelWord[]): Edit {
	const typed = show.settings['labelContents'];
	const labelContents = { ...(isRecord(typed) && typed), [kind]: words };
	return changeSettings(show, { labelContents }, 'Change what labels say');
}
