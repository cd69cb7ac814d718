/** What makes a spreadsheet run a cell as a formula, in its plain and its wide form; some pass over blanks before it. */
const startsFormula = /^(?:[\t\r\n]|\s*[=+\-@＝＋－＠])/;

/** A number below zero begins with a hyphen and is still only a number. */
const plainNumber = /^-\d+(?:\.\d+)?$/;

/** A cell for a file: with a leading apostrophe where a spreadsheet would run it, or where it has one already. */
export const guardCell = (text: string): string =>
	text.startsWith("'") || (startsFormula.test(text) && !plainNumber.test(text)) ? `'${text}` : text;

/** A cell from a file, without its one leading apostrophe. */
export const unguardCell = (text: string): string => (text.startsWith("'") ? text.slice(1) : text);
