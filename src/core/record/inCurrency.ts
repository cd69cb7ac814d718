import { isProblem } from '../length/reading.ts';
import { moneyColumns } from '../row/readMoney.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { changedRange } from '../values/changedRange.ts';
import { type Currency, noCurrency } from '../values/money.ts';

/** What a price is made from, besides what was typed. */
export type PricedRow = Pick<WorkedRow, 'read'>;

/** How many decimals the amounts of a show have. */
export const decimalsOf = ({ currency }: Pick<Settings, 'currency'>): number => (currency ?? noCurrency).decimals;

/** The settings of a show without a currency in one that a cell names: a step of 1 is 1 of that. */
export function inCurrency(settings: Settings, currency: Currency | undefined): Settings {
	if (currency === undefined || settings.currency !== undefined) return settings;
	const step = settings.priceStep * 10 ** (currency.decimals - noCurrency.decimals);
	return { ...settings, currency, priceStep: Math.max(1, Math.ceil(step)) };
}

/**
 * The settings of a show in the currency of its prices: its own, else the first that a price names. Prices in another
 * one are then no amounts, for sums of both would be none.
 */
export function recordSettings(results: readonly PricedRow[], settings: Settings): Settings {
	return settings.currency === undefined ? inCurrency(settings, firstNamed(results).at?.currency) : settings;
}

/** The currency that the first price names which names one. */
export interface FirstNamed {
	/** Of the rows that were looked at. */
	readonly results: readonly PricedRow[];
	/** Where the row of that price stands, and its currency; undefined where no price names any. */
	readonly at: { readonly place: number; readonly currency: Currency } | undefined;
}

/**
 * @param results of the rows of a show without a currency
 * @param former what was found before: what stands there too is not asked again
 */
export function firstNamed(
	results: readonly PricedRow[],
	former: FirstNamed = { results: [], at: undefined },
): FirstNamed {
	const { from, to } = changedRange(former.results, results);
	if (former.at && former.at.place < from) return { results, at: former.at };
	for (let place = from; place < (former.at ? results.length : to); place++) {
		const currency = currencyNamed(results[place]!);
		if (currency) return { results, at: { place, currency } };
	}
	return { results, at: undefined };
}

/** The currency that a price of a row names; undefined where none does. */
function currencyNamed({ read }: PricedRow): Currency | undefined {
	for (const column of moneyColumns) {
		const money = read.money[column];
		if (!isProblem(money) && money.value?.named) return money.value.named;
	}
	return undefined;
}
