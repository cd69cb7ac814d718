import type { Length } from '../../core/length/length.ts';
import { onRuler } from '../../core/length/ruler.ts';
import type { HungPrint, HungWall } from '../../core/walls/hungPrint.ts';

/** A print that is dragged along its wall. */
export interface WallDrag {
	readonly place: number;
	readonly hung: HungWall;
	readonly print: HungPrint;
	/** Where the finger went down, in pixels. */
	readonly from: { readonly x: number; readonly y: number };
	/** By how much it is moved, in mm of the wall. */
	readonly by: { readonly x: number; readonly y: number };
	/** Where its left edge is now. */
	readonly left: Length;
	/** Where its left edge would be if nothing were typed of it. */
	readonly even: Length | undefined;
	/** A finger may slip a little without moving anything. */
	readonly isMoved: boolean;
}

/**
 * Where the left edge of a dragged print is: on the ruler, within the wall, at its even place where it is near that.
 * @param near how far from its even place still counts as that
 */
export function draggedLeft(
	{ print, hung, by, even }: Pick<WallDrag, 'print' | 'hung' | 'by' | 'even'>,
	ruler: Length,
	near: Length,
): Length {
	const raw = print.left + by.x * 1e7;
	const left = onRuler(Math.max(0, Math.min(raw, hung.wall.length - print.size.width)), ruler);
	return even !== undefined && Math.abs(left - even) <= near ? even : left;
}
