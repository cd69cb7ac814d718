import { inches, mm, plus, sameWithin } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Frame } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import type { RowBoards } from './boards.ts';
import { type Cells, hasMount } from './cells.ts';
import type { NamedFrame } from './namedFrame.ts';
import { type OnPaper, sheetOf } from './paper.ts';
import type { SolvedRow } from './solvedRow.ts';
import { boardThickness } from './stack.ts';

/** The frame of a row. */
export interface RowFrame {
	readonly named: NamedFrame;
	/** The one that is named, else the first of the list that takes what goes in. */
	readonly frame: Frame | undefined;
	/** What goes in: the mount; with none, the paper, or the picture where no paper is typed. Undefined while not known. */
	readonly inside: Size | undefined;
	/** How that lies in the frame; undefined where there is none, or nothing known to go in. */
	readonly seat: Seat | undefined;
}

/** The frame of a row as it is worked out. */
export function findFrame(
	named: NamedFrame,
	{
		cells,
		solved,
		onPaper,
	}: { readonly cells: Cells; readonly solved: SolvedRow; readonly onPaper: OnPaper | undefined },
	settings: Settings,
): RowFrame {
	const inside = insideFrame(cells, solved, onPaper);
	const bySize = () => inside && settings.frames.find((frame) => takes(frame, inside, settings));
	const frame = named.by === undefined ? bySize() : named.listed;
	return { named, frame, inside, seat: frame && inside && seatIn(frame, inside) };
}

function insideFrame(cells: Cells, solved: SolvedRow, onPaper: OnPaper | undefined): Size | undefined {
	const isMounted = hasMount(cells);
	if (!isMounted && onPaper) return onPaper.paper;
	if (!isMounted && cells.paper) return sheetOf(cells.paper);
	const [width, height] = isMounted
		? [solved.mountWidth, solved.mountHeight]
		: [solved.pictureWidth, solved.pictureHeight];
	return width === undefined || height === undefined ? undefined : { width, height };
}

/**
 * Whether a frame with a size takes what goes in, either way round: with no more between rebate and mount than a framer
 * leaves. Common practice: 1–3 mm a side.
 */
export function takes({ size }: Frame, inside: Size, { unit }: Settings): boolean {
	const most = unit === 'in' ? inches(1 / 4) : mm(6);
	const fits = (play: number) => play >= -sameWithin && play <= most + sameWithin;
	return !!size && waysRound(size.rebate).some((way) => Object.values(playIn(way, inside)).every(fits));
}

/** How something lies in a frame: the rebate as it lies round it, and what the rebate has over it on each axis. */
export interface Seat {
	readonly rebate: Size;
	readonly play: { readonly width: number; readonly height: number };
}

/**
 * How something lies in a frame: long side along long side, unless it goes in the other way round only. A moulding is
 * made to it.
 */
function seatIn(frame: Frame, inside: Size): Seat {
	if (!frame.size) {
		const { clearance } = frame;
		const rebate = { width: plus(inside.width, clearance), height: plus(inside.height, clearance) };
		return { rebate, play: { width: clearance, height: clearance } };
	}
	const isAlong = ({ width, height }: Size) => width === height || width > height === inside.width > inside.height;
	const [given, turned] = waysRound(frame.size.rebate).map((rebate) => ({ rebate, play: playIn(rebate, inside) }));
	const isGiven = inside.width === inside.height || isAlong(frame.size.rebate);
	const [first, second] = isGiven ? [given!, turned!] : [turned!, given!];
	return [first, second].find(({ play }) => doesHold(play.width, frame) && doesHold(play.height, frame)) ?? first;
}

/** Whether what goes in goes in, on one axis, and cannot slide so far that a gap shows beside it. */
export const doesHold = (play: number, { lip }: Frame): boolean =>
	play >= -sameWithin && (lip === undefined || play < lip - sameWithin);

const waysRound = ({ width, height }: Size): readonly Size[] => [
	{ width, height },
	{ width: height, height: width },
];

const playIn = (rebate: Size, inside: Size) => ({
	width: rebate.width - inside.width,
	height: rebate.height - inside.height,
});

/** What of a row its frame hides something of. */
export interface Hiding {
	readonly hasMount: boolean;
	readonly read: { readonly cells: Pick<Cells, 'isFloat'> };
	readonly frame: RowFrame;
	readonly boards: RowBoards;
}

/**
 * How much of the border a frame and the bevel hide: the board's thickness, and what the lip covers beyond the play of the
 * mount in the rebate (half of rebate less mount). Undefined where the frame has no lip given or does not take the mount.
 */
export function hiddenByFrame({
	hasMount,
	read,
	frame: { frame, seat },
	boards,
}: Hiding): { readonly width: number; readonly height: number; readonly frame: Frame } | undefined {
	const lip = frame?.lip;
	if (!hasMount || !frame || !seat || lip === undefined) return undefined;
	const { play } = seat;
	if (play.width < -sameWithin || play.height < -sameWithin) return undefined;
	// A float has no bevel.
	const thickness = read.cells.isFloat ? 0 : boardThickness(boards.mount).thickness;
	const hidden = (free: number) => thickness + lip - free / 2;
	return { width: hidden(play.width), height: hidden(play.height), frame };
}
