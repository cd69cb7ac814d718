import type { ColumnName } from '../core/show/columns.ts';
import { wordsInEnglish } from './foreignWords.ts';

/** Other words for ours that leave no doubt. The trade has two for most things. */
const ours: ReadonlyMap<string, string> = new Map([
	['mat', 'mount'],
	['aperture', 'window'],
	['opening', 'window'],
	['sight', 'window'],
	['image', 'picture'],
	['art', 'picture'],
	['artwork', 'picture'],
	['pic', 'picture'],
	['photograph', 'picture'],
	['w', 'width'],
	['h', 'height'],
	['dimension', 'size'],
	['dimensions', 'size'],
	['artist', 'maker'],
	['photographer', 'maker'],
	['technique', 'medium'],
	['no', 'number'],
	['nr', 'number'],
	['qty', 'copies'],
	['quantity', 'copies'],
	['notes', 'note'],
	['remarks', 'note'],
	['comment', 'note'],
	['comments', 'note'],
]);

/** Several words, already ours, that leave no doubt either, by the words that stand for the same. */
const phrases: ReadonlyMap<string, string> = new Map([
	['top border', 'top'],
	['border top', 'top'],
	['bottom border', 'bottom'],
	['border bottom', 'bottom'],
	['side border', 'side'],
	['side borders', 'side'],
	['border side', 'side'],
	['borders side', 'side'],
	['maker name', 'maker'],
	['picture title', 'title'],
	['cat number', 'number'],
	['catalogue number', 'number'],
	['catalog number', 'number'],
	['sheet size', 'paper size'],
	['sheet', 'paper size'],
	['picture author', 'maker'],
]);

/** Words that may mean a column, so that one has to ask; the likeliest first. */
const guesses: ReadonlyMap<string, readonly ColumnName[]> = new Map<string, readonly ColumnName[]>([
	['width', ['picture width', 'mount width', 'window width']],
	['height', ['picture height', 'mount height', 'window height']],
	['size', ['picture width', 'mount', 'paper']],
	['picture', ['picture width', 'title']],
	['window', ['window width']],
	['visible size', ['window width']],
	['visible width', ['window width']],
	['visible height', ['window height']],
	['print', ['picture width', 'title']],
	['print size', ['picture width', 'paper']],
	['print width', ['picture width']],
	['print height', ['picture height']],
	['photo', ['title', 'picture width']],
	['photo size', ['picture width']],
	['photo width', ['picture width']],
	['photo height', ['picture height']],
	['name', ['title', 'maker']],
	['work', ['title']],
	['work title', ['title']],
	['print title', ['title']],
	['title work', ['title']],
	['author', ['maker']],
	['material', ['medium']],
	['materials', ['medium']],
	['medium support', ['medium']],
	['medium and support', ['medium']],
	['medium material', ['medium']],
	['medium materials', ['medium']],
	['print medium', ['medium']],
	['printing medium', ['medium']],
	['process', ['medium']],
	['date', ['year']],
	['made', ['year']],
	['print run', ['edition']],
	['id', ['print id', 'number']],
	['ref', ['print id', 'number']],
	['reference', ['print id', 'number']],
	['#', ['number']],
	['item', ['number', 'title']],
	['ed', ['edition']],
	['ed number', ['edition']],
	['edition number', ['edition']],
	['edition size', ['edition']],
	['count', ['copies']],
	['border', ['side']],
	['borders', ['side']],
	['mount border', ['side']],
	['mount borders', ['side']],
	['left', ['side']],
	['left border', ['side']],
	['right border', ['side']],
	['sides', ['side']],
	['top margin', ['top']],
	['bottom margin', ['bottom']],
	['ratio', ['shape']],
	['aspect', ['shape']],
	['aspect ratio', ['shape']],
	['format', ['shape', 'picture width']],
	['glass', ['glazing']],
	['cost', ['price']],
	['price', ['price']],
	['prices', ['price']],
	['net price', ['net']],
	['nett', ['net']],
	['nett price', ['net']],
	['price net', ['net']],
	['maker price', ['net', 'price']],
	['insurance', ['value']],
	['insurance value', ['value']],
	['insured value', ['value']],
	['insured', ['value']],
	['status', ['stage']],
	['purchaser', ['buyer']],
	['sold to', ['buyer']],
	['customer', ['buyer']],
	['client', ['buyer']],
	['collector', ['buyer']],
	['signature', ['signed on']],
	['mount colour', ['board']],
	['mount color', ['board']],
	['moulding', ['frame']],
	['frame size', ['mount', 'frame']],
	['frame width', ['mount width']],
	['frame height', ['mount height']],
	['outer size', ['mount']],
	['outside size', ['mount']],
	['outer width', ['mount width']],
	['outer height', ['mount height']],
	['outside width', ['mount width']],
	['outside height', ['mount height']],
	['room', ['wall']],
	['hanging order', ['hang order']],
]);

/** The words of a header, in lower case. */
export const headerWords = (header: string): readonly string[] =>
	header
		.toLowerCase()
		.split(/[\s\-_.,:;/'’]+/)
		.filter((word) => word !== '');

/**
 * The words of a header with ours in the place of others: `mat opening` is the window, `mat outer width` and `width of
 * mat` are the mount's width. Words of other languages are read as their English ones.
 */
export function inOurWords(given: readonly string[]): readonly string[] {
	const words = wordsInEnglish(given);
	const of = words.indexOf('of');
	const turned = of > 0 && of < words.length - 1 ? [...words.slice(of + 1), ...words.slice(0, of)] : words;
	let read = turned.map((word) => ours.get(word) ?? word);
	if (read.includes('window')) read = read.filter((word, at) => word !== 'mount' && read.indexOf(word) === at);
	if (read.includes('mount')) read = read.filter((word) => word !== 'outer' && word !== 'outside');
	if (/^(width|height)$/.test(read[0] ?? '') && read.length === 2) read = [read[1]!, read[0]!];
	const phrase = phrases.get(read.join(' '));
	return phrase === undefined ? read : phrase.split(' ');
}

/**
 * The columns that a header without its unit may mean, the likeliest first; none where nothing speaks for any.
 * @param words its words, in ours
 */
export function guessColumns(name: string, words: readonly string[]): readonly ColumnName[] {
	const withoutBrackets = name.replace(/[([{][^()[\]{}]*[)\]}]\s*$/, '');
	const meant = withoutBrackets === name ? words : inOurWords(headerWords(withoutBrackets));
	return guesses.get(meant.join(' ')) ?? [];
}
