/** A colour in OKLCH: lightness from 0 to 1, chroma, hue in degrees. */
export interface Colour {
	readonly lightness: number;
	readonly chroma: number;
	readonly hue: number;
}

/** What plain words of colour look like on card: rather pale, as card is. */
const hues: Readonly<Record<string, readonly [lightness: number, chroma: number, hue: number]>> = {
	white: [0.975, 0.003, 90],
	ivory: [0.95, 0.028, 95],
	cream: [0.935, 0.04, 92],
	natural: [0.93, 0.025, 88],
	chalk: [0.955, 0.008, 90],
	linen: [0.9, 0.022, 82],
	sand: [0.83, 0.05, 82],
	beige: [0.86, 0.04, 84],
	tan: [0.73, 0.07, 72],
	stone: [0.78, 0.018, 80],
	grey: [0.7, 0.004, 250],
	gray: [0.7, 0.004, 250],
	silver: [0.8, 0.004, 250],
	slate: [0.5, 0.025, 250],
	charcoal: [0.35, 0.008, 260],
	black: [0.22, 0.004, 60],
	brown: [0.43, 0.06, 55],
	red: [0.5, 0.16, 27],
	burgundy: [0.36, 0.11, 15],
	orange: [0.72, 0.14, 60],
	yellow: [0.87, 0.12, 95],
	gold: [0.74, 0.1, 85],
	olive: [0.52, 0.07, 112],
	green: [0.5, 0.09, 150],
	teal: [0.5, 0.07, 200],
	turquoise: [0.72, 0.09, 195],
	blue: [0.5, 0.11, 255],
	navy: [0.31, 0.08, 262],
	purple: [0.42, 0.11, 310],
	violet: [0.48, 0.12, 300],
	pink: [0.82, 0.08, 5],
};

/** What a word before the colour does to it: added to lightness; a factor of chroma; a tint where there is hardly a colour. */
const shades: Readonly<
	Record<string, { readonly lightness?: number; readonly chroma?: number; readonly tint?: number }>
> = {
	off: { lightness: -0.02, tint: 90 },
	warm: { lightness: -0.01, tint: 80 },
	cool: { tint: 250 },
	antique: { lightness: -0.04, tint: 85 },
	natural: { lightness: -0.03, tint: 88 },
	bright: { lightness: 0.02, chroma: 1.1 },
	light: { lightness: 0.12, chroma: 0.7 },
	pale: { lightness: 0.14, chroma: 0.6 },
	soft: { lightness: 0.04, chroma: 0.8 },
	mid: {},
	dark: { lightness: -0.16 },
	deep: { lightness: -0.12 },
};
const tintChroma = 0.014;
const greatestLightness = 0.99;
const leastLightness = 0.15;

/**
 * The colour that the words of a board say, as it is drawn: `warm white`, `pale grey`, `#e8e4da`. Only plain words of
 * colour are known, no maker's names; what they look like is from memory.
 * @returns undefined where no word of them is a colour
 */
export function boardColour(words: string): Colour | undefined {
	const hex = /^\s*#([\da-f]{3}|[\da-f]{6})\s*$/i.exec(words)?.[1];
	if (hex !== undefined) return ofHex(hex);
	const parts = words.toLowerCase().match(/\p{Letter}+/gu) ?? [];
	// The last word that is a colour is the noun: an "ivory white" is a white, a "blue grey" a grey.
	const noun = parts.findLastIndex((part) => Object.hasOwn(hues, part));
	const found = hues[parts[noun] ?? ''];
	if (found === undefined) return undefined;
	let [lightness, chroma, hue] = found;
	for (const part of parts.slice(0, noun)) {
		const shade = Object.hasOwn(shades, part) ? shades[part] : undefined;
		lightness += shade?.lightness ?? 0;
		chroma *= shade?.chroma ?? 1;
		const tint = shade?.tint ?? (Object.hasOwn(hues, part) ? hues[part]?.[2] : undefined);
		if (tint === undefined || chroma > 2 * tintChroma) continue;
		chroma = Math.max(chroma, tintChroma);
		hue = tint;
	}
	return { lightness: Math.min(greatestLightness, Math.max(leastLightness, lightness)), chroma, hue };
}

/** As CSS and SVG write it. */
export const cssColour = ({ lightness, chroma, hue }: Colour): string =>
	`oklch(${rounded(lightness)} ${rounded(chroma)} ${rounded(hue)})`;

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

/** From sRGB. Source of the matrices: Björn Ottosson, “A perceptual color space for image processing”, 2020. */
function ofHex(hex: string): Colour {
	const pairs = hex.length === 3 ? [...hex].map((digit) => digit + digit) : (hex.match(/../g) ?? []);
	const [red = 0, green = 0, blue = 0] = pairs.map((pair) => linear(Number.parseInt(pair, 16) / 255));
	const long = Math.cbrt(0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue);
	const medium = Math.cbrt(0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue);
	const short = Math.cbrt(0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue);
	const a = 1.9779984951 * long - 2.428592205 * medium + 0.4505937099 * short;
	const b = 0.0259040371 * long + 0.7827717662 * medium - 0.808675766 * short;
	return {
		lightness: 0.2104542553 * long + 0.793617785 * medium - 0.0040720468 * short,
		chroma: Math.hypot(a, b),
		hue: ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360,
	};
}

const linear = (channel: number): number => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);
