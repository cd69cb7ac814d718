import type { Settings } from '../settings/settings.ts';
import { isUntyped } from '../show/blankRow.ts';
import type { Row } from '../show/row.ts';
import { findBoards } from './boards.ts';
import { type Cells, hasMount } from './cells.ts';
import { findFrame } from './frame.ts';
import { frameRow } from './framed.ts';
import { readHangCells } from './hangCells.ts';
import { hingesOf } from './hinges.ts';
import { inheritedBy } from './inherited.ts';
import { findMaterials } from './materials.ts';
import { type NamedFrame, nameFrame } from './namedFrame.ts';
import { paperPlace, pictureOnPaper } from './paperPlace.ts';
import { withPossibleDrop } from './possibleDrop.ts';
import { type ReadCells, readCells } from './readCells.ts';
import { readWords } from './rowWords.ts';
import { solveRow } from './solveRow.ts';
import { unreadWords } from './unreadWords.ts';
import type { WorkedRow } from './workedRow.ts';

/** Works a row out from its typed cells and the show's settings. */
export function workOut(row: Row, settings: Settings): WorkedRow {
	const read = readRow(row, settings);
	const named = nameFrame(row, settings);
	// A row in which nothing is typed yet is no print: nothing is cut for it.
	const copies = isUntyped(row) ? 0 : read.copies;
	const fixed = {
		words: readWords(row, named, paperSurface(read.cells, settings)),
		boards: findBoards(row, settings),
		copies,
		hangs: readHangCells(row, settings),
	};
	return workedRow(read, named, fixed, settings);
}

/** What the cells of a row say by themselves: whether a drop fits its frame, only `workOut` knows. */
export function readRow(row: Row, settings: Settings): ReadCells {
	const cells = readCells(row, settings);
	return { ...cells, unread: [...cells.unread, ...unreadWords(row, settings)] };
}

/** What the show's list says of the surface of a row's paper. */
const paperSurface = ({ paper }: Cells, { papers }: Settings): string | undefined =>
	paper?.listed === undefined ? undefined : papers.find(({ name }) => name === paper.listed)?.surface;

/** The same row if its cells of figures said this: to try how they may have been meant. */
export function workedOutAs(worked: WorkedRow, cells: Cells, settings: Settings): WorkedRow {
	return workedRow({ ...worked.read, cells }, worked.frame.named, worked, settings);
}

/** @param fixed what does not hang on the cells of figures */
function workedRow(
	read: ReadCells,
	named: NamedFrame,
	{ words, boards, copies, hangs }: Pick<WorkedRow, 'words' | 'boards' | 'copies' | 'hangs'>,
	settings: Settings,
): WorkedRow {
	const { cells } = read;
	const isMounted = hasMount(cells);
	const solution = solveRow(cells, settings);
	const { solved } = solution;
	const onPaper = pictureOnPaper(cells, solution, settings);
	const place = isMounted ? paperPlace({ read, solved, onPaper }) : undefined;
	const frame = findFrame(named, { cells, solved, onPaper }, settings);
	const materials = findMaterials(words, frame.frame !== undefined, settings);
	const framed = frameRow({ boards, read, hasMount: isMounted, materials }, frame, settings);
	return {
		read: withPossibleDrop(read, frame, framed),
		words,
		inherited: inheritedBy(cells, solution, settings),
		hasMount: isMounted,
		solution,
		solved,
		boards,
		frame,
		onPaper,
		place,
		hinges: hingesOf(solved, onPaper, settings.unit),
		hangs,
		materials,
		framed,
		copies,
	};
}
