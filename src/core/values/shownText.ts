import { isRecord } from './isRecord.ts';

/** The most signs of one text that is shown beside others; a screen lays out a cell of a megabyte for seconds. */
const mostShown = 300;

/** A text from outside as it is shown beside others: whole, but for one that is far too long. Its cell keeps all of it. */
export const shownText = (text: string): string => (text.length > mostShown ? `${text.slice(0, mostShown)}…` : text);

/** A value in words, for a sentence about what it is not. */
export const shown = (value: unknown): string =>
	Array.isArray(value) ? 'a list' : isRecord(value) ? 'a record' : shownText(String(value));
