import { judgeRow } from '../../core/findings/judgeRow.ts';
import { readSettings } from '../../core/settings/readSettings.ts';
import type { Settings } from '../../core/settings/settings.ts';
import type { SolvedRow } from '../../core/row/solvedRow.ts';
import type { Typed } from '../../core/show/row.ts';

/** A word of the trade that a drawing says better than a sentence. */
export type Term = 'overlap' | 'reveal' | 'bottom weight' | 'signing space';

/** What each term means, in a sentence. */
export const termWords: Readonly<Record<Term, string>> = {
	overlap: 'How far the mount covers the picture, on each side. It hides the edge and holds the print flat.',
	reveal:
		'Paper left showing between the picture and the window, on each side. A print has a reveal or an overlap, not both.',
	'bottom weight':
		'How much wider the bottom border is than the top. With equal borders a picture looks as if it had slipped.',
	'signing space': 'Extra paper showing below the picture, for the signature and the edition number.',
};

// Larger than at the bench, so that they are seen in a small drawing.
const typed: Readonly<Record<Term, Typed>> = {
	overlap: { 'picture width': '150', 'picture height': '110', overlap: '13' },
	reveal: { 'picture width': '96', 'picture height': '62', reveal: '12' },
	'bottom weight': { 'picture width': '130', 'picture height': '70', 'bottom weight': '80%' },
	'signing space': { 'picture width': '96', 'picture height': '54', reveal: '8', 'signing space': '20' },
};

/** The print that shows a term, worked out as any print is, with the settings by which it is drawn. */
export function termSample(term: Term): { readonly solved: SolvedRow; readonly settings: Settings } {
	const { settings } = readSettings({ unit: 'mm', mountSize: '220 x 170 mm', border: '30 mm', leastBorder: '10 mm' });
	return { solved: judgeRow({ id: term, order: 0, typed: typed[term] }, settings).solved, settings };
}
