import { inches, type Length, mm, plus, sameWithin } from '../length/length.ts';
import type { Row } from '../show/row.ts';
import type { Frame, Settings, Size } from '../show/settings.ts';
import type { Cells } from './cells.ts';
import { paperAsItLies } from './paperPlace.ts';
import type { SolvedRow } from './solvedRow.ts';
import { boardThickness } from './stack.ts';

/** What goes into the frame: the mount; with none, the paper, or the picture where no paper is typed. */
export function insideFrame({ mount, paper }: Pick<Cells, 'mount' | 'paper'>, solved: SolvedRow): Size | undefined {
	const isBare = mount.kind === 'none';
	if (isBare && paper) return paperAsItLies(paper, solved);
	const [width, height] = isBare
		? [solved.pictureWidth, solved.pictureHeight]
		: [solved.mountWidth, solved.mountHeight];
	return width === undefined || height === undefined ? undefined : { width, height };
}

/** The word that says that a row has no frame. */
export const unframed = 'none';

const bare = (name: string) => name.trim().toLowerCase();

/** The name of a row's frame: as typed, else the show's; undefined where none is named. */
function nameOfFrame({ typed }: Row, { frame }: Settings): string | undefined {
	const own = typed.frame?.trim() ?? '';
	return own === '' ? frame : own;
}

/** Whether it is said of a row that it has no frame. */
export const isUnframed = (row: Row, settings: Settings): boolean =>
	bare(nameOfFrame(row, settings) ?? '') === unframed;

/** The frame that a row names and the show's list has not; undefined where it names none, or one of the list. */
export function missingFrame(row: Row, settings: Settings): string | undefined {
	const wanted = nameOfFrame(row, settings);
	if (wanted === undefined || isUnframed(row, settings)) return undefined;
	return settings.frames.some(({ name }) => bare(name) === bare(wanted)) ? undefined : wanted;
}

/** A row's frame: the one that it names, else the show's, else the first of the list that takes what goes in. */
export function frameOf(row: Row, inside: Size | undefined, settings: Settings): Frame | undefined {
	const wanted = nameOfFrame(row, settings);
	if (wanted !== undefined) return settings.frames.find(({ name }) => bare(name) === bare(wanted));
	return inside && settings.frames.find((frame) => takes(frame, inside, settings));
}

/**
 * Whether a frame with a size takes what goes in, either way round: with no more between rebate and mount than a framer
 * leaves. Common practice: 1–3 mm a side.
 */
export function takes({ size }: Frame, inside: Size, { unit }: Settings): boolean {
	const most = unit === 'in' ? inches(1 / 4) : mm(6);
	const isTaken = (play: number) => play >= -sameWithin && play <= most + sameWithin;
	return !!size && waysRound(size.rebate).some((way) => Object.values(playIn(way, inside)).every(isTaken));
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
export function seatIn(frame: Frame, inside: Size): Seat {
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

/**
 * How much of the border a frame and the bevel hide: the board's thickness, and what the lip covers beyond the play of the
 * mount in the rebate (half of rebate less mount). Undefined where the frame has no lip given or does not take the mount.
 */
export function hiddenByFrame(
	row: Row,
	{ mountWidth, mountHeight }: SolvedRow,
	settings: Settings,
): { readonly width: number; readonly height: number; readonly frame: Frame } | undefined {
	if (mountWidth === undefined || mountHeight === undefined) return undefined;
	const inside: Size = { width: mountWidth, height: mountHeight };
	const frame = frameOf(row, inside, settings);
	if (frame?.lip === undefined) return undefined;
	const { play } = seatIn(frame, inside);
	if (play.width < -sameWithin || play.height < -sameWithin) return undefined;
	const { thickness } = boardThickness(row, settings);
	const hidden = (free: number, lip: Length) => thickness + lip - free / 2;
	return { width: hidden(play.width, frame.lip), height: hidden(play.height, frame.lip), frame };
}
