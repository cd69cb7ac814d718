import { currencyNamed, currencyTyped } from '../row/readMoney.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
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
	if (settings.currency !== undefined) return settings;
	for (const { read } of results) {
		const currency = currencyNamed((column) => read.money[column]);
		if (currency) return inCurrency(settings, currency);
	}
	return settings;
}

/** The currency that the first price names which names one. */
export interface FirstNamed {
	/** The rows that were looked at. */
	readonly rows: readonly Row[];
	/** Where the row of that price stands, and its currency; undefined where no price names any. */
	readonly at: { readonly place: number; readonly currency: Currency } | undefined;
}

/**
 * Asks the texts of prices and nothing that is worked out: in a long show that comes later.
 * @param rows of a show without a currency
 * @param former what was found before: what stands there too is not asked again
 */
export function firstNamed(rows: readonly Row[], former: FirstNamed = { rows: [], at: undefined }): FirstNamed {
	const { from, to } = changedRange(former.rows, rows);
	if (former.at && former.at.place < from) return { rows, at: former.at };
	for (let place = from; place < (former.at ? rows.length : to); place++) {
		const currency = currencyTyped(rows[place]!);
		if (currency) return { rows, at: { place, currency } };
	}
	return { rows, at: undefined };
}
