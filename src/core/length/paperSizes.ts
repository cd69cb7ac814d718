import { inches, mm } from './length.ts';
import type { NamedSize } from './size.ts';

const iso = (series: string, sizes: readonly (readonly [number, number])[]): NamedSize[] =>
	sizes.map(([width, height], number) => ({ name: `${series}${number}`, width: mm(width), height: mm(height) }));

const inInches = (name: string, width: number, height: number): NamedSize => ({
	name,
	width: inches(width),
	height: inches(height),
});

/**
 * Paper sizes known by name, upright: ISO A and B (ISO 216:2007, trimmed sizes), ANSI A to E (ASME Y14.1), the North
 * American office sizes, A3+ as printers of pictures are sold for it, and the photographic sizes by the number of inches
 * of their shorter side (`8R` is 8 x 10 in; 16R, 20R and 30R from PWG 5101.1, the others common practice, from memory).
 * The B series is ISO's; the Japanese one of the same names is larger.
 */
export const paperSizes: readonly NamedSize[] = [
	...iso('A', [
		[841, 1189],
		[594, 841],
		[420, 594],
		[297, 420],
		[210, 297],
		[148, 210],
		[105, 148],
		[74, 105],
		[52, 74],
		[37, 52],
		[26, 37],
	]),
	...iso('B', [
		[1000, 1414],
		[707, 1000],
		[500, 707],
		[353, 500],
		[250, 353],
		[176, 250],
		[125, 176],
		[88, 125],
		[62, 88],
		[44, 62],
		[31, 44],
	]),
	inInches('ANSI A', 8.5, 11),
	inInches('ANSI B', 11, 17),
	inInches('ANSI C', 17, 22),
	inInches('ANSI D', 22, 34),
	inInches('ANSI E', 34, 44),
	inInches('Letter', 8.5, 11),
	inInches('Legal', 8.5, 14),
	inInches('Tabloid', 11, 17),
	inInches('Ledger', 11, 17),
	{ name: 'A3+', width: mm(329), height: mm(483) },
	inInches('3R', 3.5, 5),
	inInches('4R', 4, 6),
	inInches('5R', 5, 7),
	inInches('6R', 6, 8),
	inInches('8R', 8, 10),
	inInches('10R', 10, 12),
	inInches('11R', 11, 14),
	inInches('16R', 16, 20),
	inInches('20R', 20, 24),
	inInches('30R', 30, 40),
];

/** A name without its spaces and in small letters: names that differ in nothing else are the same. */
export const bareName = (name: string): string => name.replace(/\s+/g, '').toLowerCase();

/** Paper by its bare name. Every cell of a size asks, so the names are bared once. */
const papersByName: ReadonlyMap<string, NamedSize> = new Map(paperSizes.map((size) => [bareName(size.name), size]));

/**
 * The size of a name: the show's own names first, then paper. `A3 landscape` and `A3 portrait` lay a size as they say.
 * @returns undefined if no size has the name
 */
export function namedSize(name: string, own: readonly NamedSize[]): NamedSize | undefined {
	const wanted = bareName(name);
	if (wanted === '') return undefined;
	const found = own.find((size) => bareName(size.name) === wanted) ?? papersByName.get(wanted);
	if (found !== undefined) return found;
	const laid = /^(.+?)(landscape|portrait)$/.exec(wanted);
	const size = laid === null ? undefined : namedSize(laid[1]!, own);
	if (size === undefined) return undefined;
	const isAsAsked = laid![2] === 'landscape' ? size.width >= size.height : size.width <= size.height;
	return isAsAsked ? size : { ...size, width: size.height, height: size.width };
}
