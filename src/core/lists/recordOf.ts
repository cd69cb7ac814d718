import { recordSettings } from '../record/inCurrency.ts';
import { pricesOf } from '../record/pricesOf.ts';
import { priceText } from '../record/priceWords.ts';
import type { RecordSource } from '../record/recordSource.ts';
import { amountIn, moneyIn } from '../row/readMoney.ts';
import { isSoldStage } from '../row/rowStage.ts';
import type { Settings } from '../settings/settings.ts';
import type { CatalogueSource } from './catalogue.ts';
import type { HandOverSource } from './handOver.ts';

/**
 * What the lists ask of a show's record: prices, values, and what is sold. All amounts are in one currency, which the
 * settings have that come with it.
 */
export function recordOf(
	source: RecordSource,
): Pick<CatalogueSource, 'priceOf' | 'isSold'> &
	Pick<HandOverSource, 'valueOf' | 'saleOf'> & { readonly settings: Settings } {
	const { rows, results } = source;
	const stageOf = (place: number) => results[place]!.words.stage;
	const isSold = (place: number) => isSoldStage(stageOf(place));
	const settings = recordSettings(results, source.settings);
	const prices = pricesOf(source);
	return {
		settings,
		priceOf: (place) => priceText(prices[place]!),
		isSold,
		valueOf: (place) => amountIn(moneyIn(rows[place]!, results[place]!, 'value', settings.currency)),
		saleOf: (place) => ({ isSold: isSold(place), isCollected: stageOf(place) === 'collected' }),
	};
}
