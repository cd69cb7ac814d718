import type { RowResult } from '../findings/rowResult.ts';
import { frameParts, partsOf } from '../row/partsOf.ts';
import type { FrameMaterial } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import type { Blank } from '../show/blank.ts';
import { stockKey } from '../stock/stock.ts';

/**
 * Whether a row still wants a blank that was cut for it: of this size, either way round, and of this board. What is not
 * known of the row now may come out as it was: only another size or board is one that the blank is not for.
 */
export function isBlankWanted(
	{ part, copy, width, height }: Pick<Blank, 'part' | 'copy' | 'width' | 'height'>,
	stock: { readonly board: string; readonly material?: FrameMaterial },
	result: RowResult,
	settings: Settings,
): boolean {
	const { mountWidth, mountHeight } = result.solved;
	const isKnown = stock.material ? result.frame.inside : mountWidth !== undefined && mountHeight !== undefined;
	if (!isKnown) return true;
	if (copy > result.copies) return false;
	return (stock.material ? frameParts(result, settings) : partsOf(result, settings)).some(
		(wanted) =>
			wanted.part === part &&
			stockKey(wanted) === stockKey(stock) &&
			((wanted.width === width && wanted.height === height) || (wanted.width === height && wanted.height === width)),
	);
}
