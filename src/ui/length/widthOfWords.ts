/** How wide a text is about, in the height of its letters: figures are all of one width, and wider than most letters. */
export const widthOfWords = (text: string): number =>
	[...text].reduce((sum, sign) => sum + (/\d/.test(sign) ? 0.7 : /[fijlrt., /]/.test(sign) ? 0.36 : 0.58), 0);
