import { inches, type Length, length, mm, minus, plus, times, zero } from '../length/length.ts';
import type { Unit } from '../length/reading.ts';
import { onRuler } from '../length/ruler.ts';
import type { Obstacle, Wall } from '../settings/wall.ts';

/** A side of an obstacle, as seen from the room. */
export type Side = 'left' | 'right' | 'top' | 'bottom';

/** A point on a wall: from its left and above the floor, in units, not whole. */
export interface WallPoint {
	readonly x: number;
	readonly y: number;
}

/** By what an obstacle is moved on its wall. */
export interface OnWallBy {
	readonly wall: Wall;
	readonly ruler: Length;
	/** How far from the floor and the wall's ends still counts as there, in units. */
	readonly near: number;
}

/** The least side of an obstacle that is drawn: so many graduations of the ruler. */
const leastSteps = 10;

/** Where an obstacle's top is: undefined where it goes up to the ceiling. */
export const topOf = ({ bottom, height }: Obstacle): Length | undefined =>
	height === undefined ? undefined : plus(bottom, height);

/** The same on its wall: the ceiling, where that is known. */
export const topIn = (obstacle: Obstacle, { height }: Wall): Length | undefined => topOf(obstacle) ?? height;

/** An obstacle elsewhere on its wall, as large as it is; one that goes up to the ceiling moves along the wall alone. */
export function movedObstacle(obstacle: Obstacle, { x, y }: WallPoint, { wall, ruler, near }: OnWallBy): Obstacle {
	const { width, height } = obstacle;
	const left = x === 0 ? obstacle.left : within(obstacle.left + x, wall.length - width, { ruler, near });
	if (y === 0 || height === undefined) return { ...obstacle, left };
	const most = wall.height === undefined ? Infinity : wall.height - height;
	return { ...obstacle, left, bottom: within(obstacle.bottom + y, most, { ruler, near }) };
}

/** An obstacle with one side elsewhere; the other three stay, and it stays at least ten graduations large. */
export function resizedObstacle(obstacle: Obstacle, side: Side, by: number, { wall, ruler, near }: OnWallBy): Obstacle {
	const { left, bottom, width, height } = obstacle;
	const least = times(ruler, leastSteps);
	const right = plus(left, width);
	const top = topIn(obstacle, wall);
	switch (side) {
		case 'left': {
			const to = Math.min(within(left + by, Infinity, { ruler, near }), Math.max(0, right - least)) as Length;
			return { ...obstacle, left: to, width: minus(right, to) };
		}
		case 'right': {
			const to = within(right + by, Math.max(wall.length, right), { ruler, near });
			return { ...obstacle, width: minus(length(Math.max(to, left + least)), left) };
		}
		case 'bottom': {
			const most = top === undefined ? Infinity : Math.max(0, top - least);
			const to = Math.min(within(bottom + by, Infinity, { ruler, near }), most) as Length;
			return { ...obstacle, bottom: to, height: height === undefined ? undefined : minus(top!, to) };
		}
		case 'top': {
			if (top === undefined) return obstacle;
			const to = within(top + by, Math.max(wall.height ?? Infinity, top), { ruler, near });
			return { ...obstacle, height: minus(length(Math.max(to, bottom + least)), bottom) };
		}
	}
}

/** What is drawn from one corner to the other; undefined where it is too small to be meant. */
export function drawnObstacle(from: WallPoint, to: WallPoint, by: OnWallBy): Obstacle | undefined {
	const { wall, ruler } = by;
	const across = (x: number) => within(x, wall.length, by);
	const up = (y: number) => within(y, wall.height ?? Infinity, by);
	const [left, right] = [across(Math.min(from.x, to.x)), across(Math.max(from.x, to.x))];
	const [bottom, top] = [up(Math.min(from.y, to.y)), up(Math.max(from.y, to.y))];
	const least = leastSteps * ruler;
	if (right - left < least || top - bottom < least) return undefined;
	return { name: 'obstacle', left, bottom, width: minus(right, left), height: minus(top, bottom) };
}

/** On the ruler between 0 and the most, and at either end where it is near that. */
function within(value: number, most: number, { ruler, near }: Pick<OnWallBy, 'ruler' | 'near'>): Length {
	if (most <= 0 || value <= near) return zero;
	if (value >= most - near) return length(Math.round(most));
	return onRuler(value, ruler);
}

/** What stands in the way most often. */
export const usualObstacles = ['door', 'window', 'switch'] as const;
/** See `usualObstacles`. */
export type UsualObstacle = (typeof usualObstacles)[number];

/**
 * An obstacle in the middle of a wall, as large as such things often are: to be moved and given its measures. Common
 * practice, from memory.
 */
export function usualObstacle(kind: UsualObstacle, { length: wallLength }: Wall, unit: Unit, ruler: Length): Obstacle {
	const inch = unit === 'in';
	const [bottom, width, height] = {
		door: inch ? ([zero, inches(36), inches(80)] as const) : ([zero, mm(900), mm(2000)] as const),
		window: inch ? ([inches(36), inches(48), inches(48)] as const) : ([mm(900), mm(1200), mm(1200)] as const),
		switch: inch ? ([inches(45), inches(3), inches(5)] as const) : ([mm(1050), mm(80), mm(80)] as const),
	}[kind];
	const left = onRuler(Math.max(0, (wallLength - width) / 2), ruler);
	return { name: kind, left, bottom, width: length(Math.min(width, wallLength)), height };
}
