import type { Reading } from '../length/reading.ts';
import { type Currency, currencyOf, noCurrency } from '../values/money.ts';
import { isAbsent, numberAndUnit, shown, type SettingContext, wholeSetting } from './settingValue.ts';

/** Reads a price into whole minor units: `12.50`, `12,50 EUR`, `€ 12.50`; a number is so many minor units. */
export type PriceReader = (value: unknown) => Reading<number>;

/** How the prices of a show are read, and the currency that they turn out to be in. */
export interface ShowPrices {
	readonly read: PriceReader;
	/** The show's, else the first that a price named; undefined where none does. */
	readonly currency: () => Currency | undefined;
}

/** The prices of a show: all are in one currency, its own or else the first that is named. */
export function showPrices(typed: unknown, report: SettingContext['report']): ShowPrices {
	const own = readCurrency(typed, report);
	let first: { readonly currency: Currency; readonly by: string } | undefined;
	return {
		currency: () => own ?? first?.currency,
		read: (value) => {
			if (typeof value !== 'string') return wholeSetting(value, 0);
			const read = parsePrice(value, own ?? first?.currency);
			if ('problem' in read) return read;
			const { named, minorUnits } = read.value;
			if (named === undefined) return { value: minorUnits };
			if (own && named.code !== own.code)
				return { problem: `${shown(value)} is in ${named.code}, and the show is in ${own.code}` };
			if (first && named.code !== first.currency.code)
				return { problem: `${shown(value)} is in ${named.code}, and ${first.by} in ${first.currency.code}` };
			first ??= { currency: named, by: shown(value) };
			return { value: minorUnits };
		},
	};
}

function readCurrency(typed: unknown, report: SettingContext['report']): Currency | undefined {
	if (isAbsent(typed)) return undefined;
	const currency = typeof typed === 'string' ? currencyOf(typed) : undefined;
	if (currency === undefined) report('currency', `${shown(typed)} is no currency, such as EUR, GBP or USD`);
	return currency;
}

/** What a price says. */
export interface Price {
	/** The currency that stands with it. */
	readonly named: Currency | undefined;
	/** In minor units of that, else of the one that was meant. */
	readonly minorUnits: number;
}

/** The most digits of a price before its decimals: sums of such stay whole numbers that are exact. */
const mostDigits = 12;

/** Reads a price as typed. @param meant the currency of one that names none */
export function parsePrice(text: string, meant?: Currency): Reading<Price> {
	const problem = `${shown(text)} is not a price, such as 12.50`;
	const front = /^\s*([^\d\s.,+-]+)\s*(?=\d)/.exec(text);
	const read = numberAndUnit(front ? text.slice(front[0].length) : text, problem);
	if ('problem' in read) return read;
	const { number, unit } = read.value;
	const words = [front?.[1] ?? '', unit].filter((word) => word !== '');
	const named = words.length === 1 ? currencyOf(words[0]!) : undefined;
	const [whole = '', coins = ''] = number.split('.');
	const { decimals } = named ?? meant ?? noCurrency;
	if ((words.length > 0 && !named) || coins.length > decimals || whole.length > mostDigits) return { problem };
	return { value: { named, minorUnits: Number(`${whole}${coins.padEnd(decimals, '0')}`) } };
}
