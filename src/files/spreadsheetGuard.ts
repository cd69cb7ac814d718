import { guardCell } from './formulaGuard.ts';

/**
 * What a spreadsheet turns into something else as it opens a file: what looks like a date (`3/12`, `1.5`, `2-10`, `Mar 12`),
 * a time (`3:2`), a fraction (`20 1/2`), a number with zeros or a plus before it, too long, or with an exponent, a truth.
 */
const turned: readonly RegExp[] = [
	/^\d{1,4}\s?[/.-]\s?\d{1,4}(?:\s?[/.-]\s?\d{1,4})?$/,
	/^\d{1,4}\s?:\s?\d{1,4}(?::\d{1,2})?(?:\s?[ap]m?)?$/i,
	/^\d+\s+\d+\/\d+$/,
	/^[+-]?0\d+/,
	/^\+\d/,
	/^\d{12,}$/,
	/^\d+(?:[.,]\d+)?e[+-]?\d+$/i,
	/^(?:\d{1,4}[\s./-]+\p{L}{3,9}\.?|\p{L}{3,9}\.?[\s./-]+\d{1,4})(?:[\s,./-]+\d{1,4})?$/u,
	/^\d+(?:[.,]\d+)?\s?%$/,
	/^(?:true|false|wahr|falsch|vrai|faux|vero|falso|verdadero|waar|onwaar)$/i,
	/^\d+,\d+$/, // thousands where a comma parts them
];

/** No text that a spreadsheet reads as a number or a date is longer. */
const longestTurned = 60;

/**
 * A cell for a file that is opened in a spreadsheet: with a leading apostrophe, which makes it text, where the spreadsheet
 * would run it or turn it into a date, a time or a number of its own. Read back, the apostrophe is taken off again.
 */
export const textForSpreadsheet = (text: string): string => {
	const plain = text.trim();
	return plain.length <= longestTurned && turned.some((pattern) => pattern.test(plain)) ? `'${text}` : guardCell(text);
};
