import { formatMark, formatMarkWithUnit } from '../length/formatMark.ts';
import type { Settings } from '../settings/settings.ts';
import { capital } from '../values/capital.ts';
import { fixingWords, type HangingLine } from './hangingList.ts';
import { cordSum, dropWords, ratingWords } from './holdWords.ts';
import { markedOf } from './marked.ts';

/** What stands under a print of the hanging list, line by line. */
export interface LineWords {
	/** The sum to fill in once its cord is measured; undefined where nothing is to be measured. */
	readonly sum: string | undefined;
	/** What stops below the frame's top where no sum says it, and where the print is. */
	readonly place: string;
	/** By what it hangs, and what that has to hold. */
	readonly hold: string;
}

/** The words under a print of the hanging list on paper, its lengths as marked. */
export function lineWords(line: HangingLine, settings: Settings): LineWords {
	const { hooks, mark, weightKg } = line;
	const { edge, middle } = markedOf(line, settings);
	const sum = cordSum(line, settings);
	const its = sum ? 'Left' : hooks ? `${dropWords(hooks.fixing, settings)}; frame’s left` : 'Its left';
	const rating = hooks && ratingWords(weightKg, hooks.fixing, settings);
	const fixing =
		mark.what === 'corner'
			? 'Measured to its top left corner'
			: capital(fixingWords(line, settings, formatMarkWithUnit));
	return {
		sum,
		place: `${its} edge ${formatMark(edge, settings)}, middle ${formatMarkWithUnit(middle, settings)}`,
		hold: `${fixing}${rating ? `. ${rating}` : ''}`,
	};
}
