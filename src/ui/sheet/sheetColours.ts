import { accentOn, boardColour, inkOn } from '../../core/row/boardColour.ts';
import type { FoundBoard } from '../../core/row/boards.ts';
import type { BoardColours } from '../mount/drawnPrint.ts';

/** The colours in drawings of the sheets of a board. */
export const sheetColours = (found: Pick<FoundBoard, 'board' | 'name'>): BoardColours => ({
	card: boardColour(found),
	ink: inkOn(found),
	accent: accentOn(found),
});
