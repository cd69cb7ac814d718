/** A text as a field of one line has it, with a space for each line end: a browser's field would run the words together. */
export const oneLine = (text: string): string => text.replaceAll(/\s*[\r\n]+\s*/g, ' ');
