import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import type { ToHang } from './columnsOfWall.ts';
import { hangWall } from './hangWall.ts';
import type { Hanging } from './hungPrint.ts';
import { sizeOnWall } from './sizeOnWall.ts';

/** What of a row its place on a wall follows from. */
export type Hangable = Pick<WorkedRow, 'read' | 'hangs' | 'framed' | 'frame' | 'copies'>;

/**
 * Hangs the prints of a show on its walls. Of a row with copies the first hangs.
 * @param results in the order of the rows
 */
export function hangWalls(results: readonly Hangable[], settings: Settings): Hanging {
	const { walls } = settings;
	const byWall: ToHang[][] = walls.map(() => []);
	const unhung: { readonly place: number; readonly why: 'no wall' | 'no size' }[] = [];
	for (const [place, result] of results.entries()) {
		if (result.copies === 0) continue;
		const print = toHang(result, place);
		const { wall } = result.hangs;
		if (print === undefined || wall === undefined) unhung.push({ place, why: print ? 'no wall' : 'no size' });
		else byWall[wall]!.push(print);
	}
	return { walls: walls.map((wall, at) => hangWall(wall, byWall[at]!, settings)), unhung };
}

/** A row as it goes to the wall; undefined where its size is not known. */
export function toHang(result: Hangable, place: number): ToHang | undefined {
	const size = sizeOnWall(result);
	const { hangLeft, hangCentre } = result.read.cells;
	return size && { place, size, order: result.hangs.order, left: hangLeft, centre: hangCentre };
}
