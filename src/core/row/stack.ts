import { type Length, mm, plus, zero } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';
import { boardNamed, type FoundBoard, type RowBoards } from './boards.ts';
import type { ReadCells } from './readCells.ts';

/** A print on fine-art paper: about 0.3 mm. Common practice. */
export const printThickness = mm(0.3);
/** Mount board of which no thickness is known: 4-ply, 1.27 to 1.52 mm (S. Saitzyk, Art Hardware, 1987). */
export const usualBoardThickness = mm(1.4);
/** Glass of 2 mm and acrylic of 3 mm, as they are mostly sold for frames. Common practice. */
export const glazingThickness = { none: zero, glass: mm(2), acrylic: mm(3) } as const;
/** A backing of 3 mm MDF. Common practice. */
export const backingThickness = mm(3);

/** The thickness of a board, and whether it is known. */
export const boardThickness = ({ board }: FoundBoard): { readonly thickness: Length; readonly isKnown: boolean } => ({
	thickness: board?.thickness ?? usualBoardThickness,
	isKnown: board?.thickness !== undefined,
});

/** What of a row its stack is of. */
export interface Stacked {
	readonly boards: RowBoards;
	readonly read: Pick<ReadCells, 'cells'>;
}

/** The parts of a row's stack that the show's rules count: mounts, print and undermount. */
export function stackParts({ boards, read }: Stacked, settings: Settings): readonly Length[] {
	const undermount = settings.undermount?.trim()
		? (boardNamed(settings.undermount, settings)?.thickness ?? usualBoardThickness)
		: undefined;
	return [
		boardThickness(boards.mount).thickness,
		...(read.cells.innerMount ? [boardThickness(boards['inner mount']).thickness] : []),
		printThickness,
		...(undermount === undefined ? [] : [undermount]),
	];
}

/** The thickness of mounts, print and undermount together. */
export const stackThickness = (stacked: Stacked, settings: Settings): Length => plus(...stackParts(stacked, settings));

/** The face opening of a window with a 45° bevel: larger than the sight edge by twice the board's thickness. */
export const faceOpening = (window: Length, thickness: Length): Length => plus(window, thickness, thickness);
