import { isProblem } from '../length/reading.ts';
import { moneyColumns, readMoney } from '../row/readMoney.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { type Currency, noCurrency } from '../values/money.ts';

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
export function recordSettings(rows: readonly Row[], settings: Settings): Settings {
	return settings.currency === undefined ? inCurrency(settings, firstNamed(rows)) : settings;
}

/** The currency that the first price names which names one; undefined where none does. */
export function firstNamed(rows: readonly Row[]): Currency | undefined {
	for (const { typed } of rows)
		for (const column of moneyColumns) {
			const text = typed[column];
			if (text === undefined) continue;
			const read = readMoney(text, undefined);
			if (!isProblem(read) && read.value?.named) return read.value.named;
		}
	return undefined;
}
