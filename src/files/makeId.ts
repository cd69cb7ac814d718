const letters = '23456789abcdefghjkmnpqrstuvwxyz_'; // 32; none that is read as another

/**
 * A name for a row or a show that no other has: 45 random bits, short enough for a column of a CSV. The letter before
 * them keeps spreadsheets from reading a number such as 4e21. `isMadeId` knows such names again.
 */
export const makeId = (): string =>
	`p${Array.from(crypto.getRandomValues(new Uint8Array(9)), (byte) => letters[byte % letters.length]).join('')}`;
