import { type Length, minus, toMm, zero } from '../../core/length/length.ts';
import type { OnPaper } from '../../core/row/paper.ts';
import type { PaperEdge } from '../../core/settings/paper.ts';
import type { SolvedRow } from '../../core/row/solvedRow.ts';
import type { WorkedRow } from '../../core/row/workedRow.ts';

/** A stretch along an axis of a drawing, in millimetres of the mount from its left or top edge. */
export interface Stretch {
	readonly start: number;
	readonly end: number;
	/** Whether it was typed or worked out; what is not known is drawn at a likely size and said to be missing. */
	readonly isKnown: boolean;
}

/** What is drawn along one axis. */
export interface AxisLayout {
	readonly mount: Stretch;
	readonly window: Stretch;
	/** Undefined where the picture has no size on this axis. */
	readonly picture: Stretch | undefined;
}

/** What is drawn of a row, in millimetres from the top left corner of the mount, as seen from the front. */
export interface MountLayout {
	readonly across: AxisLayout;
	readonly down: AxisLayout;
	/** The sizes and borders that the row leaves open, in the words of the columns. */
	readonly missing: readonly string[];
}

interface Axis {
	readonly mount: number | undefined;
	readonly window: number | undefined;
	readonly picture: number | undefined;
	readonly near: number | undefined;
	readonly far: number | undefined;
	/** How far the outer mount covers the picture at the near edge; negative where it reveals, or an inner one covers. */
	readonly cover: number | undefined;
}

/** A window's usual share of its mount, for drawing what is not known. */
const likelyShare = 0.7;

/** A usual shape of a mount, for a side of which only the other is known. */
const likelyShape = 3 / 4;

/** The side of a mount of which nothing is known: any will do, for the drawing is fitted to its room. */
const anySide = 100;

function layOutAxis({ mount, window, picture, near, far, cover }: Axis, otherMount: number | undefined): AxisLayout {
	const parts = near !== undefined && window !== undefined && far !== undefined ? near + window + far : undefined;
	const likelyMount = otherMount === undefined ? undefined : otherMount * likelyShape;
	const whole = mount ?? parts ?? divided(window ?? picture, likelyShare) ?? likelyMount ?? anySide;
	const left = near !== undefined && far !== undefined ? whole - near - far : undefined;
	const opening = window ?? (left !== undefined && left > 0 ? left : undefined) ?? picture ?? whole * likelyShare;
	const start = near ?? (far !== undefined ? whole - far - opening : (whole - opening) / 2);
	const pictureStart = picture === undefined ? 0 : start - (cover ?? (picture - opening) / 2);
	return {
		mount: { start: 0, end: whole, isKnown: mount !== undefined },
		window: { start, end: start + opening, isKnown: window !== undefined },
		picture: picture === undefined ? undefined : { start: pictureStart, end: pictureStart + picture, isKnown: true },
	};
}

/** A float as it is drawn: the paper stands where a window would, and the picture lies within it. */
export function floatDrawn(solved: SolvedRow, onPaper: OnPaper | undefined): SolvedRow {
	const { width, height } = onPaper?.paper ?? { width: solved.pictureWidth, height: solved.pictureHeight };
	const within = (margin: Length | undefined) => minus(zero, margin ?? zero);
	return {
		...solved,
		windowWidth: width,
		windowHeight: height,
		overlapSide: within(onPaper?.left),
		overlapTop: within(onPaper?.top),
		overlapBottom: within(onPaper?.bottom),
	};
}

const divided = (value: number | undefined, by: number) => (value === undefined ? undefined : value / by);
const inMm = (value: SolvedRow[keyof SolvedRow]) => (value === undefined ? undefined : toMm(value));

/**
 * Where mount, window and picture of a row lie, to scale, seen from the front. In a conflict the typed measures are
 * drawn as typed, so that an overlap or a gap is seen.
 * @param innerMount how far an inner mount shows in the window: what is covered is counted from its window
 * @returns undefined if not one size of the row is known
 */
