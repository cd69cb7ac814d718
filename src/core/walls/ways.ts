import { type Length, times } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';
import { type Hangable, hangWalls, toHang } from './hangWalls.ts';
import { hangWall } from './hangWall.ts';
import type { HungWall } from './hungPrint.ts';
import { overlapsOn } from './overlaps.ts';

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

/** The next wall, round from a print's own, on which the print has room and nothing is worse; undefined where none has. */
export function wallWithRoom(results: readonly Hangable[], place: number, settings: Settings): number | undefined {
	const own = results[place]!;
	const { wall } = own.hangs;
	if (wall === undefined) return undefined;
	const others = settings.walls.map((_, at) => (wall + at) % settings.walls.length).slice(1);
	return others.find((other) => {
		const hangs = { wall: other, order: undefined };
		const moved = { ...own, hangs, read: { ...own.read, cells: { ...own.read.cells, hangLeft: undefined } } };
		const changed = results.with(place, moved);
		return (
			hasRoom(hangWall(settings.walls[other]!, printsOn(changed, other), settings)) &&
			isMendedBy(results, changed, { place, wrong: ['off', 'over'] }, settings)
		);
	});
}

/** The rows of a show with a typed place of one cleared. */
export function withCleared(
	results: readonly Hangable[],
	place: number,
	column: 'hang left' | 'hang centre',
): readonly Hangable[] {
	const own = results[place]!;
	const cells = { ...own.read.cells, [column === 'hang left' ? 'hangLeft' : 'hangCentre']: undefined };
	return results.with(place, { ...own, read: { ...own.read, cells } });
}

/** The wall of a print as it hangs with a typed place of the print cleared; undefined where the print hangs on none. */
export function hangWithout(
	results: readonly Hangable[],
	place: number,
	cleared: 'hang left' | 'hang centre',
	settings: Settings,
): HungWall | undefined {
	const { wall } = results[place]!.hangs;
	return wall === undefined ? undefined : hangWalls(withCleared(results, place, cleared), settings).walls[wall];
}

/** What can be wrong with the place of a print: it is off its wall, or hangs over something. */
export type Wrong = 'off' | 'over';

/** Whether a change rids a print of what is wrong with its place, and leaves nothing wrong that was right before. */
export function isMendedBy(
	before: readonly Hangable[],
	after: readonly Hangable[],
	{ place, wrong }: { readonly place: number; readonly wrong: readonly Wrong[] },
	settings: Settings,
): boolean {
	const mended = new Set(wrong.map((each) => `${each} ${place}`));
	const known = wrongPlaces(before, settings);
	return [...wrongPlaces(after, settings)].every((each) => known.has(each) && !mended.has(each));
}

/** What is wrong on the walls of a show: `off 3`, `over 0`, by the places of the prints. */
function wrongPlaces(results: readonly Hangable[], settings: Settings): ReadonlySet<string> {
	const wrong = hangWalls(results, settings).walls.flatMap((hung) => {
		const overlaps = overlapsOn(hung);
		return hung.prints.flatMap((print) => [
			...(print.past === undefined ? [] : [`off ${print.place}`]),
			...(overlaps.has(print) ? [`over ${print.place}`] : []),
		]);
	});
	return new Set(wrong);
}
