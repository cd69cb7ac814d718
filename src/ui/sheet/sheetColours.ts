import { boardColour, inkOn } from '../../core/row/boardColour.ts';
import type { FoundBoard } from '../../core/row/boards.ts';

/** The colour of a board in drawings of its sheets, and of what is read on it, as CSS has them; undefined where nothing says it. */
export const sheetColours = (found: Pick<FoundBoard, 'board' | 'name'>) => ({
	card: boardColour(found),
	ink: inkOn(found),
});
