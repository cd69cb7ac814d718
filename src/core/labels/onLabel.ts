import { backLabelWords, type LabelWord, wallLabelWords } from '../settings/labels.ts';
import type { Settings } from '../settings/settings.ts';

/** Where a label is stuck. */
export type LabelKind = 'back' | 'wall';

/** Something that may stand on a label, as it is chosen. */
export interface LabelChoice {
	readonly word: LabelWord;
	readonly isOn: boolean;
	/** Why it cannot be chosen otherwise, in a sentence; undefined where it can. */
	readonly ruled: string | undefined;
}

const ruledOut = 'The rules of the show forbid the maker’s name on the back.';
const ruledIn = 'The rules of the show require the maker’s name on the back.';

/**
 * What may stand on a label of a kind, and what does: as chosen, but for the maker's name on the back, on which the rules
 * of the show decide. Whoever makes labels asks this, and nothing else.
 */
export function labelChoices(
	kind: LabelKind,
	settings: Pick<Settings, 'labels' | 'labelContents'>,
): readonly LabelChoice[] {
	const chosen = new Set(settings.labelContents[kind]);
	const { name } = settings.labels;
	return (kind === 'back' ? backLabelWords : wallLabelWords).map((word): LabelChoice => {
		const rule = kind === 'back' && word === 'maker' ? name : 'free';
		if (rule === 'forbidden') return { word, isOn: false, ruled: ruledOut };
		if (rule === 'required') return { word, isOn: true, ruled: ruledIn };
		return { word, isOn: chosen.has(word), ruled: undefined };
	});
}

/** What stands on a label of a kind. */
export const onLabel = (
	kind: LabelKind,
	settings: Pick<Settings, 'labels' | 'labelContents'>,
): ReadonlySet<LabelWord> => new Set(labelChoices(kind, settings).flatMap(({ word, isOn }) => (isOn ? [word] : [])));
