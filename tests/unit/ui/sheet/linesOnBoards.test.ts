import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { accentOn, boardColour, inkOn } from '../../../../src/core/row/boardColour.ts';
import { boardColour as readColour, type Colour, cssColour } from '../../../../src/core/values/boardColour.ts';

type Lab = readonly [lightness: number, a: number, b: number];

const labOf = (lightness: number, chroma: number, hue: number): Lab => {
	const angle = (hue * Math.PI) / 180;
	return [lightness, chroma * Math.cos(angle), chroma * Math.sin(angle)];
};
const ofColour = ({ lightness, chroma, hue }: Colour) => labOf(lightness, chroma, hue);

/** An `oklch(…)` of a style sheet, or a `#rrggbb`. */
function ofCss(text: string): Lab {
	const parts = /^oklch\(([\d.]+) ([\d.]+) ([\d.]+)\)$/.exec(text);
	return parts ? labOf(Number(parts[1]), Number(parts[2]), Number(parts[3])) : ofColour(readColour(text)!);
}

/** Relative luminance (WCAG 2.2); the conversion is that of CSS Color 4, section 9. */
function luminance([lightness, a, b]: Lab): number {
	const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
	const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
	const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
	const within = (value: number) => Math.min(1, Math.max(0, value));
	return (
		0.2126 * within(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s) +
		0.7152 * within(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s) +
		0.0722 * within(-0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s)
	);
}

function contrast(one: Lab, other: Lab): number {
	const [first, second] = [luminance(one), luminance(other)];
	return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
}

const tokens = readFileSync('src/ui/tokens.css', 'utf8');
const tokensIn = (css: string) =>
	new Map([...css.matchAll(/--([a-z-]+): (oklch\([^)]+\))/g)].map(([, name, value]) => [name!, value!]));
const [lightCss, darkCss] = tokens.split('@media (prefers-color-scheme: dark) {');
const [lightTokens, darkTokens] = [tokensIn(lightCss!), tokensIn(darkCss!.split('@media')[0]!)];

const drawing = ['SheetDrawing', 'SheetCuts']
	.map((name) => readFileSync(`src/ui/sheet/${name}.svelte`, 'utf8'))
	.join('\n');
/** What a rule of the drawing says of one property, as the name of a variable. */
function variableOf(rule: string, property: string): string {
	const block = drawing.split(`\n\t${rule} {`)[1]?.split('\n\t}')[0];
	const found = new RegExp(`${property}: var\\(--([a-z-]+)\\)`).exec(block ?? '')?.[1];
	if (found === undefined) throw new RangeError(`no ${property} in ${rule}`);
	return found;
}
/** How much of the waste's colour is the card's; the rest is what is drawn on it. */
const cardShare = Number(/fill: color-mix\(in oklab, var\(--card\) (\d+)%, var\(--pencil\)\)/.exec(drawing)![1]) / 100;

/** Each line on a sheet that says where to cut, what is made and what is kept, with the colours that it is drawn in. */
const lines = [
	...['.cut', '.cut.now', '.hatch', '.kept', '.number', '.number.now'].map(
		(rule) => [rule, variableOf(rule, 'stroke')] as const,
	),
	['.number.made', variableOf('.number.made', 'fill')] as const,
];

const example = JSON.parse(readFileSync('shared/samples/example.evenhang.json', 'utf8')) as {
	settings: { boards: { name: string; colour?: string }[] };
};
const steps = ['00', '40', '70', '80', '90', 'a8', 'c0', 'ff'];
const extreme = steps.flatMap((red) => steps.flatMap((green) => steps.map((blue) => `#${red}${green}${blue}`)));
const named = [
	'white',
	'chalk',
	'grey',
	'slate',
	'charcoal',
	'black',
	'red',
	'navy',
	'yellow',
	'olive',
	'dark tan',
	'deep pink',
];
const boards = [...example.settings.boards, ...[...named, ...extreme].map((colour) => ({ name: 'Board', colour }))];

test.each([
	{ scheme: 'light', of: lightTokens },
	{ scheme: 'dark', of: darkTokens },
])('$scheme: every line on a board has 3 to 1 against it and its waste, whatever its colour', ({ of }) => {
	const plain = { card: of.get('card')!, pencil: of.get('pencil')!, cut: of.get('cut')! };
	const drawn = boards.map(({ name, colour }) => {
		const found = { name, board: { name, ...(colour !== undefined && { colour }) } as never };
		return { name: colour ?? name, card: boardColour(found)!, pencil: inkOn(found)!, cut: accentOn(found)![0] };
	});
	const failing: string[] = [];
	for (const { name, ...own } of [{ name: 'of no colour', ...plain }, ...drawn]) {
		const [card, pencil] = [ofCss(own.card), ofCss(own.pencil)];
		const waste = card.map((part, at) => part * cardShare + pencil[at]! * (1 - cardShare)) as unknown as Lab;
		for (const [rule, variable] of lines) {
			const colour = ofCss((own as Record<string, string>)[variable] ?? of.get(variable)!);
			for (const [ground, back] of [
				['card', card],
				['waste', waste],
			] as const) {
				const got = contrast(colour, back);
				if (got < 3) failing.push(`${rule} on the ${ground} of ${name}: ${got.toFixed(2)}`);
			}
		}
	}
	expect(failing).toEqual([]);
});

test('the number of the cut to make now is read on its disc, on every board', () => {
	for (const { name, colour } of boards) {
		const [line, words] = accentOn({ name, board: { name, ...(colour !== undefined && { colour }) } as never })!;
		expect(contrast(ofCss(line), ofCss(words)), colour ?? name).toBeGreaterThanOrEqual(4.5);
	}
});

test('the colours are read as CSS has them', () => {
	expect(contrast(ofCss('#000000'), ofCss('#ffffff'))).toBeCloseTo(21, 1);
	expect(ofCss(cssColour(readColour('chalk')!))[0]).toBeCloseTo(0.955, 3);
	expect(boardColour({ name: 'x', board: undefined })).toBeUndefined();
});
