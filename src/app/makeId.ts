const letters = '23456789abcdefghjkmnpqrstuvwxyz_'; // 32; none that is read as another

/**
 * A name for a row or a show that no other has: 50 random bits, short enough for a column of a CSV. The letter before
 * them keeps spreadsheets from reading a number such as 4e21.
 */
export const makeId = (): string =>
	`p${Array.from(crypto.getRandomValues(new Uint8Array(10)), (byte) => letters[byte % letters.length]).join('')}`;
