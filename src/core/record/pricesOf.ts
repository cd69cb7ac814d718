import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { decimalsOf, type PricedRow, recordSettings } from './inCurrency.ts';
import { type CostOfRow, type Price, priceOf } from './priceOf.ts';
import type { RecordSource } from './recordSource.ts';

/**
 * What is asked for each print of a show, by its place, all in one currency: for lists, labels and the catalogue.
 * `priceText` says each in words.
 */
export function pricesOf({ rows, results, settings: own, costOf }: RecordSource): readonly Price[] {
	const moneySettings = recordSettings(results, own);
	return rows.map((row, place) =>
		priceInShow({ row, result: results[place]!, cost: costOf(row), settings: own, moneySettings }),
	);
}

/** A print with the settings of its show, and the same in the currency of its prices. */
export interface PricedPrint {
	readonly row: Row;
	readonly result: PricedRow;
	/** In minor units of the show's own currency; undefined where it is not known. */
	readonly cost: CostOfRow | undefined;
	readonly settings: Settings;
	/** See `recordSettings`; left out where no cell names a currency. */
	readonly moneySettings?: Settings | undefined;
}

/** What is asked for one print, in the currency that the prices of the whole show are in. */
export const priceInShow = (print: PricedPrint): Price =>
	priceOf(print.row, print.result, costInShow(print), print.moneySettings ?? print.settings);

/** What a print costs, where that is of any use to its price: a cost in hundredths is none in a currency without them. */
export const costInShow = ({ cost, settings, moneySettings = settings }: PricedPrint): CostOfRow | undefined =>
	decimalsOf(moneySettings) === decimalsOf(settings) ? cost : undefined;
