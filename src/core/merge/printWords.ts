import { misreadText } from '../imports/madeBySpreadsheet.ts';
import type { Row } from '../show/row.ts';
import { cellText } from './cellText.ts';

/** As much of a title as is looked at: a cell of a megabyte must not hold up the page. */
const longestTitle = 300;

/** A text by which a print is known: its case and the spaces in it are nothing. Undefined where it is blank. */
export function titleKey(text: string | undefined): string | undefined {
	const words = cellText((text ?? '').slice(0, longestTitle))
		.replaceAll(/\s+/g, ' ')
		.toLowerCase();
	return words === '' ? undefined : words;
}

/** A title with one mark in the place of all letters that a spreadsheet may lose. */
const withoutLetters = (text: string | undefined): string | undefined =>
	titleKey(text?.slice(0, longestTitle).replaceAll(/[^\0-\x7f]+|[?_]+/g, '?'));

/** A key of a title as it stands here, and of the same title as it may have come back. */
interface TitleKeys {
	readonly here: (text: string | undefined) => string | undefined;
	readonly there: (text: string | undefined) => string | undefined;
}

/** The ways in which titles are found again: as they stand, read in another encoding, with letters lost. */
export const titleKeys: readonly TitleKeys[] = [
	{ here: titleKey, there: titleKey },
	{ here: (text) => text && titleKey(misreadText(text.slice(0, longestTitle))), there: titleKey },
	{
		here: withoutLetters,
		there: (text) => (text && /[?_\ufffd]/.test(text.slice(0, longestTitle)) ? withoutLetters(text) : undefined),
	},
];

/** The number of a print, without the zeros that a spreadsheet drops; undefined where it has none. */
export const numberKey = ({ typed }: Row): string | undefined => titleKey(typed.number)?.replace(/^0+(?=\d)/, '');

/** Whether two rows have one number. */
export const isSameNumberKey = (a: Row, b: Row): boolean => numberKey(a) === numberKey(b);
