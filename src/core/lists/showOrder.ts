import { hangOrder } from '../row/hangOrder.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { hangWalls } from '../walls/hangWalls.ts';

/** Prints that hang together. */
export interface PrintsOfWall {
	/** The wall's name; blank for those that hang on none. */
	readonly wall: string;
	/** The places of their rows, from 0. */
	readonly places: readonly number[];
}

/**
 * The prints of a show as somebody walks past them: wall by wall, on each from the left and in a column from the top; then
 * those that hang on none, by their hang order and else as they stand in the show. A wall without prints is left out.
 */
export function showOrder(
	rows: readonly Row[],
	results: readonly Pick<WorkedRow, 'read' | 'hangs' | 'framed' | 'frame' | 'copies'>[],
	settings: Settings,
): readonly PrintsOfWall[] {
	const { walls } = hangWalls(results, settings);
	const hung = walls.map(({ wall, prints }) => ({ wall: wall.name, places: prints.map(({ place }) => place) }));
	const isHung = new Set(hung.flatMap(({ places }) => places));
	const rest = hangOrder(rows, results).filter((place) => !isHung.has(place) && results[place]!.copies > 0);
	return [...hung, { wall: '', places: rest }].filter(({ places }) => places.length > 0);
}
