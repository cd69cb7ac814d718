import { type Length, length, minus, times, zero } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Settings } from '../settings/settings.ts';
import type { Cells } from './cells.ts';

/** What the window adds to the picture on one axis, and which way it is rounded for that. */
export interface AxisCover {
	/** Window less picture; negative where the mount covers the picture. */
	readonly added: Length;
	/** Whether an overlap was asked (zero too): then the window may come out smaller, never larger, than asked. */
	readonly isCovered: boolean;
	/** Whether window and picture are both typed and say it themselves. */
	readonly isStated: boolean;
}

/** What was asked of the window of a row, per side of its innermost window. */
export interface Cover {
	readonly width: AxisCover;
	readonly height: AxisCover;
	/** The overlap in force; zero where a reveal is. */
	readonly overlap: Length;
	/** The reveal in force; undefined where the mount covers. */
	readonly reveal: Length | undefined;
	/** Extra paper below the picture; zero if none was asked. */
	readonly signingSpace: Length;
	/** Whether the overlap is the show's, not the row's own. */
	readonly isOverlapInherited: boolean;
}

/**
 * What the window adds to the picture: twice the reveal, or less twice the overlap; a signing space is added below, and
 * without a reveal replaces the overlap there. An inner mount adds what it shows, twice.
 */
export function coverOf(cells: Cells, settings: Settings): Cover {
	const signingSpace = cells.signingSpace ?? zero;
	const reveal = revealOf(cells, settings);
	const overlap = reveal === undefined ? (cells.overlap ?? settings.overlap) : zero;
	const shown = 2 * (cells.innerMount ?? 0);
	const sides = reveal === undefined ? -2 * overlap : 2 * reveal;
	const below = reveal === undefined && signingSpace > 0 ? overlap + signingSpace : signingSpace;
	const isAsked = cells.overlap !== undefined || !!cells.reveal || signingSpace > 0;
	const axis = (
		picture: Length | undefined,
		window: Length | undefined,
		added: number,
		isCovered: boolean,
	): AxisCover =>
		!isAsked && picture !== undefined && window !== undefined
			? { added: length(window - picture), isCovered, isStated: true }
			: { added: length(added), isCovered, isStated: false };
	return {
		width: axis(cells.pictureWidth, cells.windowWidth, sides + shown, reveal === undefined),
		height: axis(
			cells.pictureHeight,
			cells.windowHeight,
			sides + below + shown,
			reveal === undefined && signingSpace === 0,
		),
		overlap,
		reveal,
		signingSpace,
		isOverlapInherited: reveal === undefined && cells.overlap === undefined,
	};
}

/**
 * What a float asks: nothing is covered and nothing revealed, and the paper in the window's place may be larger than the
 * picture on it.
 * @param paper and picture, where both are known
 */
export function floatCover(paper: Size | undefined, picture: Size | undefined): Cover {
	const axis = (side: 'width' | 'height'): AxisCover => ({
		added: paper && picture ? minus(paper[side], picture[side]) : zero,
		isCovered: false,
		isStated: true,
	});
	return {
		width: axis('width'),
		height: axis('height'),
		overlap: zero,
		reveal: undefined,
		signingSpace: zero,
		isOverlapInherited: false,
	};
}

/** The reveal in force: the row's own, else the show's unless the row types an overlap or a reveal of zero. */
function revealOf(cells: Cells, settings: Settings): Length | undefined {
	if (cells.reveal !== undefined) return cells.reveal > 0 ? cells.reveal : undefined;
	if (cells.overlap !== undefined) return undefined;
	return settings.reveal !== undefined && settings.reveal > 0 ? settings.reveal : undefined;
}

/** Twice what the inner mount shows: how much smaller its window is than the outer one. */
export const innerWindowIsSmaller = (cells: Cells): Length => times(cells.innerMount ?? zero, 2);
