import { formatWithUnit, type Scale } from '../core/length/formatLength.ts';
import type { RowResult } from '../core/findings/rowResult.ts';
import { rowsOfDropOut } from '../core/sheets/leftOvers.ts';
import type { Stock } from '../core/stock/stock.ts';
import type { Row } from '../core/show/row.ts';
import type { Settings } from '../core/settings/settings.ts';
import { nameOfPrint } from '../core/show/nameOfPrint.ts';

/** How many prints are named at most: any of them will do. */
const mostNamed = 3;

/** Where a drop-out comes from and what is done with it first, in words; nothing for any other piece. */
export const dropOutWords = (
	stock: Stock,
	rows: readonly Row[],
	results: readonly RowResult[],
	settings: Settings,
): string =>
	[windowOfDropOut(stock, rows, results, settings), squaringWords(stock, settings)]
		.filter((words) => words !== '')
		.join('; ');

/** How a drop-out is made square, in words; nothing for any other piece, or one begun before they were squared. */
export const squaringWords = ({ kind, trim }: Stock, scale: Scale): string =>
	kind === 'drop-out' && trim > 0
		? `bevelled, so lay it face down and square it first: ${formatWithUnit(trim, scale)} off each of its four sides`
		: '';

/** Out of whose window a drop-out falls, in words; nothing for any other piece. */
export function windowOfDropOut(
	stock: Stock,
	rows: readonly Row[],
	results: readonly RowResult[],
	settings: Settings,
): string {
	if (stock.kind !== 'drop-out') return '';
	const places = rowsOfDropOut(stock, results, settings);
	if (places.length === 0) return '';
	const names = places.slice(0, mostNamed).map((place) => nameOfPrint(rows[place]!, place));
	const others = places.length - names.length;
	const whose = others > 0 ? [...names, others === 1 ? 'one more' : `${others} more`] : names;
	const last = whose.length > 1 ? ` or ${whose.at(-1)}` : '';
	return `from the window of ${whose.length > 1 ? whose.slice(0, -1).join(', ') : whose[0]}${last}`;
}
