import type { RowResult } from '../findings/rowResult.ts';
import { isSame } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { type CutTick, isCutTick, type Tick } from '../show/tick.ts';
import type { Cut } from './benchPlan.ts';
import { cutMounts } from './windowCuts.ts';

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
