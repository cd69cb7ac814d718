import { percentWords } from '../settings/readSale.ts';
import type { Settings } from '../settings/settings.ts';
import { listed } from '../values/listed.ts';
import { formatMoney, moneyWords } from '../values/money.ts';
import { inCurrency, type PricedRow } from './inCurrency.ts';
import type { CostOfRow, Price } from './priceOf.ts';

/**
 * A price as it stands in a list or on a label: an amount with its currency, a word as it was typed, nothing where there
 * is none yet.
 */
export function priceText(price: Price): string {
	if (price.kind === 'words') return price.text;
	return price.kind === 'typed' || price.kind === 'worked out' ? moneyWords(price.minorUnits, price.currency) : '';
}

/** A price that was worked out, as its cell shows it; blank for any other. */
export function workedOutText(price: Price): string {
	if (price.kind !== 'worked out') return '';
	return `${price.isAbout ? 'about ' : ''}${formatMoney(price.minorUnits, price.currency)}`;
}

/** Why a blank price is what it is, in sentences; undefined where it was typed, or nothing leads to one. */
export function priceReason(
	price: Price,
	{ read }: PricedRow,
	cost: CostOfRow | undefined,
	settings: Settings,
): string | undefined {
	if (price.kind === 'waits')
		return 'The price waits for the cost of the print, which is still being worked out, or none of its materials has a price yet.';
	if (price.kind !== 'worked out') return undefined;
	const { currency, net } = price;
	const say = (minorUnits: number) => formatMoney(minorUnits, currency);
	const hasCost = cost !== undefined && settings.isCostInPrice;
	const wanted = listed([`${say(net)} for the maker`, ...(hasCost ? [costWords(cost, read.copies, say)] : [])]);
	const gallery = commissionWords(settings);
	const kept = gallery === '' ? '' : ` after ${gallery}`;
	const step = moneyWords(inCurrency(settings, currency).priceStep, currency);
	const sum = `The price is ${moneyWords(price.minorUnits, currency)}. It leaves ${wanted}${kept}, rounded up to a multiple of ${step}.`;
	return price.isAbout ? `${sum} Something in its cost has no price yet, so it may go up.` : sum;
}

const costWords = ({ minorUnits }: CostOfRow, copies: number, say: (minorUnits: number) => string): string =>
	copies > 1 ? `1/${copies} of the ${say(minorUnits)} that its copies cost` : `${say(minorUnits)} for its cost`;

/** What the gallery takes: `40 % commission and 20 % VAT on that`; blank where it takes nothing. */
export function commissionWords({ commission, vat }: Pick<Settings, 'commission' | 'vat'>): string {
	if (commission.numerator === 0) return '';
	const own = `${percentWords(commission)} commission`;
	return vat.numerator === 0 ? own : `${own} and ${percentWords(vat)} VAT on that`;
}
