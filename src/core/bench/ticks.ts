import { isSame, type Length } from '../length/length.ts';
import type { RowResult } from '../findings/rowResult.ts';
import type { Row, RowId } from '../show/row.ts';
import type { Settings } from '../show/settings.ts';
import type { Cut, CutPart, CutSide } from './benchPlan.ts';
import { cutMounts } from './windowCuts.ts';

/** One mount of a show: which row's, which copy, which part. */
export interface MountId {
	readonly row: RowId;
	/** Which of the row's copies, from 1. */
	readonly copy: number;
	readonly part: CutPart;
}

/** A cut that was made. What it was cut at is kept, so that a later change of the row does not pass for it. */
export interface CutTick extends MountId {
	readonly side: CutSide;
	/** The border that was cut: mount edge to sight edge. */
	readonly border: Length;
	/** From edge to edge of what it was cut in: the blank, or the mount that an inner one is taped behind. */
	readonly width: Length;
	readonly height: Length;
	/** The board that was asked for in the row, as typed; absent where none was. */
	readonly board?: string;
	/** The thickness of the board; absent where it was not known. */
	readonly thickness?: Length;
}

/** Boards that were spoilt in making a mount: its cuts are to be made again, in another blank. */
export interface SpoiltTick extends MountId {
	readonly side: 'spoilt';
	/** How many boards. */
	readonly times: number;
}

/** What is ticked off at the bench. */
export type Tick = CutTick | SpoiltTick;

/** Names a tick within its show. */
export const tickKey = ({ row, copy, part, side }: MountId & Pick<Tick, 'side'>): string =>
	JSON.stringify([row, copy, part, side]);

/** Whether a tick is of a cut. */
export const isCutTick = (tick: Tick): tick is CutTick => tick.side !== 'spoilt';

/** The tick that a cut made now would get; undefined where the row gives no such cut. */
export function tickFor(
	row: Row,
	result: RowResult,
	settings: Settings,
	{ copy, part, side }: Cut,
): CutTick | undefined {
	const mount = cutMounts(result, settings).find((each) => each.part === part);
	if (mount === undefined || copy > result.copies) return undefined;
	const { borders, width, height } = mount;
	const { asked: board, board: { thickness } = {} } = result.boards[part];
	return {
		...{ row: row.id, copy, part, side, border: borders[side], width, height },
		...(board && { board }),
		...(thickness !== undefined && { thickness }),
	};
}

/** Whether a cut was made in board of another name or thickness than is asked now. What is not known is not held against it. */
export function isOtherBoard(made: CutTick, now: CutTick): boolean {
	const isOtherName = !!made.board && !!now.board && made.board.toLowerCase() !== now.board.toLowerCase();
	const isOtherThickness =
		made.thickness !== undefined && now.thickness !== undefined && !isSame(made.thickness, now.thickness);
	return isOtherName || isOtherThickness;
}

/** Whether a cut that was made is as it is asked now: in the same place, in a blank of the same size and board; to 1 µm. */
export const isAsAsked = (made: CutTick, now: CutTick): boolean =>
	isSame(now.border, made.border) &&
	isSame(now.width, made.width) &&
	isSame(now.height, made.height) &&
	!isOtherBoard(made, now);

/** What of a row's ticks holds for the row as it is worked out. */
export interface CutsMade {
	/** Cuts that are as the row asks. */
	readonly standing: readonly CutTick[];
	/** Cuts made in another place, in a blank of another size or board, or in a mount that the row no longer has. */
	readonly wrong: readonly CutTick[];
}

/**
 * Which of a row's cuts stand, to 1 µm.
 * @param row undefined where the row is removed: none stands
 * @param ticks of this row; those of spoilt boards are passed over
 */
export function cutsThatStand(
	row: Row | undefined,
	result: RowResult | undefined,
	settings: Settings,
	ticks: readonly Tick[],
): CutsMade {
	const standing: CutTick[] = [];
	const wrong: CutTick[] = [];
	for (const tick of ticks.filter(isCutTick)) {
		const { copy, part, side } = tick;
		const now = row && result && tickFor(row, result, settings, { row: 0, copy, part, side });
		(now && isAsAsked(tick, now) ? standing : wrong).push(tick);
	}
	return { standing, wrong };
}

/** Ticks by the row that they are of. */
export function ticksByRow(ticks: readonly Tick[]): ReadonlyMap<RowId, readonly Tick[]> {
	const byRow = new Map<RowId, Tick[]>();
	for (const tick of ticks) {
		const own = byRow.get(tick.row);
		if (own) own.push(tick);
		else byRow.set(tick.row, [tick]);
	}
	return byRow;
}
