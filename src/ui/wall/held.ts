import { type Length, length } from '../../core/length/length.ts';
import { onRuler } from '../../core/length/ruler.ts';
import type { Obstacle, Wall } from '../../core/settings/wall.ts';
import type { HungPrint } from '../../core/walls/hungPrint.ts';
import { drawnObstacle, movedObstacle, resizedObstacle, type Side } from '../../core/walls/obstacleBox.ts';
import type { DrawnWall } from './wallScene.ts';

/** A drag goes along the wall or up and down it, as it begins: one does not change the other by accident. */
export type Axis = 'across' | 'up';

/** A point of the screen, in pixels. */
export interface ScreenPoint {
	readonly x: number;
	readonly y: number;
}

/** A print that is dragged. */
export interface HeldPrint {
	readonly kind: 'print';
	readonly drawn: DrawnWall;
	readonly from: ScreenPoint;
	/** The print's place in the show. */
	readonly place: number;
	readonly print: HungPrint;
	/** Undefined until it has moved. */
	readonly axis: Axis | undefined;
	/** By how much the finger has moved, in units of length, to the right and up. */
	readonly by: ScreenPoint;
	/** Where its left edge and its middle are now. */
	readonly left: Length;
	readonly centre: Length;
	/** Where its left edge, or its middle, would be if nothing were typed of it. */
	readonly even: Length | undefined;
	/** Over what the finger is: its own wall, another, or none. */
	readonly over: 'own' | 'other' | 'none';
}

/** An obstacle that is drawn, moved or resized. */
export interface HeldObstacle {
	readonly kind: 'obstacle';
	readonly drawn: DrawnWall;
	readonly from: ScreenPoint;
	/** Its place among the wall's; undefined for one that is drawn. */
	readonly at: number | undefined;
	/** The side that is dragged; undefined where all of it is. */
	readonly side: Side | undefined;
	/** As it was; undefined for one that is drawn. */
	readonly was: Obstacle | undefined;
	/** Where on the wall it began, in units of length: for one that is drawn. */
	readonly start: { readonly x: number; readonly y: number };
	readonly axis: Axis | undefined;
	readonly isMoved: boolean;
	/** As it is now; undefined where what is drawn is too small. */
	readonly now: Obstacle | undefined;
}

/** What is under the finger. */
export type Held = HeldPrint | HeldObstacle;

/** Whether it has moved: a finger may slip a little without moving anything. */
export const isMoved = (held: Held): boolean => (held.kind === 'print' ? held.axis !== undefined : held.isMoved);

/** By what things are dragged. */
export interface Dragging {
	/** Pixels a millimetre. */
	readonly scale: number;
	readonly ruler: Length;
	/** Over what the finger is. */
	readonly over: HeldPrint['over'];
	readonly evenOf: (place: number, axis: Axis) => Length | undefined;
}

/** Pixels that a finger may slip, and within which what is dragged goes to a line. */
const slip = 6;
const nearPixels = 10;
/** How far from a line still counts as on it, in units of length. */
export const nearAt = (scale: number): Length => length(Math.round((nearPixels / scale) * 1e7));

/** The way of a drag: up only where it begins clearly upright; undefined where it has hardly begun. */
const axisOf = (x: number, y: number): Axis | undefined =>
	Math.hypot(x, y) <= slip ? undefined : Math.abs(y) > 1.5 * Math.abs(x) ? 'up' : 'across';

/** What is held once the finger is elsewhere. */
export function heldAt(held: Held, point: ScreenPoint, dragging: Dragging): Held {
	const pixels = { x: point.x - held.from.x, y: held.from.y - point.y };
	const by = { x: (pixels.x / dragging.scale) * 1e7, y: (pixels.y / dragging.scale) * 1e7 };
	const axis = held.axis ?? axisOf(pixels.x, pixels.y);
	if (held.kind === 'obstacle') return axis || held.isMoved ? obstacleAt(held, by, axis!, dragging) : held;
	if (!axis) return held;
	const even = held.axis ? held.even : dragging.evenOf(held.place, axis);
	const moved = { ...held, by, axis, even, over: dragging.over };
	const { wall } = held.drawn.hung;
	return axis === 'across'
		? { ...moved, left: draggedLeft(held.print, by.x, { wall, even, ...dragging }) }
		: {
				...moved,
				// Beside its wall it goes back: it was not meant to hang at the very top or bottom.
				centre:
					dragging.over === 'none' ? held.print.centre : draggedCentre(held.print, by.y, { wall, even, ...dragging }),
			};
}

function obstacleAt(held: HeldObstacle, by: ScreenPoint, axis: Axis, { scale, ruler }: Dragging): HeldObstacle {
	const { was, side, start } = held;
	const on = { wall: held.drawn.hung.wall, ruler, near: nearAt(scale) };
	const moved = { ...held, axis, isMoved: true };
	if (!was) return { ...moved, now: drawnObstacle(start, { x: start.x + by.x, y: start.y + by.y }, on) };
	if (side) {
		const along = side === 'left' || side === 'right' ? by.x : by.y;
		return { ...moved, now: resizedObstacle(was, side, along, on) };
	}
	return { ...moved, now: movedObstacle(was, axis === 'across' ? { x: by.x, y: 0 } : { x: 0, y: by.y }, on) };
}

interface DraggedOn {
	readonly wall: Wall;
	readonly even: Length | undefined;
	readonly ruler: Length;
	readonly scale: number;
}

/** Where the left edge of a dragged print is: on the ruler, within the wall, at its even place where it is near that. */
export function draggedLeft(print: HungPrint, by: number, { wall, even, ruler, scale }: DraggedOn): Length {
	const left = onRuler(Math.max(0, Math.min(print.left + by, wall.length - print.size.width)), ruler);
	return even !== undefined && Math.abs(left - even) <= nearAt(scale) ? even : left;
}

/**
 * How high the middle of a dragged print is: on the ruler, between floor and ceiling; where it is near them, where it hangs
 * with nothing typed, or on the wall's centre line.
 */
export function draggedCentre(print: HungPrint, by: number, { wall, even, ruler, scale }: DraggedOn): Length {
	const half = print.size.height / 2;
	const most = wall.height === undefined ? Infinity : wall.height - half;
	const raw = Math.max(half, Math.min(print.centre + by, most));
	const lines = [...(even === undefined ? [] : [even]), wall.centre];
	return lines.find((line) => Math.abs(raw - line) <= nearAt(scale)) ?? onRuler(raw, ruler);
}
