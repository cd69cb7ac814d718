import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const css = readFileSync('src/ui/tokens.css', 'utf8');
/** What the style sheet says for those who ask for these. */
const blockOf = (query: string) => {
	const block = css.split(`@media ${query} {`)[1];
	if (block === undefined) throw new RangeError(`nothing for ${query}`);
	return block.split('\n}')[0]!;
};
const lightCss = css.split('@media')[0]!;
const darkCss = blockOf('(prefers-color-scheme: dark)');

/** Relative luminance (WCAG 2.2) of an OKLCH colour; the conversion is that of CSS Color 4, section 9. */
function luminance([lightness, chroma, hue]: readonly [number, number, number]): number {
	const a = chroma * Math.cos((hue * Math.PI) / 180);
	const b = chroma * Math.sin((hue * Math.PI) / 180);
	const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
	const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
	const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
	const within = (value: number) => Math.min(1, Math.max(0, value));
	const red = within(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s);
	const green = within(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s);
	const blue = within(-0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s);
	return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function colours(part: string): Map<string, number> {
	const found = part.matchAll(/--([a-z-]+): oklch\(([\d.]+) ([\d.]+) ([\d.]+)\)/g);
	return new Map([...found].map(([, name, l, c, h]) => [name!, luminance([Number(l), Number(c), Number(h)])]));
}

const [light, dark] = [colours(lightCss), colours(darkCss)];
const more = colours(blockOf('(prefers-contrast: more)'));
const moreDark = colours(blockOf('(prefers-contrast: more) and (prefers-color-scheme: dark)'));
/** Each with what words and lines have at least against their ground. */
const schemes = [
	{ scheme: 'light', colour: light, words: 4.5, lines: 3 },
	{ scheme: 'dark', colour: dark, words: 4.5, lines: 3 },
	{ scheme: 'light, more contrast', colour: new Map([...light, ...more]), words: 7, lines: 4.5 },
	{ scheme: 'dark, more contrast', colour: new Map([...dark, ...moreDark]), words: 7, lines: 4.5 },
];

function contrast(colour: Map<string, number>, front: string, back: string): number {
	const [one, other] = [colour.get(front), colour.get(back)];
	if (one === undefined || other === undefined) throw new RangeError(`no colour ${front} or ${back}`);
	return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
}

const surfaces = ['board', 'sheet', 'pressed', 'chosen'];
const words = ['ink', 'quiet', 'accent', 'stop', 'look', 'note'];
const pairs = schemes.flatMap(({ scheme, colour, words: wordsLeast, lines }) => {
	const pair = (front: string, back: string, least: number) => ({ scheme, colour, front, back, least });
	return [
		...words.flatMap((front) => surfaces.map((back) => pair(front, back, wordsLeast))),
		pair('on-accent', 'accent', wordsLeast),
		pair('pencil', 'card', 4.5), // figures in drawings
		pair('pencil', 'core', 4.5),
		pair('pencil', 'print', 3), // lines of drawings
		pair('cut', 'card', 3), // of a sheet: the cut to make now
		pair('on-cut', 'cut', 4.5),
		...['drawn-stop', 'drawn-look'].flatMap((front) => ['card', 'core'].map((back) => pair(front, back, 3))), // on a wall
		pair('pencil', 'moulding', 3),
		...['board', 'sheet'].map((back) => pair('quiet', back, 3)), // outlines of mounts on the page
		...surfaces.map((back) => pair('edge', back, lines)), // fields, buttons, grips, handles
		...surfaces.map((back) => pair('accent', back, lines)), // focus, and what is selected
	];
});
/** Only for rest: hairlines, the bevel inside them, and what is filled in drawings, whose lines are checked above. */
const forRest = ['hair', 'bevel', 'card', 'core', 'print', 'moulding'];

test.each(pairs)('$scheme: $front on $back has a contrast of $least at least', ({ colour, front, back, least }) => {
	expect(contrast(colour, front, back)).toBeGreaterThanOrEqual(least);
});

test('every colour of the light scheme has a dark twin, and what is for more contrast too', () => {
	expect([...dark.keys()].sort()).toEqual([...light.keys()].sort());
	expect([...moreDark.keys()].sort()).toEqual([...more.keys()].sort());
});

test('every colour is looked at, or is only for rest', () => {
	const seen = new Set(pairs.flatMap(({ front, back }) => [front, back]));
	expect([...light.keys()].filter((name) => !seen.has(name) && !forRest.includes(name))).toEqual([]);
});

test('black on white is 21 : 1, so the arithmetic is right', () => {
	const ends = new Map([
		['black', luminance([0, 0, 0])],
		['white', luminance([1, 0, 0])],
	]);
	expect(contrast(ends, 'black', 'white')).toBeCloseTo(21, 3);
});

test('what is drawn has the colour of its stock in either scheme', () => {
	for (const stock of ['card', 'core', 'moulding', 'drawn-stop', 'drawn-look'])
		expect(dark.get(stock), stock).toBe(light.get(stock));
});