export function layOutMount(solved: SolvedRow, innerMount?: Length): MountLayout | undefined {
	const covered = (overlap: Length | undefined) =>
		overlap === undefined ? undefined : toMm(overlap) - (innerMount === undefined ? 0 : toMm(innerMount));
	const across: Axis = {
		mount: inMm(solved.mountWidth),
		window: inMm(solved.windowWidth),
		picture: inMm(solved.pictureWidth),
		near: inMm(solved.side),
		far: inMm(solved.side),
		cover: covered(solved.overlapSide),
	};
	const down: Axis = {
		mount: inMm(solved.mountHeight),
		window: inMm(solved.windowHeight),
		picture: inMm(solved.pictureHeight),
		near: inMm(solved.top),
		far: inMm(solved.bottom),
		cover: covered(solved.overlapTop),
	};
	const sizes = [across.mount, across.window, across.picture, down.mount, down.window, down.picture];
	if (sizes.every((size) => size === undefined)) return undefined;
	const missing = [
		across.mount === undefined && 'mount width',
		down.mount === undefined && 'mount height',
		across.window === undefined && 'window width',
		down.window === undefined && 'window height',
		across.near === undefined && 'side',
		down.near === undefined && 'top',
		down.far === undefined && 'bottom',
		across.picture === undefined && 'picture width',
		down.picture === undefined && 'picture height',
	].filter((word) => word !== false);
	const drawnAcross = layOutAxis(across, down.mount);
	return { across: drawnAcross, down: layOutAxis(down, drawnAcross.mount.end), missing };
}

/** How a drawing in millimetres is put into a box in pixels: to scale, in the middle, clear of the dimension lines. */
export interface Placing {
	readonly x: (acrossMm: number) => number;
	readonly y: (downMm: number) => number;
	/** Pixels a millimetre. */
	readonly scale: number;
}

/** In pixels. */
interface Box {
	readonly width: number;
	readonly height: number;
}

interface Room {
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
}

/**
 * @param room pixels kept free for dimension lines on each side
 * @param isMirrored whether the drawing shows the back: left and right change places
 */
export function place(layout: MountLayout, box: Box, room: Room, isMirrored = false): Placing {
	const ends = (axis: AxisLayout) => [axis.mount.end, axis.window.end, axis.picture?.end ?? 0];
	const starts = (axis: AxisLayout) => [axis.mount.start, axis.window.start, axis.picture?.start ?? 0];
	const left = Math.min(...starts(layout.across));
	const top = Math.min(...starts(layout.down));
	const width = Math.max(...ends(layout.across)) - left;
	const height = Math.max(...ends(layout.down)) - top;
	const at = placeBox({ left, top, width, height }, box, room);
	return isMirrored ? { ...at, x: (mm) => at.x(2 * left + width - mm) } : at;
}

/**
 * Puts a rectangle in millimetres into a box in pixels: to scale, in the middle of what the room leaves.
 * @param room pixels kept free on each side
 */
export function placeBox(
	{ left, top, width, height }: { readonly left: number; readonly top: number } & Box,
	box: Box,
	room: Room,
): Placing {
	const freeWidth = Math.max(1, box.width - room.left - room.right);
	const freeHeight = Math.max(1, box.height - room.top - room.bottom);
	const scale = Math.min(freeWidth / width, freeHeight / height);
	const startX = room.left + (freeWidth - width * scale) / 2;
	const startY = room.top + (freeHeight - height * scale) / 2;
	return { x: (mm) => startX + (mm - left) * scale, y: (mm) => startY + (mm - top) * scale, scale };
}

/** What a print's mount is drawn by. */
export interface DrawnMount {
	/** The edge of a float's paper, which is seen on its board; undefined where there is a window, or no mount. */
	readonly floatEdge: PaperEdge | undefined;
	readonly solved: SolvedRow;
	/** How far an inner mount shows inside the window, per side; a float has none. */
	readonly innerMount: Length | undefined;
	/** Undefined if not one size of the row is known. */
	readonly layout: MountLayout | undefined;
}

/** The mount of a print as it is drawn, a float by its paper. */
export function mountOf(worked: Pick<WorkedRow, 'hasMount' | 'read' | 'solved' | 'onPaper'>): DrawnMount {
	const { cells } = worked.read;
	const isFloat = worked.hasMount && cells.isFloat;
	const solved = isFloat ? floatDrawn(worked.solved, worked.onPaper) : worked.solved;
	const innerMount = isFloat ? undefined : cells.innerMount;
	const floatEdge = isFloat ? (cells.paper?.edge ?? 'straight') : undefined;
	return { floatEdge, solved, innerMount, layout: layOutMount(solved, innerMount) };
}
