import type { RowResult } from '../../core/findings/rowResult.ts';
import { gravestWords } from '../../core/findings/together.ts';
import { frameChangeWords, noFrameWords } from '../../core/frameChoice/frameChangeWords.ts';
import type { FramedPrint } from '../../core/frameChoice/giveFrames.ts';
import { formatSize, type Scale } from '../../core/length/formatLength.ts';
import type { SolvedRow } from '../../core/row/solvedRow.ts';
import type { Row } from '../../core/show/row.ts';
import { nameOfPrint } from '../../core/show/nameOfPrint.ts';
import type { BeforeAfterRow } from './beforeAfter.ts';

/** The prints that a choice of frames is about, before and after; one that is no longer in the show is left out. */
export function frameRows(
	prints: readonly FramedPrint[],
	rows: readonly Row[],
	results: readonly RowResult[],
	scale: Scale,
): readonly BeforeAfterRow[] {
	const places = new Map(rows.map(({ id }, index) => [id, index]));
	return prints.flatMap((print) => {
		const index = places.get(print.id);
		const row = index === undefined ? undefined : rows[index];
		if (index === undefined || row === undefined) return [];
		const { frame, before, after } = print;
		const words =
			frame === undefined
				? noFrameWords(
						print,
						gravestWords(results[index]?.findings.filter(({ level }) => level === 'stop') ?? [], scale),
					)
				: frameChangeWords(print, row, scale);
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
				isSame: isMountSame && frame === now.text && words === '',
				cells: [now, proposed, { text: words, kind: 'words' as const }],
			},
		];
	});
}

const mountWords = ({ mountWidth, mountHeight }: SolvedRow, scale: Scale): string =>
	mountWidth === undefined || mountHeight === undefined ? '?' : formatSize(mountWidth, mountHeight, scale);
