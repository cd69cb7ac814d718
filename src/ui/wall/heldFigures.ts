import { type Length, length, minus, plus, zero } from '../../core/length/length.ts';
import { topOf } from '../../core/walls/obstacleBox.ts';
import type { Obstacle } from '../../core/settings/wall.ts';
import type { HungPrint, HungWall } from '../../core/walls/hungPrint.ts';
import type { Held, HeldPrint } from './held.ts';
import { between, underAll, type WallMeasure } from './wallMeasures.ts';

/** A height that is drawn beside what is dragged: between two heights above the floor, so far along the wall. */
export interface HeightMeasure {
	readonly x: number;
	readonly from: Length;
	readonly to: Length;
}

/** A line that what is dragged goes to: along the wall at a height, or up it at both edges of a print. */
export interface SnapLine {
	readonly axis: 'across' | 'up';
	/** From the wall's left, or above the floor. */
	readonly at: Length;
	/** Whether what is dragged is on it. */
	readonly isOn: boolean;
}

/** What is drawn with what is dragged: where it would snap to, and how far it is from what is beside it. */
export interface HeldFigures {
	readonly lines: readonly SnapLine[];
	readonly measures: readonly WallMeasure[];
	readonly heights: readonly HeightMeasure[];
}

/** @param letter the height of a letter, in mm of the wall */
export function heldFigures(held: Held, letter: number): HeldFigures {
	if (held.kind === 'obstacle')
		return {
			lines: [],
			...(held.now ? obstacleFigures(held.drawn.hung, held.now, letter) : { measures: [], heights: [] }),
		};
	if (held.over === 'other' || held.axis === undefined) return { lines: [], measures: [], heights: [] };
	return held.axis === 'across' ? acrossFigures(held, letter) : upFigures(held, letter);
}

function acrossFigures({ drawn, print, left, even }: HeldPrint, letter: number): HeldFigures {
	const edges = even === undefined ? [] : [even, plus(even, print.size.width)];
	return {
		lines: edges.map((at) => ({ axis: 'up', at, isOn: left === even })),
		measures: between(drawn.hung, print, left, underAll(drawn.hung, letter)),
		heights: [],
	};
}

/** Its middle above the floor, how far that is from the centre line, and how far it is from what hangs over and under it. */
function upFigures({ drawn: { hung }, print, centre, even }: HeldPrint, letter: number): HeldFigures {
	const line = hung.wall.centre;
	const lines = [...new Set([...(even === undefined ? [] : [even]), line])];
	const middle = print.left + print.size.width / 2;
	const half = Math.round(print.size.height / 2);
	const [bottom, top] = [length(centre - half), length(centre + half)];
	const { above, below } = besideInColumn(hung, print, centre);
	const aside = print.left - letter * 1e7;
	return {
		lines: lines.map((at) => ({ axis: 'across', at, isOn: centre === at })),
		measures: [],
		heights: [
			{ x: aside, from: zero, to: centre },
			...(centre === line ? [] : [{ x: aside - letter * 5e7, from: line, to: centre }]),
			...(below === undefined ? [] : [{ x: middle, from: below, to: bottom }]),
			...(above === undefined ? [] : [{ x: middle, from: top, to: above }]),
		].filter(({ from, to }) => from !== to),
	};
}

/** The nearest edges over and under a print in its column. */
function besideInColumn(hung: HungWall, own: HungPrint, centre: Length) {
	const half = own.size.height / 2;
	let [above, below]: [number, number] = [Infinity, -Infinity];
	for (const print of hung.prints) {
		if (print.column !== own.column || print.place === own.place) continue;
		const [low, high] = [print.centre - print.size.height / 2, print.centre + print.size.height / 2];
		if (print.centre > centre) above = Math.min(above, low);
		else below = Math.max(below, high);
	}
	return {
		above: above >= centre + half && above < Infinity ? length(Math.round(above)) : undefined,
		below: below <= centre - half && below > -Infinity ? length(Math.round(below)) : undefined,
	};
}

/** How far an obstacle is from both ends of its wall and from the floor, and how large it is. */
export function obstacleFigures(
	{ wall }: HungWall,
	obstacle: Obstacle,
	letter: number,
): Pick<HeldFigures, 'measures' | 'heights'> {
	const { left, bottom, width } = obstacle;
	const right = plus(left, width);
	const top = topOf(obstacle);
	const y = bottom + ((top ?? 2 * bottom) - bottom) / 4;
	const inside = left + letter * 0.9e7;
	return {
		measures: [
			{ from: zero, to: left, y },
			{ from: left, to: right, y },
			{ from: right, to: Math.max(right, wall.length), y },
		].filter(({ from, to }) => to > from),
		heights: [
			...(bottom > 0 ? [{ x: inside, from: zero, to: bottom }] : []),
			...(top === undefined || minus(top, bottom) <= 0 ? [] : [{ x: right - letter * 0.9e7, from: bottom, to: top }]),
		],
	};
}
