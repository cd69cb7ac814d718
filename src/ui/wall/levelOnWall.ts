import type { RowResult } from '../../core/findings/rowResult.ts';
import type { Settings } from '../../core/settings/settings.ts';
import type { HungPrint, HungWall } from '../../core/walls/hungPrint.ts';
import { heatWords } from '../../core/walls/wallWords.ts';

/** What the corner of a print on a wall marks: what was found of the print, or that its place is warm. */
export type LevelOnWall = 'stop' | 'look' | 'warm';

/** What each mark says, the gravest first. */
export const levelWords: Readonly<Record<LevelOnWall, string>> = {
	stop: 'can’t be cut yet',
	look: 'to check',
	warm: 'above heat',
};

/** The marks as they are drawn, in pixels from the upper right corner of a print: each has a form of its own. */
export const corners: Readonly<Record<LevelOnWall, string>> = {
	stop: 'M-14 0H0V14Z',
	look: 'M-13 1.5H-1.5V13Z',
	warm: 'M-11.5 1.5H-1.5V11.5H-11.5Z',
};

/** The gravest of what the corner of a print marks: what was found of it, else what is warm under it. */
export function levelOnWall(
	wall: HungWall,
	print: HungPrint,
	results: readonly Pick<RowResult, 'findings'>[],
	settings: Settings,
): LevelOnWall | undefined {
	const found = results[print.place]?.findings.find(({ level }) => level !== 'note')?.level;
	return (found as 'stop' | 'look' | undefined) ?? (heatWords(wall, print, settings) ? 'warm' : undefined);
}

/** The prints of some walls under each mark that is there, by their places in the show: the gravest mark first. */
export function markedOnWalls(
	walls: readonly HungWall[],
	results: readonly Pick<RowResult, 'findings'>[],
	settings: Settings,
): readonly { readonly level: LevelOnWall; readonly places: readonly number[] }[] {
	const all = walls.flatMap((wall) =>
		wall.prints.map((print) => ({
			place: print.place,
			level: levelOnWall(wall, print, results, settings),
			isWarm: heatWords(wall, print, settings) !== undefined,
		})),
	);
	return (Object.keys(levelWords) as LevelOnWall[])
		.map((of) => ({
			level: of,
			places: all.filter(({ level, isWarm }) => (of === 'warm' ? isWarm : level === of)).map(({ place }) => place),
		}))
		.filter(({ places }) => places.length > 0);
}
