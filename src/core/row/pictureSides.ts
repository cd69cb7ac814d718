import { type Length, length, minus } from '../length/length.ts';
import type { Shape } from './cells.ts';
import type { Cover } from './cover.ts';
import { multiplyDivide } from './multiplyDivide.ts';

/** Width and height, each undefined where not known. */
export interface Sides {
	readonly width: Length | undefined;
	readonly height: Length | undefined;
}

/**
 * The picture that goes with the windows as they are cut: typed sides as they are; the other side by the shape; with a
 * shape and no side typed, the smallest of that shape that still covers what was asked, or the largest that leaves the
 * reveal asked; without a shape, what the window says.
 *
 * @param typed the typed sides
 * @param windows the windows as cut
 */
export function pictureSides(typed: Sides, windows: Sides, shape: Shape | undefined, cover: Cover): Sides {
	const way = (isCovered: boolean) => (isCovered ? 'up' : 'down');
	const widthOf = (height: Length, { numerator, denominator }: Shape) =>
		lengthOrNone(multiplyDivide(height, numerator, denominator, way(cover.width.isCovered)));
	const heightOf = (width: Length, { numerator, denominator }: Shape) =>
		lengthOrNone(multiplyDivide(width, denominator, numerator, way(cover.height.isCovered)));

	const width = windows.width && minus(windows.width, cover.width.added);
	const height = windows.height && minus(windows.height, cover.height.added);
	if (!shape || (typed.width !== undefined && typed.height !== undefined)) {
		return { width: typed.width ?? width, height: typed.height ?? height };
	}
	if (typed.width !== undefined) return { width: typed.width, height: heightOf(typed.width, shape) };
	if (typed.height !== undefined) return { width: widthOf(typed.height, shape), height: typed.height };
	if (width === undefined || height === undefined || width <= 0 || height <= 0) return { width, height };
	if (!cover.height.isCovered && cover.width.isCovered) return { width, height: heightOf(width, shape) };
	const heightByWidth = heightOf(width, shape);
	if (heightByWidth === undefined) return { width: widthOf(height, shape), height };
	const isWidthDecisive = cover.width.isCovered ? heightByWidth >= height : heightByWidth <= height;
	return isWidthDecisive ? { width, height: heightByWidth } : { width: widthOf(height, shape), height };
}

/** Undefined where the shape is so long that the side is past what a length holds. */
const lengthOrNone = (units: number): Length | undefined => (Number.isSafeInteger(units) ? length(units) : undefined);
