import { boardColour as colourOf, type Colour, cssColour } from '../values/boardColour.ts';
import type { FoundBoard } from './boards.ts';

/** The colour of a board for drawings, as CSS has it: by its `colour`, else by its name. Undefined where nothing says it. */
export function boardColour(found: Pick<FoundBoard, 'board' | 'name'>): string | undefined {
	const colour = saidColour(found);
	return colour && cssColour(colour);
}

/** Black or white, whichever is read on a board, as words or as a line; undefined where the board has no colour of its own. */
export function inkOn(found: Pick<FoundBoard, 'board' | 'name'>): string | undefined {
	const colour = saidColour(found);
	// Relative luminance (WCAG 2.2) is nearly the cube of the lightness; at 0.18 both have a contrast of 4.5 : 1.
	return colour && (luminance(colour) > 0.18 ? '#000000' : '#ffffff');
}

/**
 * In which a line that stands out is drawn on a board, and words on that line. They are of the board, not of the page's scheme:
 * the board has the colour it has in the dark too. Undefined where the board has no colour of its own.
 */
export function accentOn(
	found: Pick<FoundBoard, 'board' | 'name'>,
): readonly [line: string, words: string] | undefined {
	const colour = saidColour(found);
	if (!colour) return undefined;
	const light = luminance(colour);
	// A blue on pale boards, a pale blue on dark ones; on those between, where hardly anything is read, a deeper or a paler one.
	return light > 0.18
		? [light > 0.45 ? '#144a76' : '#00132a', '#ffffff']
		: [light < 0.09 ? '#8ccaf7' : '#def0ff', '#000000'];
}

const saidColour = ({ board, name }: Pick<FoundBoard, 'board' | 'name'>): Colour | undefined =>
	colourOf(board?.colour ?? '') ?? colourOf(name);

/** Relative luminance of a colour (WCAG 2.2); the conversion is that of CSS Color 4, section 9. */
function luminance({ lightness, chroma, hue }: Colour): number {
	const a = chroma * Math.cos((hue * Math.PI) / 180);
	const b = chroma * Math.sin((hue * Math.PI) / 180);
	const long = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
	const medium = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
	const short = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
	const within = (value: number) => Math.min(1, Math.max(0, value));
	return (
		0.2126 * within(4.0767416621 * long - 3.3077115913 * medium + 0.2309699292 * short) +
		0.7152 * within(-1.2684380046 * long + 2.6097574011 * medium - 0.3413193965 * short) +
		0.0722 * within(-0.0041960863 * long - 0.7034186147 * medium + 1.707614701 * short)
	);
}
