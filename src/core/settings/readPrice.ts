import type { Reading } from '../length/reading.ts';
import { type Currency, currencyOf, noCurrency } from '../values/money.ts';
import { isAbsent, type SettingContext, wholeSetting } from './settingValue.ts';
import { shown } from '../values/shownText.ts';

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
/** No price is typed longer, in signs. */
const longestPrice = 60;

/**
 * Reads a price as typed: `12.50`, `€ 1 250,50`, `1,250.00`, `1'250.- CHF`. Where a mark before three figures may part
 * thousands or be that of decimals, it is not guessed, and both readings are offered.
 * @param meant the currency of one that names none
 */
export function parsePrice(text: string, meant?: Currency): Reading<Price> {
	const problem = `${shown(text)} is not a price, such as 12.50`;
	const typed = text.length > longestPrice ? '' : text.replace(/\s+/g, ' ').replaceAll('’', "'").trim();
	const [, front = '', amount, back = ''] = /^([^\d\s.,+-]*) ?(\d.*?)(?: ?([^\d\s.,'–—-]+))?$/u.exec(typed) ?? [];
	const words = [front, back].filter((word) => word !== '');
	const named = words.length === 1 ? currencyOf(words[0]!) : undefined;
	if (amount === undefined || (words.length > 0 && !named)) return { problem };
	const { decimals } = named ?? meant ?? noCurrency;
	const meanings = meaningsOf(amount, decimals);
	if (meanings.length > 1) {
		const readings = meanings
			.map((each) => inCoins(each, decimals))
			.filter((each) => minorUnitsOf(each, decimals) !== undefined);
		return {
			problem: `“${amount}” can be read in more than one way: ${meanings.map(inDigits).join(' or ')}?`,
			readings: readings.map((each) => typed.replace(amount, inDigits(each))),
		};
	}
	const minorUnits = meanings[0] && minorUnitsOf(meanings[0], decimals);
	return minorUnits === undefined ? { problem } : { value: { named, minorUnits } };
}

/** The figures of an amount, before and behind its decimal mark. */
interface Figures {
	readonly whole: string;
	readonly coins: string;
}

const inDigits = ({ whole, coins }: Figures): string => (coins === '' ? whole : `${whole}.${coins}`);

/** Without the zeros behind that no coin has: 1.250 is 1.25. */
const inCoins = ({ whole, coins }: Figures, decimals: number): Figures => ({
	whole,
	coins: /^0*$/.test(coins.slice(decimals)) ? coins.slice(0, decimals) : coins,
});

/** What an amount may mean, thousands first; none where it is no amount. */
function meaningsOf(amount: string, decimals: number): readonly Figures[] {
	// `450,-` and `450.–` are whole.
	const plain = amount.replace(/[.,][-–—]{1,2}$/, '');
	const [, digits, mark, three] = /^([1-9]\d{0,2})([.,])(\d{3})$/.exec(plain) ?? [];
	if (digits !== undefined) {
		const [joined, parted] = [
			{ whole: `${digits}${three}`, coins: '' },
			{ whole: digits, coins: three! },
		];
		// What has no decimals can only part thousands; a point before three is how an amount of three is written here.
		return decimals === 0 ? [joined] : decimals === 3 && mark === '.' ? [parted] : [joined, parted];
	}
	const grouped = groupedWays.map((way) => way.exec(plain)).find((found) => found !== null);
	const [, whole, coins = ''] = grouped ?? /^(\d+)(?:[.,](\d+))?$/.exec(plain) ?? [];
	return whole === undefined ? [] : [{ whole: whole.replace(/\D/g, ''), coins }];
}

/** Thousands parted by a space or an apostrophe; by commas before a point, or the other way round; by several of one mark. */
const groupedWays: readonly RegExp[] = [
	/^(\d{1,3}(?: \d{3})+)(?:[.,](\d+))?$/,
	/^(\d{1,3}(?:'\d{3})+)(?:[.,](\d+))?$/,
	/^(\d{1,3}(?:,\d{2,3})*,\d{3})\.(\d+)$/,
	/^(\d{1,3}(?:\.\d{3})+),(\d+)$/,
	/^(\d{1,3}(?:,\d{2,3})+,\d{3}|\d{1,3}(?:\.\d{3}){2,})$/,
];

/** Undefined where there are more decimals than coins have, or more figures than are read. */
function minorUnitsOf({ whole, coins }: Figures, decimals: number): number | undefined {
	if (coins.length > decimals || whole.length > mostDigits) return undefined;
	return Number(`${whole}${coins.padEnd(decimals, '0')}`);
}
