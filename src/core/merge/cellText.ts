/**
 * A text as it is compared: what nobody can see is no difference, and files and spreadsheets change it. So a letter with
 * its accent is one sign, spaces that do not break are spaces, line ends are of one kind, and what stands before and
 * after the text is left.
 */
export const cellText = (text: string): string =>
	text
		.normalize('NFC')
		.replaceAll(/[\u00a0\u2007\u202f]/g, ' ')
		.replaceAll(/\r\n?/g, '\n')
		.trim();
