/** What amounts are counted in. */
export interface Currency {
	/** Three letters, as banks write it: `EUR`. */
	readonly code: string;
	/** How many decimals its smallest coin has. */
	readonly decimals: number;
}

/** The currencies whose smallest coin is not a hundredth (ISO 4217, list one). */
const otherDecimals: Readonly<Record<string, number>> = {
	...Object.fromEntries(
		[
			'BIF',
			'CLP',
			'DJF',
			'GNF',
			'ISK',
			'JPY',
			'KMF',
			'KRW',
			'PYG',
			'RWF',
			'UGX',
			'VND',
			'VUV',
			'XAF',
			'XOF',
			'XPF',
		].map((code) => [code, 0]),
	),
	...Object.fromEntries(['BHD', 'IQD', 'JOD', 'KWD', 'LYD', 'OMR', 'TND'].map((code) => [code, 3])),
};

/** Signs that stand for one currency, or for the one of several that they are mostly meant as. */
const signs: ReadonlyMap<string, string> = new Map([
	['€', 'EUR'],
	['£', 'GBP'],
	['$', 'USD'],
	['¥', 'JPY'],
	['₹', 'INR'],
	['₩', 'KRW'],
	['zł', 'PLN'],
]);

/** Hundredths of nothing in particular: what amounts are in where the show names no currency. */
export const noCurrency = { decimals: 2 } as const;

/** The currency of three letters or a sign; undefined where the text is neither. */
export function currencyOf(text: string): Currency | undefined {
	const typed = text.trim();
	const code = signs.get(typed.toLowerCase()) ?? (/^[a-z]{3}$/i.test(typed) ? typed.toUpperCase() : undefined);
	return code === undefined ? undefined : { code, decimals: otherDecimals[code] ?? noCurrency.decimals };
}

/** An amount in whole minor units of a currency, as it is shown: `1250` is `12.50`, in yen `1250`. */
export function formatMoney(minorUnits: number, currency: Currency | undefined): string {
	const { decimals } = currency ?? noCurrency;
	// From 10^21 on a number writes itself with an exponent, which has no decimals to part.
	const whole = Math.abs(minorUnits);
	const digits = `${Number.isInteger(whole) ? BigInt(whole) : whole}`.padStart(decimals + 1, '0');
	const sign = minorUnits < 0 ? '-' : '';
	if (decimals === 0) return `${sign}${digits}`;
	return `${sign}${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
}

/** An amount with the currency behind it, where there is one: `12.50 EUR`. */
export const moneyWords = (minorUnits: number, currency: Currency | undefined): string =>
	`${formatMoney(minorUnits, currency)}${currency ? ` ${currency.code}` : ''}`;
