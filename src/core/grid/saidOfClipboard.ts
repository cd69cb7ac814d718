/** What is said where the browser does not give or take what is on the clipboard. */
export const clipboardRefused = (what: 'copy' | 'paste'): string =>
	what === 'copy'
		? 'This browser did not let the app copy. Use the keyboard, or export the rows as a file.'
		: 'This browser did not let the app see what was copied. Allow it when you are asked, or paste the rows under Files.';

/** What is said where nothing on the clipboard can be pasted. */
export const nothingToPaste = 'Nothing on the clipboard can be pasted.';
