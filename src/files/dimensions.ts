import { splitSizeText } from '../core/length/parseSize.ts';

/** What a size in a cell is of. */
export type DimensionOf = 'picture' | 'paper' | 'mount' | 'frame';

/** A size that stands in a cell among words, width first. */
export interface Dimension {
	/** Undefined where no word says what it is of. */
	readonly of: DimensionOf | undefined;
	/** As a text that is read as a size. */
	readonly size: string;
}

/** No cell that gives dimensions is longer. */
const longestCell = 300;

const figures = String.raw`\d[\d.,]*(?:\s*[¼½¾⅐-⅞]|\s+\d{1,2}\/\d{1,3}|\/\d{1,3})?`;
const unit = String.raw`(?:\s*(?:mm|cm|m|inches|inch|in|ft|["″])(?![a-z])\.?)?`;
const sideWord = String.raw`(?:h|w|b|height|width|high|wide)`;
const side = (name: string) =>
	String.raw`(?:(?<${name}Before>(?<![a-z])${sideWord})[\s.:=]*)?(?<${name}>${figures}${unit})(?:\s*\(?(?<${name}Behind>${sideWord})(?![a-z])\)?)?`;
/** Not within a name or a number: the `4 x 2` of `A4 x 2` is no size. */
const start = String.raw`(?<![a-z\d]|\d[.,])`;
/** Two lengths with a sign between them, each with the word for its side before or behind it, or with none. */
const sizePattern = new RegExp(
	String.raw`${start}${side('first')}\s*(?:x|×|by|\*)\s*${side('second')}(?<unit>${unit})`,
	'gi',
);
/** Words for units that no length is read in, or how they begin: a size before one of them is in none of ours. */
const otherUnit =
	/^\s*(?:(?:cms|mms|ins|dm|km|po|p[ti]s?|[dp]pi|yds?)(?![a-z])|p(?:x|ix)|point|pica|yard|met[er]|mètre|mill?im|[cz]entim|de[cz]im|zoll|pouce|pollic|pulgad|duim)/i;
/** What every size has, looked for first: a long list has many cells, and few sizes. */
const twoFigures = /\d[^]*?(?:x|×|by|\*)[^]*?\d/i;

/** The words that say what a size is of. */
const words: readonly (readonly [of: DimensionOf, pattern: RegExp])[] = [
	['frame', /(?:^|[^a-z])(?:framed?|rahmen|cadre|cornice|marco|lijst)(?![a-z])/i],
	['mount', /(?:^|[^a-z])(?:mount(?:ed)?|mat|passepartout)(?![a-z])/i],
	['paper', /(?:^|[^a-z])(?:support|sheet|paper|blatt|papier|feuille|foglio|hoja|blad)(?![a-z])/i],
	[
		'picture',
		/(?:^|[^a-z])(?:image|picture|plate|impression|sight|print|bild|platte|motiv|immagine|imagen|beeld)(?![a-z])/i,
	],
];

const ofWords = (text: string): DimensionOf | undefined => words.find(([, pattern]) => pattern.test(text))?.[0];

/**
 * The sizes that stand in a cell as museums and galleries write them: `image: 243 x 335 mm; sheet: 300 x 400 mm`,
 * `H 24 x W 33 cm`, `243 x 335 mm (9 1/2 x 13 1/4 in)`, of which the second says the first once more.
 * @param isHeightFirst whether the list says that the height stands first
 */
export function dimensionsIn(text: string, isHeightFirst = false): readonly Dimension[] {
	if (text.length > longestCell || !twoFigures.test(text)) return [];
	const found: Dimension[] = [];
	let end = 0;
	for (const match of text.matchAll(sizePattern)) {
		const groups = match.groups!;
		const before = text.slice(end, match.index);
		const rest = text.slice(match.index + match[0].length);
		const behind = /^\s*\(([^()\d]{1,40})\)/.exec(rest);
		end = match.index + match[0].length + (behind?.[0].length ?? 0);
		if (otherUnit.test(rest) || isCutOff(match[0], before, rest)) continue;
		const of = ofWords(before) ?? (behind === null ? undefined : ofWords(behind[1]!));
		if (of === undefined && found.length > 0 && /[(=/]\s*$/.test(before)) continue; // the same in another unit
		const sizeUnit = groups['unit'] ?? '';
		const sides = splitSizeText(`${groups['first']} x ${groups['second']}${sizeUnit}`);
		if (sides === undefined) continue;
		const [first, second] = [
			groups['firstBefore'] ?? groups['firstBehind'],
			groups['secondBefore'] ?? groups['secondBehind'],
		];
		const saysHeight = (word: string | undefined) => /^h/i.test(word ?? '');
		const isTurned =
			first === undefined && second === undefined
				? isHeightFirst
				: saysHeight(first) || (first === undefined && !saysHeight(second));
		found.push({ of, size: isTurned ? `${sides.height} x ${sides.width}` : `${sides.width} x ${sides.height}` });
	}
	return found;
}

/** What stands before a size whose first length begins there: `9-` of 9-1/2, `2 ft` of 2 ft 4 in, `1 ` of 1 200. */
const beginsBefore = /\d\s*[-–/]\s*$|\d\s*(?:ft\.?|foot|feet|['’′])\s*-?\s*$/i;
const thousandBefore = /(?:^|[^\d.,])\d{1,3}\s$/;
/** What stands behind a size whose last length, or unit, is still to come: `-1/4 in` of 13-1/4 in, `x 2 cm` of 30 x 40 x 2 cm. */
const goesOn = /^\s*(?:[-–/x×*]|by)?\s*\d/i;

/** Whether what was found is a part of something longer, so that its figures do not say what they seem to. */
function isCutOff(found: string, before: string, rest: string): boolean {
	if (beginsBefore.test(before) || (/^\d{3}(?!\d)/.test(found) && thousandBefore.test(before))) return true;
	return goesOn.test(rest) && !/(?:mm|cm|m|in|inch|inches|["″])\.?$/i.test(found);
}
