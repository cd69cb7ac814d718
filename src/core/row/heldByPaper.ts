import { isHeld, printableSize, wayOf } from './paper.ts';
import type { WorkedRow } from './workedRow.ts';
import type { Settings } from '../settings/settings.ts';

/** Whether the picture of a row can be printed on its typed paper; true where none is typed, or it is not known. */
export function isHeldByPaper({ read, solution, solved }: WorkedRow, settings: Settings): boolean {
	const { paper } = read.cells;
	const { pictureWidth: width, pictureHeight: height } = solved;
	if (!paper || width === undefined || height === undefined) return true;
	return isHeld({ width, height }, printableSize(paper, wayOf({ width, height }), solution.cover, settings));
}
