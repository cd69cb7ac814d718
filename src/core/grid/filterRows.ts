import type { CutState } from '../bench/cutState.ts';
import type { RowResult } from '../findings/rowResult.ts';
import { formatLength } from '../length/formatLength.ts';
import type { CostOfRow } from '../record/priceOf.ts';
import { priceInShow } from '../record/pricesOf.ts';
import { workedOutText } from '../record/priceWords.ts';
import { namesInFrame } from '../row/namesInFrame.ts';
import type { Settings } from '../settings/settings.ts';
import { isBlankRow } from '../show/blankRow.ts';
import { formatMoney } from '../values/money.ts';
import type { Row } from '../show/row.ts';
import { type Filter, isNoFilter } from './filter.ts';
import { framingColumns, framingText } from './framingColumns.ts';

/** A row with all that may be asked of it. */
export interface FilterSource {
	readonly row: Row;
	readonly result: RowResult;
	readonly settings: Settings;
	readonly cut: CutState;
	/** What it costs; undefined where that is not known. */
	readonly cost?: CostOfRow | undefined;
	/** In the currency of the prices; left out where that is the show's. */
	readonly moneySettings?: Settings | undefined;
}

/** Whether a row answers to all that a filter asks. A blank row is no print: it answers to nothing. */
export function answers(filter: Filter, { row, result, settings, moneySettings, cut, cost }: FilterSource): boolean {
	if (isBlankRow(row)) return isNoFilter(filter);
	const { words, check, mount, board, frame, maker } = filter;
	if (filter.cut !== '' && filter.cut !== cut) return false;
	const inFrame = namesInFrame(result);
	const is = (own: string | undefined, asked: string) => asked === '' || plain(own) === plain(asked);
	if (!is(result.boards.mount.asked, board) || !is(inFrame.frame, frame) || !is(row.typed.maker, maker)) return false;
	if (check !== '' && !isTold(check, result)) return false;
	if (mount !== '' && mountSizeOf(result, settings) !== mount) return false;
	if (words.trim() === '') return true;
	const costText = cost === undefined ? '' : formatMoney(cost.minorUnits, settings.currency);
	const texts = [
		...[
			...Object.values(row.typed),
			costText,
			workedOutText(priceInShow({ row, result, cost, settings, moneySettings })),
		],
		...Object.values(inFrame),
		...framingColumns.map((column) => framingText(column, result, settings)),
	];
	return hasWords(texts, words);
}

function isTold(check: string, { findings }: RowResult): boolean {
	if (check === 'none') return findings.length === 0;
	return findings[0]?.level === check || findings.some(({ code }) => code === check);
}

function hasWords(texts: readonly (string | undefined)[], words: string): boolean {
	const text = plain(texts.join('\n'));
	return plain(words)
		.split(/\s+/)
		.every((word) => text.includes(word));
}

/** A text without capitals and accents. */
const plain = (text = ''): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim();

/** The size of a row's mount in the show's unit, the longer side first; blank where it has none. */
export function mountSizeOf({ solved: { mountWidth, mountHeight } }: RowResult, settings: Settings): string {
	if (mountWidth === undefined || mountHeight === undefined) return '';
	const sides = mountWidth < mountHeight ? [mountHeight, mountWidth] : [mountWidth, mountHeight];
	return `${sides.map((side) => formatLength(side, settings)).join(' × ')} ${settings.unit}`;
}
