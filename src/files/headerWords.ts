import type { ColumnName } from '../core/show/columns.ts';

/** Other words for ours that leave no doubt. The trade has two for most things. */
const ours: ReadonlyMap<string, string> = new Map([
	['mat', 'mount'],
	['aperture', 'window'],
	['opening', 'window'],
	['image', 'picture'],
	['w', 'width'],
	['h', 'height'],
	['dimensions', 'size'],
	['artist', 'maker'],
	['photographer', 'maker'],
	['no', 'number'],
	['nr', 'number'],
	['qty', 'copies'],
	['quantity', 'copies'],
	['notes', 'note'],
	['remarks', 'note'],
	['comment', 'note'],
	['comments', 'note'],
]);

/** Words that may mean a column, so that one has to ask; the likeliest first. */
const guesses: ReadonlyMap<string, readonly ColumnName[]> = new Map<string, readonly ColumnName[]>([
	['width', ['picture width', 'mount width', 'window width']],
	['height', ['picture height', 'mount height', 'window height']],
	['size', ['picture width', 'mount', 'paper']],
	['picture', ['picture width', 'title']],
	['window', ['window width']],
	['print', ['picture width', 'title']],
	['print size', ['picture width', 'paper']],
	['print width', ['picture width']],
	['print height', ['picture height']],
	['photo', ['title', 'picture width']],
	['photo size', ['picture width']],
	['name', ['title', 'maker']],
	['work', ['title']],
	['author', ['maker']],
	['id', ['print id', 'number']],
	['ref', ['print id', 'number']],
	['reference', ['print id', 'number']],
	['border', ['side']],
	['borders', ['side']],
	['left', ['side']],
	['sides', ['side']],
	['ratio', ['shape']],
	['aspect', ['shape']],
	['aspect ratio', ['shape']],
	['format', ['shape', 'picture width']],
	['glass', ['glazing']],
	['cost', ['price']],
	['prices', ['price']],
	['signature', ['signed on']],
	['frame size', ['mount', 'frame']],
	['outer size', ['mount']],
	['mount outer size', ['mount']],
]);

/** The words of a header, in lower case. */
export const headerWords = (header: string): readonly string[] =>
	header
		.toLowerCase()
		.split(/[\s\-_.,:;/#]+/)
		.filter((word) => word !== '');

/** The words of a header with ours in the place of others. */
export const inOurWords = (words: readonly string[]): readonly string[] => words.map((word) => ours.get(word) ?? word);

/** The columns that a header may mean, the likeliest first; none where nothing speaks for any. */
export function guessColumns(header: string): readonly ColumnName[] {
	const words = inOurWords(headerWords(header.replace(/[([][^()[\]]*[)\]]\s*$/, '')));
	const withoutUnit = /^(mm|cm|m|in|inch|inches|ft)$/.test(words.at(-1) ?? '') ? words.slice(0, -1) : words;
	return guesses.get(withoutUnit.join(' ')) ?? guesses.get(words.join(' ')) ?? [];
}
