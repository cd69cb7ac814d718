import { type Length, mm, plus, zero } from '../length/length.ts';
import type { Row } from '../show/row.ts';
import type { Board, Settings } from '../show/settings.ts';

/** A print on fine-art paper: about 0.3 mm. Common practice. */
export const printThickness = mm(0.3);
/** Mount board of which no thickness is known: 4-ply, 1.27 to 1.52 mm (S. Saitzyk, Art Hardware, 1987). */
export const usualBoardThickness = mm(1.4);
/** Glass of 2 mm and acrylic of 3 mm, as they are mostly sold for frames. Common practice. */
export const glazingThickness = { none: zero, glass: mm(2), acrylic: mm(3) } as const;
/** A backing of 3 mm MDF. Common practice. */
export const backingThickness = mm(3);

/** A board of the show by its name. */
export function boardNamed(name: string | undefined, { boards }: Settings): Board | undefined {
	const wanted = name?.trim().toLowerCase();
	return wanted ? boards.find((board) => board.name.trim().toLowerCase() === wanted) : undefined;
}

/** The board of a row's mount: as typed, else the show's first that is not the undermount's. */
export function boardOf({ typed }: Row, settings: Settings): Board | undefined {
	if (typed.board?.trim()) return boardNamed(typed.board, settings);
	const undermount = boardNamed(settings.undermount, settings);
	return settings.boards.find((board) => board.name !== undermount?.name) ?? settings.boards[0];
}

/** The board of a row's inner mount: as typed, else the outer one's. */
export const innerBoardOf = (row: Row, settings: Settings): Board | undefined =>
	row.typed['inner board']?.trim() ? boardNamed(row.typed['inner board'], settings) : boardOf(row, settings);

/** The thickness of a row's mount board, or of its inner mount's, and whether it is known. */
export function boardThickness(
	row: Row,
	settings: Settings,
	isInner = false,
): { readonly thickness: Length; readonly isKnown: boolean } {
	const thickness = (isInner ? innerBoardOf : boardOf)(row, settings)?.thickness;
	return { thickness: thickness ?? usualBoardThickness, isKnown: thickness !== undefined };
}

/** The parts of a row's stack that the show's rules count: mounts, print and undermount. */
export function stackParts(row: Row, hasInnerMount: boolean, settings: Settings): readonly Length[] {
	const { thickness } = boardThickness(row, settings);
	const undermount = settings.undermount?.trim()
		? (boardNamed(settings.undermount, settings)?.thickness ?? usualBoardThickness)
		: undefined;
	return [
		thickness,
		...(hasInnerMount ? [boardThickness(row, settings, true).thickness] : []),
		printThickness,
		...(undermount === undefined ? [] : [undermount]),
	];
}

/** The thickness of mounts, print and undermount together. */
export const stackThickness = (row: Row, hasInnerMount: boolean, settings: Settings): Length =>
	plus(...stackParts(row, hasInnerMount, settings));

/** The face opening of a window with a 45° bevel: larger than the sight edge by twice the board's thickness. */
export const faceOpening = (window: Length, thickness: Length): Length => plus(window, thickness, thickness);
