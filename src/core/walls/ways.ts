import { type Length, times } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';
import { type Hangable, hangWalls, toHang } from './hangWalls.ts';
import { hangWall } from './hangWall.ts';
import type { HungWall } from './hungPrint.ts';

/** Whether all that hangs on a wall has room. */
export const hasRoom = ({ prints, stretches }: HungWall): boolean =>
	prints.every(({ past }) => past === undefined) && !stretches.some(({ isCrowded }) => isCrowded);

/** The prints of a wall of the show, as they go to it. */
const printsOn = (results: readonly Hangable[], wall: number) =>
	results.flatMap((result, place) => {
		if (result.copies === 0 || result.hangs.wall !== wall) return [];
		const print = toHang(result, place);
		return print ? [print] : [];
	});

/** The largest gap on the ruler by which all on a wall have room; undefined where its gap is none, or none would do. */
export function gapWithRoom(results: readonly Hangable[], wall: number, settings: Settings): Length | undefined {
	const asked = settings.walls[wall]!;
	if (asked.gap === undefined) return undefined;
	const prints = printsOn(results, wall);
	const isRoomy = (steps: number) =>
		hasRoom(hangWall({ ...asked, gap: times(settings.ruler, steps) }, prints, settings));
	if (!isRoomy(0)) return undefined;
	let [fits, tooMuch] = [0, Math.ceil(asked.gap / settings.ruler)];
	while (tooMuch - fits > 1) {
		const middle = Math.floor((fits + tooMuch) / 2);
		if (isRoomy(middle)) fits = middle;
		else tooMuch = middle;
	}
	return times(settings.ruler, fits);
}

/** The next wall, round from a print's own, on which the print has room behind all that hangs there; undefined where none has. */
export function wallWithRoom(results: readonly Hangable[], place: number, settings: Settings): number | undefined {
	const own = results[place]!;
	const { wall } = own.hangs;
	const print = toHang(own, place);
	if (wall === undefined || print === undefined) return undefined;
	const { walls } = settings;
	const others = walls.map((_, at) => (wall + at) % walls.length).slice(1);
	return others.find((other) => {
		const moved = { ...print, order: undefined, left: undefined };
		return hasRoom(hangWall(walls[other]!, [...printsOn(results, other), moved], settings));
	});
}

/** A show's walls with a print as it would hang with some of its typed places cleared. */
export function hangWithout(
	results: readonly Hangable[],
	place: number,
	cleared: 'hang left' | 'hang centre',
	settings: Settings,
): HungWall | undefined {
	const own = results[place]!;
	const { wall } = own.hangs;
	if (wall === undefined) return undefined;
	const cells = { ...own.read.cells, [cleared === 'hang left' ? 'hangLeft' : 'hangCentre']: undefined };
	const changed = { ...own, read: { ...own.read, cells } };
	return hangWalls(results.with(place, changed), settings).walls[wall];
}
