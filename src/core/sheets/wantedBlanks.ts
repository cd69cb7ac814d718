import type { RowResult } from '../findings/rowResult.ts';
import { partsOf } from '../row/partsOf.ts';
import type { Settings } from '../settings/settings.ts';
import type { Blank } from '../show/blank.ts';

/**
 * Whether a row still wants a blank that was cut for it: of this size, either way round, and of this board. What is not
 * known of the row now may come out as it was: only another size or board is one that the blank is not for.
 */
export function isBlankWanted(
	{ part, copy, width, height }: Pick<Blank, 'part' | 'copy' | 'width' | 'height'>,
	board: string,
	result: RowResult,
	settings: Settings,
): boolean {
	const { mountWidth, mountHeight } = result.solved;
	if (mountWidth === undefined || mountHeight === undefined) return true;
	if (copy > result.copies) return false;
	return partsOf(result, settings).some(
		(wanted) =>
			wanted.part === part &&
			isSameBoard(wanted.board, board) &&
			((wanted.width === width && wanted.height === height) || (wanted.width === height && wanted.height === width)),
	);
}

const isSameBoard = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();
