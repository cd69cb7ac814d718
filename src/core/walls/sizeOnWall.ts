import type { Size } from '../length/size.ts';
import type { WorkedRow } from '../row/workedRow.ts';

/** How large a print is on the wall: undefined where nothing of it is known. */
export const sizeOnWall = ({ framed, frame }: Pick<WorkedRow, 'framed' | 'frame'>): Size | undefined =>
	framed.size ?? frame.inside;
