import type { RowResult } from '../../core/findings/rowResult.ts';
import { gravestWords } from '../../core/findings/together.ts';
import { frameChangeWords, isPictureChanged, noFrameWords } from '../../core/frameChoice/frameChangeWords.ts';
import type { FramedPrint } from '../../core/frameChoice/giveFrames.ts';
import { formatSize, type Scale } from '../../core/length/formatLength.ts';
import { length } from '../../core/length/length.ts';
import type { SolvedRow } from '../../core/row/solvedRow.ts';
import type { Row } from '../../core/show/row.ts';
import { nameOfPrint } from '../../core/show/nameOfPrint.ts';
import type { BeforeAfterRow } from './beforeAfter.ts';

/** A print that a choice of frames is about. */
export interface FrameRow extends BeforeAfterRow {
	/** Its place in the show, from 0. */
	readonly place: number;
	/** The frame and the size that it has and keeps, long side first; undefined where either changes. */
	readonly kept: string | undefined;
	/** Why it is given no frame; undefined where it is. */
	readonly why: string | undefined;
	/** Whether it can't be cut as it is. */
	readonly isStopped: boolean;
}

/** The prints that a choice of frames is about, before and after; one that is no longer in the show is left out. */
export function frameRows(
	prints: readonly FramedPrint[],
	rows: readonly Row[],
	results: readonly RowResult[],
	scale: Scale,
): readonly FrameRow[] {
	const places = new Map(rows.map(({ id }, index) => [id, index]));
	return prints.flatMap((print) => {
		const index = places.get(print.id);
		const row = index === undefined ? undefined : rows[index];
		if (index === undefined || row === undefined) return [];
		const { frame, before, after } = print;
		const stop = gravestWords(results[index]?.findings.filter(({ level }) => level === 'stop') ?? [], scale);
		const why = frame === undefined ? noFrameWords(print, stop) : undefined;
		const now = { text: results[index]?.frame.frame?.name ?? 'No frame', below: mountWords(before, scale) };
		const mount = mountWords(after, scale);
		const isMountSame = now.below === mount;
		const proposed =
			frame === undefined ? { text: 'No change' } : { text: frame, below: isMountSame ? 'Mount stays' : mount };
		return [
			{
				id: print.id,
				name: nameOfPrint(row, index),
				isChanging: frame !== undefined,
				place: index,
				kept:
					isMountSame && frame === now.text && !isPictureChanged(print, scale)
						? `${frame}, ${longFirst(after, scale)}`
						: undefined,
				why,
				isStopped: stop !== undefined,
				cells: [now, proposed, { text: why ?? frameChangeWords(print, row, scale), kind: 'words' as const }],
			},
		];
	});
}

/** A size that is the same for prints of both ways round. */
const longFirst = ({ mountWidth: width, mountHeight: height }: SolvedRow, scale: Scale): string =>
	width === undefined || height === undefined
		? '?'
		: formatSize(length(Math.max(width, height)), length(Math.min(width, height)), scale);

const mountWords = ({ mountWidth, mountHeight }: SolvedRow, scale: Scale): string =>
	mountWidth === undefined || mountHeight === undefined ? '?' : formatSize(mountWidth, mountHeight, scale);
