import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { findBoards } from './boards.ts';
import { type Cells, hasMount } from './cells.ts';
import { findFrame, nameFrame } from './frame.ts';
import { inheritedBy } from './inherited.ts';
import { readCells } from './readCells.ts';
import { readWords } from './rowWords.ts';
import { solveRow } from './solveRow.ts';
import type { WorkedRow } from './workedRow.ts';

/** Works a row out from its typed cells and the show's settings. */
export function workOut(row: Row, settings: Settings): WorkedRow {
	const read = readCells(row, settings);
	const named = nameFrame(row, settings);
	const solution = solveRow(read.cells, settings);
	const isEmpty = Object.keys(row.typed).length === 0;
	return {
		read,
		words: readWords(row, named),
		inherited: inheritedBy(read.cells, solution, settings),
		hasMount: hasMount(read.cells),
		solution,
		solved: solution.solved,
		boards: findBoards(row, settings),
		frame: findFrame(named, read.cells, solution.solved, settings),
		// A row in which nothing is typed yet is no print: nothing is cut for it.
		copies: isEmpty ? 0 : read.copies,
	};
}

/** The same row if its cells of figures said this: to try how they may have been meant. */
export function workedOutAs(worked: WorkedRow, cells: Cells, settings: Settings): WorkedRow {
	const solution = solveRow(cells, settings);
	const { read, words, boards, frame, copies } = worked;
	return {
		read: { cells, copies: read.copies, unread: read.unread },
		words,
		inherited: inheritedBy(cells, solution, settings),
		hasMount: hasMount(cells),
		solution,
		solved: solution.solved,
		boards,
		frame: findFrame(frame.named, cells, solution.solved, settings),
		copies,
	};
}
