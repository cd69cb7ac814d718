import { formatTypeable } from '../length/formatLength.ts';
import { isSame, type Length } from '../length/length.ts';
import { readSettings } from '../settings/readSettings.ts';
import type { TypedSettings } from '../settings/settings.ts';
import type { Obstacle } from '../settings/wall.ts';
import { apply, type Edit } from '../show/edit.ts';
import type { Show } from '../show/show.ts';
import { isRecord, type PlainRecord } from '../values/isRecord.ts';
import { changeSettings } from './changeSettings.ts';

/** What is typed of an obstacle. */
export type ObstacleCell = 'name' | 'left' | 'bottom' | 'width' | 'height';

const sides = ['left', 'bottom', 'width', 'height'] as const;

/**
 * Puts an obstacle on a wall, or another in its place. A measure that stays the same keeps the text that was typed.
 * @param wall its place among the walls as read, from 0
 * @param at its place among the wall's obstacles as read; undefined adds one
 */
export function putObstacle(show: Show, wall: number, at: number | undefined, obstacle: Obstacle, label: string): Edit {
	const { settings } = readSettings(show.settings);
	const was = at === undefined ? undefined : settings.walls[wall]?.obstacles[at];
	const text = (value: Length) => formatTypeable(value, settings.unit);
	return change(show, wall, label, (typed, places) => {
		const place = at === undefined ? undefined : places[at];
		const before = place === undefined ? {} : (typed[place] as PlainRecord);
		const texts = sides.map((side): readonly [string, unknown] => {
			const [old, value] = [was?.[side], obstacle[side]];
			const isKept = value !== undefined && old !== undefined && isSame(old, value);
			return [side, value === undefined ? undefined : isKept ? before[side] : text(value)];
		});
		const name = was?.name === obstacle.name ? before['name'] : obstacle.name;
		const all = Object.entries({ ...before, name, ...Object.fromEntries(texts) });
		const after = Object.fromEntries(all.filter(([, value]) => value !== undefined));
		return place === undefined ? [...typed, after] : typed.with(place, after);
	});
}

/** Types a cell of an obstacle; what could not be read is not: the obstacle would go from its wall, or be as high as it. @returns why */
export function typeObstacle(
	show: Show,
	wall: number,
	at: number,
	cell: { readonly key: ObstacleCell; readonly text: string },
	label: string,
): Edit | { readonly problem: string } {
	const { key, text } = cell;
	const edit = change(show, wall, label, (typed, places) => {
		const { [key]: _, ...rest } = typed[places[at]!] as PlainRecord;
		return typed.with(places[at]!, text === '' ? rest : { ...rest, [key]: text });
	});
	const known = new Set(readSettings(show.settings).problems.map((each) => `${each.key} ${each.problem}`));
	const problems = readSettings(apply(show, edit).settings).problems;
	const problem = problems.find((each) => !known.has(`${each.key} ${each.problem}`))?.problem;
	return problem === undefined ? edit : { problem };
}

/** Takes an obstacle off its wall. */
export const removeObstacle = (show: Show, wall: number, at: number, label: string): Edit =>
	change(show, wall, label, (typed, places) => typed.toSpliced(places[at]!, 1));

/** @param make the wall's obstacles as they are typed then; it is told which of them those that can be read are */
function change(
	show: Show,
	wall: number,
	label: string,
	make: (typed: readonly unknown[], places: readonly number[]) => readonly unknown[],
): Edit {
	const walls = listOf(show.settings['walls']);
	const place = placesRead(walls, (each) => readsWalls(show.settings, each))[wall];
	if (place === undefined) throw new RangeError(`no wall ${wall} in the show`);
	const record = walls[place] as PlainRecord;
	const typed = listOf(record['obstacles']);
	const reads = (each: readonly unknown[]) => readsObstacles(show.settings, record, each);
	const obstacles = make(typed, placesRead(typed, reads));
	const { obstacles: _, ...rest } = record;
	const changed = walls.with(place, obstacles.length > 0 ? { ...rest, obstacles } : rest);
	return changeSettings(show, { walls: changed }, label);
}

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** The places of what of a list can be read: as each is added, one more is. */
function placesRead(list: readonly unknown[], countRead: (upTo: readonly unknown[]) => number): readonly number[] {
	let before = 0;
	return list.flatMap((_, at) => {
		const count = countRead(list.slice(0, at + 1));
		const isRead = count > before;
		before = count;
		return isRead ? [at] : [];
	});
}

const readsWalls = (settings: TypedSettings, walls: readonly unknown[]): number =>
	readSettings({ ...settings, walls: walls.map((each) => (isRecord(each) ? { ...each, obstacles: [] } : each)) })
		.settings.walls.length;

const readsObstacles = (settings: TypedSettings, wall: PlainRecord, obstacles: readonly unknown[]): number =>
	readSettings({ ...settings, walls: [{ ...wall, obstacles }] }).settings.walls[0]!.obstacles.length;
