import { isProblem } from '../length/reading.ts';
import { moneyIn } from '../row/readMoney.ts';
import { makersShare } from '../settings/readSale.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import type { Currency } from '../values/money.ts';
import { decimalsOf, inCurrency, type PricedRow } from './inCurrency.ts';
import { roundedUp } from './roundedUp.ts';

/** What a row costs to make, all copies of it together, as far as the show's lists have prices. */
export interface CostOfRow {
	/** In minor units of the show's currency. */
	readonly minorUnits: number;
	/** Whether something that it takes has no price yet, so that it costs more. */
	readonly isPartial: boolean;
}

/** An amount of money, in minor units of its currency: the show's, or one that the cell names where the show has none. */
export interface Amount {
	readonly minorUnits: number;
	readonly currency: Currency | undefined;
}

/** What is asked for a print: for one copy, where a row has several. */
export type Price =
	/** An amount that was typed. */
	| ({ readonly kind: 'typed' } & Amount)
	/** Typed, and no amount: `NFS`; or figures that cannot be read as one, and `problem` says why. */
	| { readonly kind: 'words'; readonly text: string; readonly problem?: string }
	/** Worked out from what its maker wants; about, where its cost is not known in full. */
	| ({ readonly kind: 'worked out'; readonly isAbout: boolean; readonly net: number } & Amount)
	/** It is to hold the cost of the print, which is not known yet. */
	| { readonly kind: 'waits' }
	/** Nothing says what its price is. */
	| { readonly kind: 'none' };

/**
 * What is asked for a print: what was typed; else (net + cost of one copy, where it is asked for too) / (1 − commission ·
 * (1 + VAT)), up to the step, exactly. There is none where no net is typed, or it is a word.
 * @param cost of the row; undefined where it is not known
 */
export function priceOf(row: Row, result: PricedRow, cost: CostOfRow | undefined, settings: Settings): Price {
	const text = row.typed.price?.trim() ?? '';
	if (text !== '') return typedPrice(text, moneyIn(row, result, 'price', settings.currency), settings);
	const net = moneyIn(row, result, 'net', settings.currency);
	const { copies } = result.read;
	if (isProblem(net) || net.value === undefined) return { kind: 'none' };
	const { minorUnits, named } = net.value;
	const own = inCurrency(settings, settings.currency ?? named);
	if (!settings.isCostInPrice) return workedOut(minorUnits, undefined, copies, own);
	// A cost in hundredths is none in a currency without them.
	const isKnown = cost !== undefined && decimalsOf(own) === decimalsOf(settings);
	return isKnown ? workedOut(minorUnits, cost, copies, own) : { kind: 'waits' };
}

function typedPrice(text: string, read: ReturnType<typeof moneyIn>, { currency }: Settings): Price {
	if ('problem' in read) return { kind: 'words', text, problem: read.problem };
	if (read.value === undefined) return { kind: 'words', text };
	const { named, minorUnits } = read.value;
	return { kind: 'typed', minorUnits, currency: currency ?? named };
}

function workedOut(net: number, cost: CostOfRow | undefined, copies: number, settings: Settings): Price {
	const { commission, vat, priceStep, currency } = settings;
	const left = makersShare(commission, vat);
	const count = BigInt(Math.max(1, copies));
	const wanted = BigInt(net) * count + BigInt(cost?.minorUnits ?? 0);
	const minorUnits = roundedUp(wanted * left.denominator, count * left.numerator, priceStep);
	return { kind: 'worked out', minorUnits, currency, net, isAbout: cost?.isPartial ?? false };
}

/** The amount of a price in minor units; undefined where it is none. */
export const amountOf = (price: Price): number | undefined =>
	price.kind === 'typed' || price.kind === 'worked out' ? price.minorUnits : undefined;
