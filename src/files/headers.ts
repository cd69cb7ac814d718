import type { Unit } from '../core/length/reading.ts';
import { typedUnits } from '../core/length/tokens.ts';
import type { SaidColumn } from '../core/imports/columnMatching.ts';
import { type ColumnName, columns, hasUnit, kindOf } from '../core/show/columns.ts';
import { solvedKeys, type SolvedKey } from '../core/row/solvedRow.ts';
import { guessColumns, headerWords, inOurWords } from './headerWords.ts';

/** A length that is worked out: of the row as it is cut, or as it hangs. */
export type ResultKey = SolvedKey | 'framedWidth' | 'framedHeight';

const resultKeys: readonly ResultKey[] = [...solvedKeys, 'framedWidth', 'framedHeight'];

/** The columns of worked-out lengths, by the key of the result: `result mount width`. */
export const resultLengths: readonly { readonly name: string; readonly key: ResultKey }[] = resultKeys.map((key) => ({
	name: `result ${key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)}`,
	key,
}));

/** The column that stands behind those of lengths. */
export const resultWeight = 'result weight (kg)';

/**
 * The columns of where a print hangs, behind its weight. They follow from all that hangs on the wall, so those of a file
 * say nothing of the row that they came with, and are not compared.
 */
export const resultPlaces = ['result hang left', 'result hook height'] as const;

/** The columns of other results, in the order in which they are written. */
export const resultTexts = ['result findings', 'result steps', 'result settings'] as const;

/** The column of what a print costs, in the show's currency. */
export const resultCost = 'result cost';

/** What a header of a file stands for. */
export type Header =
	| {
			readonly kind: 'typed';
			readonly name: ColumnName;
			readonly unit: HeaderUnit | undefined;
			/** Whether sizes under it give the height first. */
			readonly isHeightFirst?: true;
	  }
	| { readonly kind: 'result'; readonly name: string; readonly unit: HeaderUnit | undefined }
	/** The unit of the bare numbers of each row, in the columns whose headers name none. */
	| { readonly kind: 'units'; readonly name: string }
	| { readonly kind: 'unknown'; readonly name: string };

/** The unit that a header may carry. Metres and feet are none that a show can have. */
export type HeaderUnit = Unit | 'm' | 'ft' | '%';

/** Units as headers spell them out; a cell with a length has them short. */
const spelledOut = [
	['millimetre millimetres millimeter millimeters', 'mm'],
	['centimetre centimetres centimeter centimeters', 'cm'],
	['metre metres meter meters', 'm'],
] as const;

const headerUnits: ReadonlyMap<string, HeaderUnit> = new Map<string, HeaderUnit>([
	...typedUnits,
	['″', 'in'],
	['′', 'ft'],
	...spelledOut.flatMap(([words, unit]) => words.split(' ').map((word) => [word, unit] as const)),
	['%', '%'],
	['percent', '%'],
]);

/** A header without what it may be written with or without. */
const bare = (header: string) => header.toLowerCase().replace(/[\s\-_]+/g, '');

const typedNames = new Map<string, ColumnName>(columns.map(({ name }) => [bare(name), name]));
/** A size in one column: its two lengths go into both columns of the pair. */
const sizeNames = new Map<string, ColumnName>([
	['picturesize', 'picture width'],
	['windowsize', 'window width'],
	['mountsize', 'mount'],
	['papersize', 'paper'],
]);
const resultNames = new Map<string, string>(
	[...resultLengths.map(({ name }) => name), resultWeight, ...resultPlaces, ...resultTexts, resultCost].map((name) => [
		bare(name),
		name,
	]),
);

const isResultLength = (name: string) =>
	resultLengths.some((column) => column.name === name) || resultPlaces.some((place) => place === name);

