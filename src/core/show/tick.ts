import type { Length } from '../length/length.ts';
import { groupBy } from '../values/groupBy.ts';
import type { RowId } from './row.ts';

/** The edge of the mount that a cut runs along, as seen from the front. */
export type CutSide = 'top' | 'bottom' | 'left' | 'right';

/** A mount in which a window is cut; an undermount has none. */
export type CutPart = 'mount' | 'inner mount';

/** The order in which the cuts of a window are listed. */
export const cutSides: readonly CutSide[] = ['left', 'right', 'top', 'bottom'];

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

/** Ticks by the row that they are of. */
export const ticksByRow = (ticks: readonly Tick[]): ReadonlyMap<RowId, readonly Tick[]> =>
	groupBy(ticks, ({ row }) => row);

/** Ticks by what names them. @param ticks of a show; undefined where it has none */
export const ticksByKey = (ticks: readonly Tick[] = []): ReadonlyMap<string, Tick> =>
	new Map(ticks.map((tick) => [tickKey(tick), tick]));
