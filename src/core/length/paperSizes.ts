import { inches, mm } from './length.ts';
import type { NamedSize } from './size.ts';

const iso = (series: string, sizes: readonly (readonly [number, number])[]): NamedSize[] =>
	sizes.map(([width, height], number) => ({ name: `${series}${number}`, width: mm(width), height: mm(height) }));

const ansi = (letter: string, width: number, height: number): NamedSize => ({
	name: `ANSI ${letter}`,
	width: inches(width),
	height: inches(height),
});

/**
 * Paper sizes known by name, upright: ISO A and B (ISO 216:2007, trimmed sizes) and ANSI A to E (ASME Y14.1).
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
	ansi('A', 8.5, 11),
	ansi('B', 11, 17),
	ansi('C', 17, 22),
	ansi('D', 22, 34),
	ansi('E', 34, 44),
];

/** A name without its spaces and in small letters: names that differ in nothing else are the same. */
export const bareName = (name: string): string => name.replace(/\s+/g, '').toLowerCase();

/**
 * The size of a name: the show's own names first, then paper. `A3 landscape` and `A3 portrait` lay a size as they say.
 * @returns undefined if no size has the name
 */
export function namedSize(name: string, own: readonly NamedSize[]): NamedSize | undefined {
	const wanted = bareName(name);
	if (wanted === '') return undefined;
	const found = [...own, ...paperSizes].find((size) => bareName(size.name) === wanted);
	if (found !== undefined) return found;
	const laid = /^(.+?)(landscape|portrait)$/.exec(wanted);
	const size = laid === null ? undefined : namedSize(laid[1]!, own);
	if (size === undefined) return undefined;
	const isAsAsked = laid![2] === 'landscape' ? size.width >= size.height : size.width <= size.height;
	return isAsAsked ? size : { ...size, width: size.height, height: size.width };
}
