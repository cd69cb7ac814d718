import { isProblem } from '../length/reading.ts';
import { moneyColumns, readMoney } from '../row/readMoney.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { changedRange } from '../values/changedRange.ts';
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
	return settings.currency === undefined ? inCurrency(settings, firstNamed(rows).at?.currency) : settings;
}

/** The currency that the first price names which names one. */
export interface FirstNamed {
	/** The rows that were looked at. */
	readonly rows: readonly Row[];
	/** Where the row of that price stands, and its currency; undefined where no price names any. */
	readonly at: { readonly place: number; readonly currency: Currency } | undefined;
}

/** @param former what was found before: rows that stand there too are not read again */
export function firstNamed(rows: readonly Row[], former: FirstNamed = { rows: [], at: undefined }): FirstNamed {
	const { from, to } = changedRange(former.rows, rows);
	if (former.at && former.at.place < from) return { rows, at: former.at };
	for (let place = from; place < (former.at ? rows.length : to); place++) {
		const currency = currencyNamed(rows[place]!);
		if (currency) return { rows, at: { place, currency } };
	}
	return { rows, at: undefined };
}

/** The currency that a price of a row names; undefined where none does. */
function currencyNamed({ typed }: Row): Currency | undefined {
	for (const column of moneyColumns) {
		const text = typed[column];
		if (text === undefined) continue;
		const read = readMoney(text, undefined);
		if (!isProblem(read) && read.value?.named) return read.value.named;
	}
	return undefined;
}
