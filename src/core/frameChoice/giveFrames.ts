import { judgeRow } from '../findings/judgeRow.ts';
import type { RowResult } from '../findings/rowResult.ts';
import { type Length, sameWithin } from '../length/length.ts';
import type { SolvedRow } from '../row/solvedRow.ts';
import { type Frame, mountOfFrame } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import type { CellTexts, Row, RowId } from '../show/row.ts';
import { withCells } from '../show/withCells.ts';
import { type Applicant, assignFrames, type Assignment } from './assignFrames.ts';

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
	/** Whether no other choice frames more prints. */
	readonly isMost: boolean;
	/** Whether no other choice is better. */
	readonly proven: boolean;
}

/** The prints that name no frame, each tried in every frame. */
export interface TriedFrames {
	readonly frames: readonly Frame[];
	readonly prints: readonly TriedPrint[];
	/** As they apply for frames. */
	readonly applicants: readonly Applicant[];
	/** How many there are of each frame, without those that other rows name. */
	readonly counts: readonly number[];
}

interface TriedPrint {
	readonly row: Row;
	readonly result: RowResult;
	readonly options: readonly ReturnType<typeof tryFrame>[];
}

/**
 * Chooses a frame with a size for every print that names none: for as many prints as can be, then with the least sum of
 * the differences between the picture's long side and what it is now (none where the picture is typed), then of the least
 * area. All copies of a print have one kind; no border comes out under the least border; no frame is used more often than
 * it is there, those that other rows name among them. A print with a typed cell in doubt is given none until that is put
 * right.
 */
export function giveFrames(rows: readonly Row[], settings: Settings): FrameChoice {
	const tried = tryFrames(rows, settings);
	return choiceOf(tried, assignFrames(tried.applicants, tried.counts));
}

/**
 * Tries every print that names no frame in each frame with a size.
 * @param onTried called after each print
 */
export function tryFrames(
	rows: readonly Row[],
	settings: Settings,
	onTried?: (done: number, of: number) => void,
): TriedFrames {
	const frames = settings.frames.filter((frame) => frame.size !== undefined);
	const results = rows.map((row) => judgeRow(row, settings));
	const open = rows.flatMap((row, place) => {
		const result = results[place]!;
		return namesNoFrame(result) ? [{ row, result }] : [];
	});
	const prints = open.map(({ row, result }, at) => {
		const isHeld = isInDoubt(result);
		const options = frames.map((frame) => (isHeld ? undefined : tryFrame(row, result, frame, settings)));
		onTried?.(at + 1, open.length);
		return { row, result, options };
	});
	return {
		frames,
		prints,
		applicants: prints.map(({ result, options }): Applicant => ({
			copies: result.copies,
			options: options.map((own) => own?.option),
		})),
		counts: frames.map((frame) => Math.max(0, (frame.count ?? Infinity) - usedBy(results, frame))),
	};
}

/** What giving the frames out so does to the prints. */
export function choiceOf({ frames, prints }: TriedFrames, assignment: Assignment): FrameChoice {
	const rows = prints.map(({ row, result, options }, at): FramedPrint => {
		const place = assignment.frames[at];
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
	const { isMost, proven } = assignment;
	return { rows, difference: rows.reduce((sum, { difference = 0 }) => sum + difference, 0), isMost, proven };
}

/** Whether a row may be given a frame: it is a print with a mount, and its own cell names no frame, nor that there is none. */
export const namesNoFrame = ({ copies, hasMount, frame: { named } }: RowResult): boolean =>
	copies > 0 && hasMount && named.by !== 'row';

/**
 * Whether a cell of a row cannot be read, or looks like another unit. A frame types its mount over, and would hide that. All
 * other stops stay if the frame does not mend them.
 */
const isInDoubt = ({ findings }: RowResult): boolean =>
	findings.some(({ code, level }) => level === 'stop' && (code === 'not-read' || code === 'unit-slip'));

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
