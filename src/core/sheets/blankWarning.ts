import type { WorkedOutShow } from '../findings/workedOutShow.ts';
import { formatSize, type Scale } from '../length/formatLength.ts';
import { isWholeCut, type PlacedBlank } from '../show/cutSheet.ts';
import type { Row, RowId } from '../show/row.ts';
import type { Stock } from '../stock/stock.ts';
import { groupBy } from '../values/groupBy.ts';
import { isBlankWanted } from './wantedBlanks.ts';

/** A row with blanks cut that a change would leave over. */
export interface LeftOverRow {
	/** The row before the change. */
	readonly row: Row;
	/** Its place in the show, from 0. */
	readonly index: number;
	/** What is cut and what would become of it, in a sentence. */
	readonly sentence: string;
}

/** A blank of a sheet that the knife has begun. */
interface CutBlank {
	readonly blank: PlacedBlank;
	readonly stock: Pick<Stock, 'board' | 'material'>;
	/** Whether every cut of its sheet is made; else the sheet is only begun. */
	readonly isCut: boolean;
}

/** The rows whose blanks are cut and wanted before a change, and not wanted after it, in the order of the show. */
export function blanksLeftOver(before: WorkedOutShow, after: WorkedOutShow): readonly LeftOverRow[] {
	const blanks = cutBlanks(before);
	if (blanks.size === 0) return [];
	const places = new Map(after.show.rows.map(({ id }, place) => [id, place]));
	const isWanted = ({ blank, stock }: CutBlank, { show, results, settings }: WorkedOutShow, place: number) => {
		const [row, result] = [show.rows[place], results[place]];
		return row !== undefined && result !== undefined && isBlankWanted(blank, stock, result, settings);
	};
	return before.show.rows.flatMap((row, index): LeftOverRow[] => {
		const place = places.get(row.id) ?? -1;
		const left = (blanks.get(row.id) ?? []).filter(
			(each) => isWanted(each, before, index) && !isWanted(each, after, place),
		);
		if (left.length === 0) return [];
		return [{ row, index, sentence: sentenceOf(left, before.settings) }];
	});
}

/** The blanks of sheets that are begun and not spoilt, by the rows that they are for. */
function cutBlanks({ show: { cutSheets = [] } }: WorkedOutShow): ReadonlyMap<RowId | undefined, readonly CutBlank[]> {
	const all = cutSheets
		.filter(({ isSpoilt }) => !isSpoilt)
		.flatMap((sheet) =>
			sheet.blanks.map((blank): CutBlank => ({ blank, stock: sheet.stock, isCut: isWholeCut(sheet) })),
		);
	return groupBy(
		all.filter(({ blank }) => blank.rowId !== undefined),
		({ blank }) => blank.rowId,
	);
}

/** "2 blanks of 700 × 550 mm, cut from “Chalk”, would be left over." */
function sentenceOf(left: readonly CutBlank[], scale: Scale): string {
	const words = ({ blank, stock: { board, material }, isCut }: CutBlank) => {
		const whole = blank.turned ? { width: blank.height, height: blank.width } : blank;
		const size = formatSize(whole.width, whole.height, scale);
		const part = blank.part === 'mount' ? '' : ` for the ${blank.part}`;
		const from = `${isCut ? 'cut from' : 'on a started sheet of'} ${board === '' ? (material ?? 'board') : `“${board}”`}`;
		return `${size}${part}, ${from}`;
	};
	const alike = [...groupBy(left, words)].map(([of, own]) =>
		own.length === 1 ? `A blank of ${of}, would be left over.` : `${own.length} blanks of ${of}, would be left over.`,
	);
	return alike.join(' ');
}
