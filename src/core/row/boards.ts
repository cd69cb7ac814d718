import type { Board } from '../settings/board.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { named } from '../values/named.ts';

/** The board that a mount is cut from. */
export interface FoundBoard {
	/** The name that the row asks for, as typed; undefined where it names none. */
	readonly asked: string | undefined;
	/** The cell that names it, or would: an inner mount has the outer one's board unless its own cell names another. */
	readonly cell: 'board' | 'inner board';
	/** As it stands in the show's list, else as typed; empty where none is named and the show has none. */
	readonly name: string;
	/** Undefined where the show's list has none of that name. */
	readonly board: Board | undefined;
}

/** The boards of a row's mounts, by the part that is cut from each. */
export type RowBoards = Readonly<Record<'mount' | 'inner mount', FoundBoard>>;

/** A board of the show by its name. */
export function boardNamed(name: string | undefined, { boards }: Settings): Board | undefined {
	return named(name, boards);
}

/**
 * The boards of a row: as typed, else the show's first that is not the undermount's; the inner mount's as typed, else the
 * outer one's.
 */
export function findBoards(row: Row, settings: Settings): RowBoards {
	const mount = askedBoard(row, 'board', settings) ?? usualBoard(settings);
	return { mount, 'inner mount': askedBoard(row, 'inner board', settings) ?? mount };
}

function askedBoard({ typed }: Row, cell: FoundBoard['cell'], settings: Settings): FoundBoard | undefined {
	const asked = typed[cell]?.trim();
	if (!asked) return undefined;
	const board = boardNamed(asked, settings);
	return { asked, cell, name: board?.name ?? asked, board };
}

function usualBoard(settings: Settings): FoundBoard {
	const undermount = boardNamed(settings.undermount, settings);
	const board = settings.boards.find(({ name }) => name !== undermount?.name) ?? settings.boards[0];
	return { asked: undefined, cell: 'board', name: board?.name ?? '', board };
}
