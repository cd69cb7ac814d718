/**
 * Whether a print id is one that the app made up for a row, a p and nine more signs, not one that a person typed. It is
 * written to files, so that a row finds its place again, but it is no text of the row's own.
 */
export const isMadeId = (text: string): boolean => /^p[2-9a-hjkmnp-z_]{9}$/.test(text);
