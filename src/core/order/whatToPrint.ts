import type { RowResult } from '../findings/rowResult.ts';
import { type Said, saidTogether } from '../findings/together.ts';
import { layHinges } from '../row/layHinges.ts';
import type { TrimmedPaper } from '../row/trimmedPaper.ts';
import type { Settings } from '../settings/settings.ts';
import { asTyped } from '../show/asTyped.ts';
import { isBlankRow, isUntyped } from '../show/blankRow.ts';
import type { Row, RowId } from '../show/row.ts';
import { countedRows, type LeftOutOfOrder } from './countedRows.ts';
import { type GetLine, lineOf } from './getLine.ts';
import { paperNeed } from './paperNeeds.ts';
import { type PrintedPaper, type PrintedPicture, printList } from './printList.ts';

/** A picture to print, with what there is to know of it and its paper. */
export interface PictureToPrint extends PrintedPicture {
	readonly said: readonly Said[];
	/** How its paper is trimmed before it is hinged; undefined where it is not. */
	readonly trimmed: TrimmedPaper | undefined;
}

/** A paper with what is printed on it and what of it is to be got. */
export interface PaperToPrint extends PrintedPaper {
	readonly pictures: readonly PictureToPrint[];
	readonly line: GetLine;
}

/** A print that is not printed. */
export interface NotPrinted {
	/** Place of the row in the show, from 1. */
	readonly row: number;
	readonly rowId: RowId;
	readonly reason: LeftOutOfOrder['reason'] | 'no-paper' | 'no-copies' | 'untyped';
}

/** What goes to the printer. */
export interface ToPrint {
	readonly papers: readonly PaperToPrint[];
	/** In the order of the rows. */
	readonly leftOut: readonly NotPrinted[];
}

/** What a show has to be printed, by paper, and the prints that are not, each with the reason. */
export function whatToPrint(rows: readonly Row[], results: readonly RowResult[], settings: Settings): ToPrint {
	const { counted, leftOut } = countedRows(rows, results);
	const saidOf = (place: number) =>
		saidTogether(counted.get(place)?.findings.filter(({ code }) => code.startsWith('paper-')) ?? [], settings);
	const papers = printList(counted, (place) => asTyped(rows[place]!, 'paper'), settings).map(
		(printed): PaperToPrint => ({
			...printed,
			pictures: printed.pictures.map((picture) => ({
				...picture,
				said: saidOf(picture.place),
				trimmed: layHinges(counted.get(picture.place)!, settings)?.trimmed,
			})),
			line: lineOf(paperNeed(printed)),
		}),
	);
	const printed = new Set(papers.flatMap(({ pictures }) => pictures.map(({ place }) => place)));
	const others = rows.flatMap((row, place): readonly NotPrinted[] => {
		const of = { row: place + 1, rowId: row.id };
		if (counted.has(place)) return printed.has(place) ? [] : [{ ...of, reason: reasonOf(counted.get(place)!) }];
		if (results[place]?.copies !== 0 || isBlankRow(row)) return [];
		return [{ ...of, reason: isUntyped(row) ? 'untyped' : 'no-copies' }];
	});
	return { papers, leftOut: [...leftOut, ...others].sort((a, b) => a.row - b.row) };
}

/** Why a row with a size is on no paper. */
const reasonOf = ({ read }: RowResult): NotPrinted['reason'] => (read.cells.paper ? 'no-size' : 'no-paper');
