/** The sign that stands for a line end in a field of one line. */
const lineEnd = '↵';

/** A text as a field of one line has it, with a sign for each line end: a browser's field would run the words together. */
export const oneLine = (text: string): string => text.replaceAll(/\r\n?|\n/g, lineEnd);

/** The text that such a field holds, with its line ends. */
export const withLineEnds = (text: string): string => text.replaceAll(lineEnd, '\n');
