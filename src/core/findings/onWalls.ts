import type { Settings } from '../settings/settings.ts';
import { nameOfPrint } from '../show/nameOfPrint.ts';
import type { Row } from '../show/row.ts';
import { isSameValue } from '../values/isSameValue.ts';
import { hooksOf } from '../walls/fixing.ts';
import { hangWalls } from '../walls/hangWalls.ts';
import type { HungPrint, HungRow, HungWall } from '../walls/hungPrint.ts';
import { type Overlap, overlapsOn } from '../walls/overlaps.ts';
import { gapWithRoom, isMendedBy, type Wrong, wallWithRoom, withCleared } from '../walls/ways.ts';
import type { FiguresByCode, OverlapFigures } from './figures.ts';
import type { Mend } from './finding.ts';
import { findingOf } from './findingOf.ts';
import type { RowResult } from './rowResult.ts';
import { withLook } from './withLook.ts';
import { labelOf } from './words/inWords.ts';

/** What hanging adds to a row. */
interface OnWall {
	readonly hung: HungRow;
	readonly off: FiguresByCode['off-wall'] | undefined;
	readonly over: FiguresByCode['hangs-over'] | undefined;
}

/** What came of a result the last time: while its place is the same, its result stays the same object. */
const known = new WeakMap<RowResult, { readonly onWall: OnWall; readonly result: RowResult }>();

/**
 * The results of a show with the place of each print on its wall, and with `off-wall` and `hangs-over` where there is no
 * room for it. A print that hangs on no wall keeps its result.
 */
export function withHanging(
	rows: readonly Row[],
	results: readonly RowResult[],
	settings: Settings,
): readonly RowResult[] {
	if (settings.walls.length === 0) return results;
	const all = [...results];
	for (const hungWall of hangWalls(results, settings).walls) {
		const overlaps = overlapsOn(hungWall);
		for (const hung of hungWall.prints) {
			const onWall = {
				hung: { ...hung, hooks: hooksOf(results[hung.place]!, hung, settings) },
				off: offWall(hung, hungWall),
				over: hangsOver(overlaps.get(hung), hungWall, rows),
			};
			all[hung.place] = resultOn(results, hung.place, onWall, settings);
		}
	}
	return all;
}

function offWall({ past, isPastLeft, exactLeft, size }: HungPrint, { wall }: HungWall): OnWall['off'] {
	if (past === undefined) return undefined;
	const isPastAll = exactLeft + size.width - past >= wall.length - 1;
	return { wall: { said: wall.name }, past, kind: isPastLeft ? 'left' : isPastAll ? 'wall' : 'part' };
}

function hangsOver(overlaps: readonly Overlap[] | undefined, { wall }: HungWall, rows: readonly Row[]): OnWall['over'] {
	return overlaps && { wall: { said: wall.name }, overlaps: overlaps.map((overlap) => overlapFigures(overlap, rows)) };
}

function overlapFigures(overlap: Overlap, rows: readonly Row[]): OverlapFigures {
	switch (overlap.kind) {
		case 'print': {
			const { place } = overlap.other;
			const row = rows[place]!;
			return { kind: 'print', other: { id: row.id, said: nameOfPrint(row, place) }, by: overlap.by };
		}
		case 'obstacle':
			return { kind: 'obstacle', other: { said: overlap.name }, by: overlap.by };
		case 'floor':
			return { kind: 'floor', under: overlap.under };
		case 'top':
			return { kind: 'top', over: overlap.over, height: overlap.height };
	}
}

function resultOn(results: readonly RowResult[], place: number, onWall: OnWall, settings: Settings): RowResult {
	const before = results[place]!;
	const last = known.get(before);
	const { hung, off, over } = onWall;
	// What would mend it depends on the others, so what has something to mend is made again.
	if (last && !off && !over && isSameValue(last.onWall, onWall)) return last.result;
	let result: RowResult = { ...before, hung };
	const cells = [hung.isLeftTyped ? 'hang left' : 'wall'];
	if (off)
		result = withLook(
			result,
			findingOf({ code: 'off-wall', level: 'look', cells, figures: () => off }, settings, () =>
				mendsOff(results, place, hung, settings),
			),
		);
	if (over)
		result = withLook(
			result,
			findingOf({ code: 'hangs-over', level: 'look', cells, figures: () => over }, settings, () =>
				clearing(results, place, hung, 'over', settings),
			),
		);
	known.set(before, { onWall, result });
	return result;
}

/** A smaller gap, the typed place cleared, the next wall with room: each where it would do. */
function mendsOff(results: readonly RowResult[], place: number, hung: HungPrint, settings: Settings): readonly Mend[] {
	const wall = results[place]!.hangs.wall!;
	const gap = hung.isLeftTyped ? undefined : gapWithRoom(results, wall, settings);
	const { name } = settings.walls[wall]!;
	const next = wallWithRoom(results, place, settings);
	return [
		...(gap === undefined
			? []
			: [
					{
						label: labelOf({ kind: 'set the gap', wall: name, gap }, settings),
						change: {},
						wallGap: { wall: name, gap },
					},
				]),
		...clearing(results, place, hung, 'off', settings),
		...(next === undefined ? [] : [toWall(settings.walls[next]!.name, settings)]),
	];
}

const toWall = (wall: string, settings: Settings): Mend => ({
	label: labelOf({ kind: 'set name', column: 'wall', name: wall }, settings),
	change: { wall, 'hang order': '', 'hang left': '' },
});

/** Clears a typed place, where that mends it, and moves nothing else off its wall or over something. */
function clearing(
	results: readonly RowResult[],
	place: number,
	{ isLeftTyped, isCentreTyped }: HungPrint,
	wrong: Wrong,
	settings: Settings,
): readonly Mend[] {
	const typed = [
		...(isLeftTyped ? (['hang left'] as const) : []),
		...(isCentreTyped ? (['hang centre'] as const) : []),
	];
	return typed
		.filter((column) => isMendedBy(results, withCleared(results, place, column), { place, wrong: [wrong] }, settings))
		.map((column) => ({
			label: labelOf({ kind: 'clear', columns: [column] }, settings),
			change: { [column]: '' },
		}));
}
