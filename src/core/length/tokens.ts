import { decimalFraction, type Fraction } from './fraction.ts';

/** The units that a length may be typed in. */
export type TypedUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

/** A piece of a typed length, size, shape or weight. */
export type Token = { readonly start: number; readonly end: number } & (
	| { readonly kind: 'number'; readonly isWhole: boolean; readonly value: Fraction }
	/** Digits that may be meant in more than one way; each way is a text that can be read. */
	| { readonly kind: 'unsure number'; readonly meanings: readonly string[] }
	| { readonly kind: 'unit'; readonly unit: TypedUnit }
	| { readonly kind: 'slash' | 'minus' | 'plus' | 'times' | 'colon' | 'per cent' | 'unknown' }
);

/** A typed text cut into pieces; `start` and `end` of a piece are places in `text`, which has plain spaces and signs. */
export interface Tokens {
	readonly text: string;
	readonly tokens: readonly Token[];
}

const vulgarFractions: Readonly<Record<string, string>> = {
	'¼': '1/4',
	'½': '1/2',
	'¾': '3/4',
	'⅐': '1/7',
	'⅑': '1/9',
	'⅒': '1/10',
	'⅓': '1/3',
	'⅔': '2/3',
	'⅕': '1/5',
	'⅖': '2/5',
	'⅗': '3/5',
	'⅘': '4/5',
	'⅙': '1/6',
	'⅚': '5/6',
	'⅛': '1/8',
	'⅜': '3/8',
	'⅝': '5/8',
	'⅞': '7/8',
};

/** Units as they are typed. A map: every record answers to words such as `constructor`. */
export const typedUnits: ReadonlyMap<string, TypedUnit> = new Map([
	['mm', 'mm'],
	['cm', 'cm'],
	['m', 'm'],
	['in', 'in'],
	['inch', 'in'],
	['inches', 'in'],
	['"', 'in'],
	['ft', 'ft'],
	['foot', 'ft'],
	['feet', 'ft'],
	["'", 'ft'],
]);

/** A decimal mark with no digit behind it: `250.`, `25, cm`. Before a figure it may part two of them. */
const idleMark = /(\d)[.,](?! ?[\d.,/])/g;

/** Plain spaces, slashes, minus signs and quotation marks for all the forms in which they are typed, and no idle marks. */
function plain(text: string): string {
	return text
		.replace(/[¼½¾⅐-⅞]/g, (sign) => ` ${vulgarFractions[sign] ?? sign}`)
		.replace(/[\s\u200b\u2060]+/g, ' ')
		.replace(/[\u2044\u2215]/g, '/')
		.replace(/[\u2010-\u2013\u2212]/g, '-')
		.replace(/[\u2032\u2018\u2019]/g, "'")
		.replace(/[\u2033\u201c\u201d]|''/g, '"')
		.trim()
		.replace(idleMark, '$1');
}

const numberPattern = /\d+(?:[.,]\d+)*|[.,]\d+/y;
const wordPattern = /[a-z]+\.?/iy;
/** A unit that stands close before the `x` of a size: `60cmx45cm`. */
const unitBeforeTimes = /(?:mm|cm|m|in|inch|inches|ft|foot|feet)(?=(?:x|by)(?![a-z]))/iy;

/** No length, size, shape or weight is typed longer, in signs; a cell of a megabyte is not looked into. */
const longestTyped = 1000;

/** Cuts a typed text into pieces. What is none of ours is a piece of the kind `unknown`, and so is what is far too long. */
export function tokenize(typed: string): Tokens {
	if (typed.trim().length > longestTyped) return { text: '', tokens: [{ kind: 'unknown', start: 0, end: 0 }] };
	const text = plain(typed);
	const tokens: Token[] = [];
	for (let start = 0; start < text.length;) {
		const token = tokenAt(text, start);
		if (token === undefined) {
			start++;
			continue;
		}
		tokens.push(token);
		start = token.end;
	}
	return { text, tokens };
}

const signs: Readonly<Record<string, 'slash' | 'minus' | 'plus' | 'times' | 'colon' | 'per cent'>> = {
	'/': 'slash',
	'-': 'minus',
	'+': 'plus',
	'×': 'times',
	'*': 'times',
	':': 'colon',
	'∶': 'colon',
	'%': 'per cent',
};

function tokenAt(text: string, start: number): Token | undefined {
	const character = text[start]!;
	if (character === ' ') return undefined;
	numberPattern.lastIndex = start;
	const digits = numberPattern.exec(text)?.[0];
	if (digits !== undefined) return numberToken(digits, start);
	const sign = signs[character];
	if (sign !== undefined) return { kind: sign, start, end: start + 1 };
	unitBeforeTimes.lastIndex = wordPattern.lastIndex = start;
	const word = (unitBeforeTimes.exec(text) ?? wordPattern.exec(text))?.[0] ?? character;
	const end = start + word.length;
	const name = word.toLowerCase();
	if (name === 'x' || name === 'by') return { kind: 'times', start, end };
	const unit = typedUnits.get(name.replace('.', ''));
	return unit === undefined ? { kind: 'unknown', start, end } : { kind: 'unit', unit, start, end };
}

/**
 * A comma before exactly three digits is a decimal mark to some and a thousands mark to others, so it is not guessed,
 * unless nothing but zeros stands before it.
 */
function numberToken(digits: string, start: number): Token {
	const end = start + digits.length;
	const marks = digits.replace(/\d/g, '');
	if (marks.length === 0) return { kind: 'number', isWhole: true, value: decimalFraction(digits), start, end };
	if (marks.length === 1) {
		const [whole = '', decimals = ''] = digits.split(marks);
		if (marks === ',' && decimals.length === 3 && /[1-9]/.test(whole))
			return { kind: 'unsure number', meanings: [whole + decimals, `${whole}.${decimals}`], start, end };
		return { kind: 'number', isWhole: false, value: decimalFraction(digits), start, end };
	}
	return { kind: 'unsure number', meanings: groupedMeanings(digits), start, end };
}

/** What digits in groups of three with several marks may mean: `1.500,25` is 1500.25. */
function groupedMeanings(digits: string): string[] {
	const joined = digits.replace(/[.,]/g, '');
	if (/^\d{1,3}(?:,\d{3})+$|^\d{1,3}(?:\.\d{3})+$/.test(digits)) return [joined];
	const grouped = /^(\d{1,3}(?:,\d{3})+)\.(\d+)$|^(\d{1,3}(?:\.\d{3})+),(\d+)$/.exec(digits);
	if (grouped === null) return [];
	return [`${(grouped[1] ?? grouped[3])!.replace(/[.,]/g, '')}.${(grouped[2] ?? grouped[4])!}`];
}
