const letters = '23456789abcdefghjkmnpqrstuvwxyz_'; // 32; none that is read as another

/** How many random bytes make a name: 45 bits of them, short enough for a column of a CSV. */
export const bytesOfId = 9;

/** A name made of random bytes. The letter before them keeps spreadsheets from reading a number such as 4e21. */
export const madeId = (bytes: Uint8Array): string =>
	`p${Array.from(bytes, (byte) => letters[byte % letters.length]).join('')}`;

const made = new RegExp(`^p[${letters}]{${bytesOfId}}$`);

/**
 * Whether a print id is one that the app made up for a row, not one that a person typed. It is written to files, so that
 * a row finds its place again, but it is no text of the row's own.
 */
export const isMadeId = (text: string): boolean => made.test(text);