/** A header taken apart: what it names, and what it says of the numbers under it. */
interface HeaderParts {
	readonly name: string;
	readonly unit: HeaderUnit | undefined;
	/** Whether it says that sizes under it give the height first: `size (h x w)`. */
	readonly isHeightFirst: boolean;
	/** Whether something stands in its brackets that is neither a unit nor the order of a size. */
	readonly isOdd: boolean;
}

/** The words for the two lengths of a size, in the languages of the trade; `l` is largeur, larghezza. */
const heightWord = 'h|height|höhe|hoehe|hauteur|altezza|alto|altura|hoogte';
const sideWord = `${heightWord}|w|width|b|breite|l|largeur|larghezza|ancho|anchura|breedte`;
/** `w x h`, `height × width`, `H x B`: which of the two lengths of a size stands first. */
const sizeOrder = new RegExp(`(?<!\\p{L})(${sideWord})\\s*(?:x|×|\\*|by)\\s*(${sideWord})(?!\\p{L})`, 'iu');
const isHeightWord = (word: string | undefined) => new RegExp(`^(?:${heightWord})$`, 'i').test(word ?? '');

/** No header that means anything is longer, in signs; a cell of a megabyte is not looked into. */
export const longestHeader = 200;

/** Takes a header apart: a unit may stand behind its name, in brackets or not, and so may the order of a size. */
function partsOf(text: string): HeaderParts {
	const order = sizeOrder.exec(text);
	const [first, second] = [order?.[1], order?.[2]].map(isHeightWord);
	const isOrdered = order !== null && first !== second;
	const plain = isOrdered ? text.replace(order[0], ' ').replace(/[([{][\s,;]*[)\]}]/, ' ') : text;
	const isHeightFirst = isOrdered && first === true;
	const [, before, inBrackets] = /^(.*?)\s*[([{]([^()[\]{}]*)[)\]}]\s*$/s.exec(plain) ?? [];
	const inside = inBrackets === undefined ? undefined : unitOf(inBrackets.replace(/^[\s,;]*(?:in\s+(?=\S))?/i, ''));
	if (inBrackets !== undefined) {
		const name = sizeName(before ?? '', isOrdered);
		return { name, unit: inside, isHeightFirst, isOdd: inside === undefined };
	}
	const [, name = plain, last = ''] =
		/^(.*?)\s*(["″])\s*$/.exec(plain) ?? /^(.*?[^\s\-_,:/])[\s\-_,:/]+(?:in\s+)?([^\s\-_,:/]+)\s*$/i.exec(plain) ?? [];
	const unit = unitOf(last);
	return { name: sizeName(unit === undefined ? plain : name, isOrdered), unit, isHeightFirst, isOdd: false };
}

const unitOf = (text: string): HeaderUnit | undefined =>
	headerUnits.get(text.toLowerCase().trim().replace(/\.$/, '').trim());

/** What says in which order it gives width and height speaks of a size, whether it says so or not. */
const sizeName = (name: string, isOrdered: boolean): string =>
	isOrdered && !isSizeName(name) ? `${name} size`.trim() : name;

/** What is read off a header. */
interface Understood {
	readonly header: Header;
	/** What is left of it without its unit and the order of a size. */
	readonly name: string;
	/** The words of that name, in ours. */
	readonly words: readonly string[];
	/** The columns that it may mean where it is none by name, the likeliest first. */
	readonly guesses: readonly ColumnName[];
}

/**
 * What a header stands for: its case, spaces, `-` and `_` are nothing, the trade's other words are ours, and a unit may
 * stand behind it, in brackets or not. A header of a size may say which of its two lengths stands first.
 */
export const readHeader = (text: string): Header =>
	text.length > longestHeader ? { kind: 'unknown', name: text } : understood(text).header;

function understood(text: string): Understood {
	const header = text.slice(0, longestHeader);
	const known = remembered.get(header);
	if (known) return known;
	const read = readAnew(header);
	if (remembered.size >= mostRemembered) remembered.clear();
	remembered.set(header, read);
	return read;
}

/** The same few texts are read for each of what may stand between cells, and in each line that may name the columns. */
const remembered = new Map<string, Understood>();
const mostRemembered = 200_000;

function readAnew(text: string): Understood {
	const whole = text.trim();
	const parts = partsOf(text);
	const words = inOurWords(headerWords(parts.name));
	// Where nothing stands behind the name, both are the same.
	const isNameAlone = parts.name.trim() === whole;
	const header = named(whole, undefined, isNameAlone ? words : inOurWords(headerWords(whole))) ?? namedBy(parts, words);
	return {
		header: header ?? { kind: 'unknown', name: text },
		name: parts.name,
		words,
		guesses: guessColumns(parts.name, words),
	};
}

/** What a header is by its parts. */
function namedBy({ name, unit, isHeightFirst, isOdd }: HeaderParts, words: readonly string[]): Header | undefined {
	const known = isOdd ? undefined : named(name, unit, words);
	return known && isHeightFirst && known.kind === 'typed' ? { ...known, isHeightFirst: true } : known;
}

/** The unit that a cell is, with nothing else in it but brackets: `mm`, `(in)`. */
export const unitIn = (text: string): HeaderUnit | undefined => unitOf(text.trim().replace(/^[([{]|[)\]}]$/g, ''));

/** The words of a header in ours, without its unit and the order of a size. */
export const wordsOfHeader = (text: string): readonly string[] => understood(text).words;

/** The columns that a header without its unit may mean, the likeliest first; none where nothing speaks for any. */
export const guessesOf = (text: string): readonly ColumnName[] => understood(text).guesses;

/**
 * Whether a column of others says who bought a print: `buyer email`, `sold to`. One that may also name whom a print is
 * framed for, such as `client`, does not.
 */
export function saysBuyer(header: string): boolean {
	const words = inOurWords(headerWords(header.slice(0, longestHeader).replace(/[()[\]{}]/g, ' ')));
	return words.some((word) => word === 'buyer' || word === 'purchaser') || words.join(' ').startsWith('sold to');
}

/** Whether a header says that the sizes under it give the height first. */
export const saysHeightFirst = (text: string): boolean => partsOf(text.slice(0, longestHeader)).isHeightFirst;

/** A column that a person has said a header to mean, with what the header says of the numbers under it. */
export function headerSaidToBe(text: string, { name, isHeightFirst: isSaid }: SaidColumn): Header {
	const { unit, ...parts } = partsOf(text.slice(0, longestHeader));
	const isHeightFirst = isSaid ?? parts.isHeightFirst;
	return {
		kind: 'typed',
		name,
		unit: mayCarry(name, unit) ? unit : undefined,
		...(isHeightFirst && { isHeightFirst: true }),
	};
}

function named(name: string, unit: HeaderUnit | undefined, words: readonly string[]): Header | undefined {
	for (const form of [bare(name), words.join('')]) {
		const typed = typedNames.get(form) ?? sizeNames.get(form);
		if (typed !== undefined && mayCarry(typed, unit)) return { kind: 'typed', name: typed, unit };
		const result = resultNames.get(form);
		if (result !== undefined && (unit === undefined || (isResultLength(result) && unit !== '%')))
			return { kind: 'result', name: result, unit };
	}
	if (unit === undefined && /^units?$/.test(words.join(' '))) return { kind: 'units', name };
	return undefined;
}

/** Whether a header speaks of a size, width and height in one. */
export const isSizeName = (text: string): boolean => inOurWords(headerWords(text)).includes('size');

/** Whether a header has a column's own name, not another word for it. */
export const isOwnName = (text: string, name: string): boolean =>
	bare(text.slice(0, longestHeader).replace(/[([{].*$/s, '')) === bare(name);

/** Whether the numbers of a column may be in a unit. */
export function mayCarry(column: ColumnName, unit: HeaderUnit | undefined): boolean {
	if (unit === undefined) return true;
	return unit === '%' ? kindOf(column) === 'weight' : hasUnit(column);
}
