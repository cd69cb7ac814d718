import { type Length, length, minus, plus, sameWithin, times } from '../length/length.ts';
import { downToRuler, onRuler, upToRuler } from '../length/ruler.ts';
import type { AxisCover } from './cover.ts';

/** What of an axis was typed, by what stands: the rest may move to the ruler. */
export interface Standing {
	/** Typed, named, or the show's. */
	readonly mount: Length | undefined;
	/** Typed. */
	readonly window: Length | undefined;
	/** Typed, or following by the shape from its typed other side. */
	readonly hasPicture: boolean;
}

/** The width of a row as it is cut. */
export interface CutWidth {
	readonly mount: Length;
	readonly side: Length;
	readonly window: Length;
}

/** The height of a row as it is cut. */
export interface CutHeight {
	readonly mount: Length;
	readonly top: Length;
	readonly bottom: Length;
	readonly window: Length;
}

/**
 * Puts the side on the ruler. Where the mount stands, the window takes what the borders leave; where it does not, the
 * window goes to the ruler too and the mount is the sum.
 *
 * @param exact the exact side and window
 * @param side as typed
 */
export function widthOnRuler(
	exact: { side: number; window: number },
	side: Length | undefined,
	{ mount, window, hasPicture }: Standing,
	cover: AxisCover,
	ruler: Length,
): CutWidth {
	if (mount === undefined) {
		const cutSide = side ?? onRuler(exact.side, ruler);
		const cutWindow = window ?? windowOnRuler(exact.window, hasPicture, cover, ruler);
		return { mount: plus(times(cutSide, 2), cutWindow), side: cutSide, window: cutWindow };
	}
	if (window !== undefined) {
		// Nothing may move, so the side keeps its exact half: typed lengths are whole nanometres, and so their half is whole.
		return { mount, side: side ?? length(Math.floor((mount - window) / 2)), window };
	}
	const cutSide = side ?? (hasPicture ? lastOnRuler(exact.side, cover, ruler) : onRuler(exact.side, ruler));
	return { mount, side: cutSide, window: minus(mount, cutSide, cutSide) };
}

/**
 * Puts top and bottom on the ruler. A blank top goes down instead of to the nearest graduation where rounding alone would
 * make it exceed the bottom as it will be cut.
 *
 * @param exact the exact borders and window
 * @param typed top and bottom as typed
 */
export function heightOnRuler(
	exact: { top: number; bottom: number; window: number },
	typed: { top: Length | undefined; bottom: Length | undefined },
	{ mount, window, hasPicture }: Standing,
	cover: AxisCover,
	ruler: Length,
): CutHeight {
	/** The bottom that is cut under a given top. */
	const bottomUnder = (top: Length): Length => {
		if (typed.bottom !== undefined) return typed.bottom;
		if (mount !== undefined && window !== undefined) return minus(mount, window, top);
		if (mount !== undefined && hasPicture) return lastOnRuler(mount - exact.window - top, cover, ruler);
		return onRuler(exact.bottom, ruler);
	};
	let top = typed.top;
	if (top === undefined) {
		const left = typed.bottom !== undefined && mount !== undefined ? minus(mount, typed.bottom) : undefined;
		if (left !== undefined && window !== undefined) top = minus(left, window);
		else if (left !== undefined && hasPicture) top = lastOnRuler(left - exact.window, cover, ruler);
		else {
			const nearest = onRuler(exact.top, ruler);
			const isRoundingAlone = exact.top <= exact.bottom + sameWithin;
			top = isRoundingAlone && nearest > bottomUnder(nearest) ? downToRuler(exact.top, ruler) : nearest;
		}
	}
	const bottom = bottomUnder(top);
	if (mount !== undefined) return { mount, top, bottom, window: window ?? minus(mount, top, bottom) };
	const cutWindow = window ?? windowOnRuler(exact.window, hasPicture, cover, ruler);
	return { mount: plus(top, cutWindow, bottom), top, bottom, window: cutWindow };
}

/** The last border of a standing picture: so that the window never covers less, or reveals less, than was asked. */
const lastOnRuler = (exact: number, cover: AxisCover, ruler: Length) =>
	cover.isCovered ? upToRuler(exact, ruler) : downToRuler(exact, ruler);

/** A window in a mount that is cut to suit. */
function windowOnRuler(exact: number, hasPicture: boolean, cover: AxisCover, ruler: Length): Length {
	if (!hasPicture) return onRuler(exact, ruler);
	return cover.isCovered ? downToRuler(exact, ruler) : upToRuler(exact, ruler);
}
