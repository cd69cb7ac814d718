import { sameWithin } from '../length/length.ts';
import type { FramedRow } from './framed.ts';
import type { RowFrame } from './frame.ts';
import type { ReadCells } from './readCells.ts';

/**
 * The cells of a row, with a drop that is more than its frame is high not read: the hook would be below the frame, and
 * may be below the floor. Without a frame, or while its size is not known, a drop says nothing yet.
 */
export function withPossibleDrop(read: ReadCells, { frame }: RowFrame, { size }: FramedRow): ReadCells {
	const { drop } = read.cells;
	if (drop === undefined || !frame || !size || drop <= size.height + sameWithin) return read;
	const problem = 'more than the frame is high; type how far the hook is below the frame’s top';
	return {
		...read,
		cells: { ...read.cells, drop: undefined },
		unread: [...read.unread, { column: 'drop', problem, readings: [] }],
	};
}
