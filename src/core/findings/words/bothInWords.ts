import type { Scale } from '../../length/formatLength.ts';
import type { Code, FiguresByCode } from '../figures.ts';
import { pairs } from './pairs.ts';
import { writeSentence } from './say.ts';
import { sentences } from './sentences.ts';

/** The one sentence for what was found across and down; two where the axes are wrong in different ways. */
export function sentenceOfBoth<C extends Code>(
	code: C,
	across: FiguresByCode[C],
	down: FiguresByCode[C],
	scale: Scale,
): string {
	return writeSentence(
		scale,
		(say) => pairs[code]?.(across, down, say) ?? `${sentences[code](across, say)} ${sentences[code](down, say)}`,
	);
}

/** Whether a code is found axis by axis, so that a row may have it twice for one cause. */
export const isOfAxes = (code: Code): boolean => code in pairs;
