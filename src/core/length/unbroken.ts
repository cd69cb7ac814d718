/**
 * A sentence whose measures stay on one line each, `440 × 401 mm`: at the bench a figure is never read without its unit.
 * For what is shown only; copied and found, its spaces are plain ones.
 */
export const unbroken = (text: string): string =>
	text.replace(/(?<=\d) (?=(?:mm|cm|m|in|kg|×) ?\b|\d+\/\d)|(?<=×) /g, '\u00A0');
