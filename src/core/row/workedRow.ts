import type { RowBoards } from './boards.ts';
import type { RowFrame } from './frame.ts';
import type { FramedRow } from './framed.ts';
import type { HangCells } from './hangCells.ts';
import type { Hinges } from './hinges.ts';
import type { Inherited } from './inherited.ts';
import type { RowMaterials } from './materials.ts';
import type { OnPaper } from './paper.ts';
import type { PaperPlace } from './paperPlace.ts';
import type { ReadCells } from './readCells.ts';
import type { RowWords } from './rowWords.ts';
import type { Solution } from './solution.ts';
import type { SolvedRow } from './solvedRow.ts';

/**
 * A row worked out, with all that was read on the way: plain data, read once. Whoever wants to know what a row says asks
 * this, never its texts again.
 */
export interface WorkedRow {
	/** What the cells of figures say. */
	readonly read: ReadCells;
	/** What the cells of words say. */
	readonly words: RowWords;
	/** What holds from the show. */
	readonly inherited: Inherited;
	/** Whether it has a mount: `none` in its cell says that it has not. */
	readonly hasMount: boolean;
	readonly solution: Solution;
	/** The results of the solution. */
	readonly solved: SolvedRow;
	readonly boards: RowBoards;
	readonly frame: RowFrame;
	/** Where the picture lies on its paper; undefined where no paper is typed or the picture is not known. */
	readonly onPaper: OnPaper | undefined;
	/** Where the paper lies behind the mount; undefined without a mount, and where it is not known. */
	readonly place: PaperPlace | undefined;
	readonly hinges: Hinges | undefined;
	/** Where it hangs, as it says. */
	readonly hangs: HangCells;
	/** The glazing and the backing. */
	readonly materials: RowMaterials;
	/** How it hangs: outer size, stack, weight. */
	readonly framed: FramedRow;
	/** How many of it are made: 1 where no number is typed, 0 for a row in which nothing is. */
	readonly copies: number;
}
