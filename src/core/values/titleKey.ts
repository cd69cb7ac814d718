const plain = (text = '') => text.trim().toLowerCase().replace(/\s+/g, ' ');

/**
 * The title of a maker as titles are told apart: whatever the capitals, and how many spaces part the words.
 * @returns undefined without a title
 */
export function titleKey({
	maker,
	title,
}: {
	readonly maker?: string | undefined;
	readonly title?: string | undefined;
}): string | undefined {
	const named = plain(title);
	return named === '' ? undefined : JSON.stringify([plain(maker), named]);
}
