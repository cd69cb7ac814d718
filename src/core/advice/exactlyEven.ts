import type { Length } from '../length/length.ts';
import type { Shape } from '../row/cells.ts';
import type { Weight } from '../row/equations.ts';

/**
 * The picture of a shape that has the same border at sides and top in a mount, before the ruler.
 *
 * With side = top = B and bottom = B·t + d:
 *
 *     2B + (ratio·h + eW) = mountW      and      B(1 + t) + d + (h + eH) = mountH
 *
 * so `h = [(mountH − eH − d) − (1 + t)/2·(mountW − eW)] / [1 − ratio·(1 + t)/2]`.
 *
 * @param addedWidth window less picture, on each axis
 * @returns undefined where there is none, or only one with no border
 */
export function exactlyEven(
	mountWidth: Length,
	mountHeight: Length,
	addedWidth: Length,
	addedHeight: Length,
	{ numerator, denominator }: Shape,
	{ times, more }: Weight,
): { readonly width: number; readonly height: number } | undefined {
	const ratio = numerator / denominator;
	const half = (1 + times) / 2;
	const under = 1 - ratio * half;
	if (Math.abs(under) < 1e-9) return undefined;
	const height = (mountHeight - addedHeight - more - half * (mountWidth - addedWidth)) / under;
	const width = ratio * height;
	const border = (mountWidth - addedWidth - width) / 2;
	if (!(height > 0) || !(border > 0) || width + addedWidth <= 0 || height + addedHeight <= 0) return undefined;
	return { width, height };
}
