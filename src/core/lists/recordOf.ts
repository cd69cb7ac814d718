import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { moneyWords } from '../values/money.ts';
import type { CatalogueSource } from './catalogue.ts';
import type { HandOverSource } from './handOver.ts';

/** What the lists ask of a show's record: prices, values, and what is sold. */
export function recordOf(
	rows: readonly Row[],
	results: readonly Pick<WorkedRow, 'read'>[],
	{ currency }: Pick<Settings, 'currency'>,
): Pick<CatalogueSource, 'priceOf' | 'isSold'> & Pick<HandOverSource, 'valueOf' | 'saleOf'> {
	return {
		priceOf(place) {
			const { price } = results[place]!.read.money;
			return price === undefined ? (rows[place]!.typed.price?.trim() ?? '') : moneyWords(price, currency);
		},
		isSold: () => false,
		valueOf: (place) => results[place]!.read.money.value,
		saleOf: () => ({ isSold: false, isCollected: false }),
	};
}
