import { greatestCommonDivisor } from '../values/greatestCommonDivisor.ts';
import { quoted } from './parseLength.ts';
import type { ReadShape } from './parseShape.ts';
import type { Reading } from './reading.ts';

/** The pixels of a picture file as it is looked at, after its orientation. Both whole and above zero. */
export interface Pixels {
	readonly width: number;
	readonly height: number;
}

/** The most pixels a side that are read. */
const mostASide = 1_000_000;

/** Reads pixels, width first: `6000 x 4000`, `6000×4000 px`, `6000 by 4000`. */
export function parsePixels(text: string): Reading<Pixels> {
	const match = /^\s*(\d{1,9})\s*(?:px|pixels)?\s*(?:x|×|\*|by|,)\s*(\d{1,9})\s*(?:px|pixels)?\s*$/i.exec(text);
	const [width, height] = [Number(match?.[1]), Number(match?.[2])];
	if (match === null || width === 0 || height === 0)
		return { problem: `${quoted(text)} is not pixels. Type width and height, such as 6000 x 4000` };
	if (Math.max(width, height) > mostASide)
		return { problem: `${quoted(text)} is more than ${mostASide} pixels a side, the most that are read` };
	return { value: { width, height } };
}

/** Pixels as they can be typed. */
export const formatPixels = ({ width, height }: Pixels): string => `${width} x ${height}`;

/** The shape of a picture by its pixels, in lowest terms. */
export function shapeOfPixels({ width, height }: Pixels): ReadShape {
	const common = greatestCommonDivisor(width, height);
	return { numerator: width / common, denominator: height / common };
}
