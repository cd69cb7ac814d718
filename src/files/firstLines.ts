/** How much is looked at of a line that is longer than all that was to be looked at: no list has so many columns, or none that is one. */
const mostOfLongLine = 20_000;

/**
 * The first lines of a text, at most so many characters; where it is longer, the last line may end within a quote. Where
 * not even its first line is so short, some of that line.
 */
export function firstLines(text: string, mostCharacters: number): string {
	if (text.length <= mostCharacters) return text;
	const end = text.lastIndexOf('\n', mostCharacters);
	return text.slice(0, end > 0 ? end : Math.min(mostOfLongLine, mostCharacters));
}
