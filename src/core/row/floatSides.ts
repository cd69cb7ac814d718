import { type Length, length } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Settings } from '../settings/settings.ts';
import type { Cells, Shape } from './cells.ts';
import { floatCover } from './cover.ts';
import { multiplyDivide } from './multiplyDivide.ts';
import { leftBlank, paperAsItLies, printableSize, type Way } from './paper.ts';

/** The paper of a float and the picture on it, as far as they are known before its mount is. */
export interface FloatSides {
	/** As it lies; without a typed one the picture's own size. */
	readonly paper: Size | undefined;
	readonly picture: Size | undefined;
}

const nothingAsked = floatCover(undefined, undefined);

/**
 * The paper of a float and the picture on it: the picture is as typed, its other side by the shape; without one, the
 * largest of the shape that can be printed. Without a paper the picture is the paper.
 */
export function floatSides(cells: Cells, settings: Settings): FloatSides {
	const picture = typedPicture(cells) ?? largestOfShape(cells, settings);
	if (!cells.paper) return { paper: picture, picture };
	const blank = leftBlank(cells.paper, nothingAsked, settings);
	return { paper: paperAsItLies(cells.paper, picture, blank, wayOfCells(cells)), picture };
}

/** The picture by its typed sides, one of them and the shape. */
function typedPicture({ pictureWidth: width, pictureHeight: height, shape }: Cells): Size | undefined {
	if (width !== undefined && height !== undefined) return { width, height };
	if (!shape) return undefined;
	if (width !== undefined) return sizeWith(width, heightOf(width, shape));
	if (height !== undefined) return sizeWith(widthOf(height, shape), height);
	return undefined;
}

/** The largest picture of the row's shape that its paper holds; undefined without a shape or a paper, or without room. */
function largestOfShape({ paper, shape }: Cells, settings: Settings): Size | undefined {
	if (!paper || !shape) return undefined;
	const printable = printableSize(paper, wayOfShape(shape), nothingAsked, settings);
	if (printable.width <= 0 || printable.height <= 0) return undefined;
	const byWidth = sizeWith(length(printable.width), heightOf(length(printable.width), shape));
	if (byWidth && byWidth.height <= printable.height) return byWidth;
	return sizeWith(widthOf(length(printable.height), shape), length(printable.height));
}

const heightOf = (width: number, { numerator, denominator }: Shape) =>
	multiplyDivide(width, denominator, numerator, 'down');
const widthOf = (height: number, { numerator, denominator }: Shape) =>
	multiplyDivide(height, numerator, denominator, 'down');

/** Undefined where a side comes out at nothing, or so long that no length holds it. */
function sizeWith(width: number, height: number): Size | undefined {
	const isLength = (side: number): side is Length => Number.isSafeInteger(side) && side > 0;
	return isLength(width) && isLength(height) ? { width, height } : undefined;
}

function wayOfShape({ numerator, denominator }: Shape): Way {
	if (numerator === denominator) return undefined;
	return numerator > denominator ? 'wide' : 'tall';
}

/** Which way the picture lies, where its sizes are not known. */
const wayOfCells = ({ shape }: Cells): Way => shape && wayOfShape(shape);
