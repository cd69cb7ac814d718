import { decimalFraction, fraction, type Fraction } from '../length/fraction.ts';
import { parseShare } from '../length/parsePercent.ts';
import type { Reading } from '../length/reading.ts';
import type { PriceReader } from './readPrice.ts';
import type { SettingContext } from './settingValue.ts';
import { shown } from '../values/shownText.ts';
import type { Share } from './settings.ts';

/** A share, kept as the fraction that it is; a number is per cent: `35 %`, `33 1/3 %`, 17.5. */
export function shareSetting(value: unknown): Reading<Share> {
	if (typeof value === 'number' && Number.isFinite(value) && value >= 0 && /^[\d.]+$/.test(`${value}`))
		return shareOf(decimalFraction(`${value}`), value);
	if (typeof value !== 'string') return { problem: `${shown(value)} is not a share` };
	const read = parseShare(value);
	return 'problem' in read ? read : shareOf(read.value, value);
}

function shareOf({ numerator, denominator }: Fraction, typed: unknown): Reading<Share> {
	const part = fraction(numerator, denominator * 100n);
	const [over, under] = [Number(part.numerator), Number(part.denominator)];
	if (!Number.isSafeInteger(over) || !Number.isSafeInteger(under))
		return { problem: `${shown(typed)} has too many digits for a share` };
	return { value: { numerator: over, denominator: under } };
}

/** A step of prices: money above zero. A number is whole pounds, euros or the like, as it would be typed. */
export function stepSetting(value: unknown, price: PriceReader): Reading<number> {
	const read = price(typeof value === 'number' ? `${value}` : value);
	if ('problem' in read || read.value > 0) return read;
	return { problem: `${shown(value)} is not above zero. Prices are rounded up to a multiple of it, such as 5` };
}

/** How a price is divided: commission, VAT on it, and what is left, over one denominator, which is their sum. */
export function partsOfPrice(commission: Share, vat: Share): readonly [bigint, bigint, bigint] {
	const [over, under] = [BigInt(commission.numerator), BigInt(commission.denominator)];
	const [vatOver, vatUnder] = [BigInt(vat.numerator), BigInt(vat.denominator)];
	const [own, onIt] = [over * vatUnder, over * vatOver];
	return [own, onIt, under * vatUnder - own - onIt];
}

/** What is left of a price for the maker after commission and the VAT on it: 1 − commission · (1 + vat), exactly. */
export function makersShare(commission: Share, vat: Share): Fraction {
	const [own, onIt, left] = partsOfPrice(commission, vat);
	return fraction(left, own + onIt + left);
}

const nothing: Share = { numerator: 0, denominator: 1 };

/** A commission that leaves the maker something; one that does not is reported, and there is none. */
export function commissionUnder(commission: Share, vat: Share, { report }: SettingContext): Share {
	if (makersShare(commission, vat).numerator > 0n) return commission;
	report('commission', refusal(commission, vat));
	return nothing;
}

function refusal(commission: Share, vat: Share): string {
	const own = `a commission of ${percentWords(commission)}`;
	const withVat = vat.numerator === 0 ? own : `${own} with ${percentWords(vat)} VAT on it`;
	return `${withVat} would take the whole price. Together they must stay below 100 %`;
}

/** A share in per cent, to two decimals: `17.5 %`. */
export const percentWords = ({ numerator, denominator }: Share): string =>
	`${Number(((100 * numerator) / denominator).toFixed(2))} %`;
