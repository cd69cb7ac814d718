import type { Row } from '../show/row.ts';
import { decimalsOf, recordSettings } from './inCurrency.ts';
import { type Price, priceOf } from './priceOf.ts';
import type { RecordSource } from './recordSource.ts';

/**
 * What is asked for each print of a show, by its place, all in one currency: for lists, labels and the catalogue.
 * `priceText` says each in words.
 */
export function pricesOf({ rows, results, settings: own, costOf }: RecordSource): readonly Price[] {
	const settings = recordSettings(rows, own);
	const isCostKnown = decimalsOf(settings) === decimalsOf(own);
	const costKnown = (row: Row) => (isCostKnown ? costOf(row) : undefined);
	return rows.map((row, place) => priceOf(row, results[place]!, costKnown(row), settings));
}
