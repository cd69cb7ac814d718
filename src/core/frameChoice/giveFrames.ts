import { judgeRow } from '../findings/judgeRow.ts';
import type { RowResult } from '../findings/rowResult.ts';
import { type Length, sameWithin } from '../length/length.ts';
import type { SolvedRow } from '../row/solvedRow.ts';
import { type Frame, mountOfFrame } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import type { CellTexts, Row, RowId } from '../show/row.ts';
import { withCells } from '../show/withCells.ts';
import { type Applicant, assignFrames } from './assignFrames.ts';

/** What giving frames out does to one row. */
export interface FramedPrint {
	readonly id: RowId;
	/** The frame that it is given; undefined where there is none for it. */
	readonly frame: string | undefined;
	readonly before: SolvedRow;
	readonly after: SolvedRow;
	/** What applying it types. */
	readonly change: CellTexts;
	/** How far the picture's long side is from what was wanted; undefined where it is given none. */
	readonly difference: Length | undefined;
	/** Whether any frame suits it; where one does and it is given none, there are too few of it. */
	readonly isSuited: boolean;
}

/** Frames for the prints of a show that name none. */
export interface FrameChoice {
	/** The rows that name no frame, in the order of the show; rows that name one keep it. */
	readonly rows: readonly FramedPrint[];
	/** Sum of the differences. */
	readonly difference: number;
	/** Whether no other choice is better. */
	readonly proven: boolean;
}

/**
 * Chooses a frame with a size for every print that names none: for as many prints as can be, then with the least sum of
 * the differences between the picture's long side and what it is now (none where the picture is typed), then of the least
 * area. All copies of a print have one kind; no border comes out under the least border; no frame is used more often than
 * it is there, those that other rows name among them.
 * @param onTried called after each print that has been tried in every frame
 */
export function giveFrames(
	rows: readonly Row[],
	settings: Settings,
	onTried?: (done: number, of: number) => void,
): FrameChoice {
	const frames = settings.frames.filter((frame) => frame.size !== undefined);
	const results = rows.map((row) => judgeRow(row, settings));
	const free = rows.flatMap((row, place) => {
		const result = results[place]!;
		return namesNoFrame(result) ? [{ row, result }] : [];
	});
	const open = free.map(({ row, result }, at) => {
		const options = frames.map((frame) => tryFrame(row, result, frame, settings));
		onTried?.(at + 1, free.length);
		return { row, result, options };
	});
	const counts = frames.map((frame) => (frame.count ?? Infinity) - usedBy(results, frame));
	const { frames: chosen, proven } = assignFrames(
		open.map(({ result, options }): Applicant => ({
			copies: result.copies,
			options: options.map((own) => own?.option),
		})),
		counts.map((count) => Math.max(0, count)),
	);
	const given = open.map(({ row, result, options }, at): FramedPrint => {
		const place = chosen[at];
		const own = place === undefined ? undefined : options[place];
		return {
			id: row.id,
			frame: own && frames[place!]!.name,
			before: result.solved,
			after: own?.after ?? result.solved,
			change: own?.change ?? {},
			difference: own && (Number(own.option.difference) as Length),
			isSuited: options.some((each) => each !== undefined),
		};
	});
	return { rows: given, difference: given.reduce((sum, { difference = 0 }) => sum + difference, 0), proven };
}

/** Whether a row may be given a frame: it is a print with a mount, and its own cell names no frame, nor that there is none. */
export const namesNoFrame = ({ copies, hasMount, frame: { named } }: RowResult): boolean =>
	copies > 0 && hasMount && named.by !== 'row';

/** How many of a frame the rows need that name it themselves. */
const usedBy = (results: readonly RowResult[], frame: Frame): number =>
	results.reduce(
		(sum, { frame: own, copies }) => (own.named.by === 'row' && own.frame === frame ? sum + copies : sum),
		0,
	);

/** What a row would be in a frame; undefined where the frame is none for it. */
function tryFrame(row: Row, result: RowResult, frame: Frame, settings: Settings) {
	const change: CellTexts = { frame: frame.name, mount: mountOfFrame };
	const tried = judgeRow(withCells(row, change, settings), settings);
	const after = tried.solved;
	// Another frame of the same name comes before it in the list.
	if (tried.frame.frame !== frame) return undefined;
	const { side, top, bottom } = after;
	const borders = [side, top, bottom].map((border) => border ?? -Infinity);
	if (tried.isStopped || Math.min(...borders) < settings.leastBorder - sameWithin) return undefined;
	const { width, height } = frame.size!.takes;
	const difference = isPictureTyped(result) ? 0 : differenceOf(result.solved, after);
	return { after, change, option: { difference: BigInt(difference), area: BigInt(width) * BigInt(height) } };
}

const isPictureTyped = ({ read: { cells } }: RowResult): boolean =>
	cells.pictureWidth !== undefined || cells.pictureHeight !== undefined;

/** How far the picture's long side is from what it was; a picture that was not known wanted nothing. */
function differenceOf(before: SolvedRow, after: SolvedRow): number {
	const [wanted, is] = [longSide(before), longSide(after)];
	return wanted === undefined || is === undefined ? 0 : Math.abs(is - wanted);
}

const longSide = ({ pictureWidth, pictureHeight }: SolvedRow): number | undefined =>
	pictureWidth === undefined || pictureHeight === undefined ? undefined : Math.max(pictureWidth, pictureHeight);
