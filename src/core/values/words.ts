const plain = (text: string): string => text.trim().toLowerCase().replaceAll('-', ' ');

/** Whether two texts are the same word, whatever their capitals and hyphens. */
export const isSameWord = (one: string, other: string): boolean => plain(one) === plain(other);

/**
 * The words of a list that are offered for what is typed: those that begin with it, then those that have it elsewhere,
 * whatever their capitals and hyphens; all of them where nothing is.
 */
export function offeredWords(words: readonly string[], typed: string): readonly string[] {
	const wanted = plain(typed);
	const starts = words.filter((word) => plain(word).startsWith(wanted));
	return [...starts, ...words.filter((word) => !starts.includes(word) && plain(word).includes(wanted))];
}
