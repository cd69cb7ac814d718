import { type Length, length, sameWithin } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Settings } from '../settings/settings.ts';
import type { Cells } from './cells.ts';
import { isHeld, printableSize, wayOf } from './paper.ts';
import type { Solution } from './solution.ts';

/**
 * Rule 7: where the paper does not hold the picture that comes out, its size is what can be printed; neither side comes
 * out larger for it.
 *
 * @param solve works the row out again
 */
export function onItsPaper(
	solution: Solution,
	cells: Cells,
	settings: Settings,
	solve: (cells: Cells, settings: Settings) => Solution,
): Solution {
	const { paper, pictureWidth, pictureHeight, windowWidth, windowHeight } = cells;
	if (!paper || [pictureWidth, pictureHeight, windowWidth, windowHeight].some((typed) => typed !== undefined))
		return solution;
	const unbound = sizeOf(solution.solved.pictureWidth, solution.solved.pictureHeight);
	if (!unbound || solution.width !== 'fits' || solution.height !== 'fits') return solution;
	const printable = printableSize(paper, wayOf(unbound), solution.cover, settings);
	if (isHeld(unbound, printable) || printable.width <= 0 || printable.height <= 0) return solution;
	const isWider = BigInt(unbound.width) * BigInt(printable.height) >= BigInt(unbound.height) * BigInt(printable.width);
	const sides = cells.shape
		? [isWider ? ('width' as const) : ('height' as const)]
		: (['width', 'height'] as const).filter((side) => unbound[side] > printable[side] + sameWithin);
	const picture = {
		pictureWidth: sides.includes('width') ? length(printable.width) : undefined,
		pictureHeight: sides.includes('height') ? length(printable.height) : undefined,
	};
	let bound = solve({ ...cells, ...picture }, settings);
	// A narrower window has its optical centre higher up: over a typed bottom the top would shrink, and the picture grow.
	const heldHeight = isLarger(bound.solved.pictureHeight, unbound.height) ? unbound.height : undefined;
	if (heldHeight !== undefined) bound = solve({ ...cells, ...picture, pictureHeight: heldHeight }, settings);
	if (bound.width !== 'fits' || bound.height !== 'fits') return solution;
	return { ...bound, boundByPaper: { sides, printable, unbound, isHeightHeld: heldHeight !== undefined } };
}

const isLarger = (side: Length | undefined, than: Length) => side !== undefined && side > than + sameWithin;

const sizeOf = (width: Length | undefined, height: Length | undefined): Size | undefined =>
	width === undefined || height === undefined ? undefined : { width, height };
