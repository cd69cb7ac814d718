import type { RowResult } from '../findings/rowResult.ts';
import { shareOut } from '../order/shareOut.ts';
import { hangOrder } from '../row/hangOrder.ts';
import { isSoldStage } from '../row/rowStage.ts';
import { partsOfPrice } from '../settings/readSale.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { groupBy } from '../values/groupBy.ts';
import type { Currency } from '../values/money.ts';
import { nameKey } from '../values/named.ts';
import { recordSettings } from './inCurrency.ts';
import { amountOf, type Price } from './priceOf.ts';
import { pricesOf } from './pricesOf.ts';
import type { RecordSource } from './recordSource.ts';

/** A row as it is sold: whole, with all its copies. */
export interface Sale {
	/** Of the row in the show, from 0. */
	readonly place: number;
	readonly row: Row;
	readonly copies: number;
	/** Of one copy. */
	readonly price: Price;
	/** Of all copies, in minor units; undefined where the price is no amount. */
	readonly amount: number | undefined;
	readonly isSold: boolean;
	/** Sold, and fetched by whoever bought it. */
	readonly isCollected: boolean;
}

/** Sums in minor units: commission, VAT on it and what is due add up to what was sold, to the last. */
export interface Sums {
	readonly sold: number;
	readonly commission: number;
	/** On the commission. */
	readonly vat: number;
	/** To the maker. */
	readonly due: number;
}

/** What was sold of one maker. */
export interface MakerSums extends Sums {
	/** As the first of its rows has it; blank for prints without one. */
	readonly maker: string;
	/** How many prints, each copy one. */
	readonly count: number;
}

/** All prints of a show, and what was sold of them. */
export interface Sales {
	/** In hang order. */
	readonly prints: readonly Sale[];
	/** Of each maker of whom something was sold at a price, in the order in which they come. */
	readonly makers: readonly MakerSums[];
	/** The sums of all makers. */
	readonly total: Sums & { readonly count: number };
	/** What was sold without a price that is an amount: it is in no sum. */
	readonly unpriced: readonly Sale[];
	/** Of all amounts: the show's, else the first that a price names. */
	readonly currency: Currency | undefined;
}

/** The prints of a show as they are sold, with the sums of those that were. A row of which no copy is made is none. */
export function salesOf(source: RecordSource): Sales {
	const { rows, results } = source;
	const settings = recordSettings(results, source.settings);
	const prices = pricesOf(source);
	const made = hangOrder(rows, results).filter((place) => results[place]!.copies > 0);
	const prints = made.map((place) => saleOf(rows[place]!, place, results[place]!, prices[place]!));
	const sold = prints.filter(({ isSold }) => isSold);
	const priced = sold.filter(({ amount }) => amount !== undefined);
	const makers = [...groupBy(priced, makerKey).values()].map((own) => sumsOf(own, settings));
	const all = (of: (sums: MakerSums) => number) => makers.reduce((sum, each) => sum + of(each), 0);
	return {
		prints,
		makers,
		total: {
			count: all(({ count }) => count),
			sold: all((sums) => sums.sold),
			commission: all(({ commission }) => commission),
			vat: all(({ vat }) => vat),
			due: all(({ due }) => due),
		},
		unpriced: sold.filter(({ amount }) => amount === undefined),
		currency: settings.currency,
	};
}

function saleOf(row: Row, place: number, result: RowResult, price: Price): Sale {
	const { copies } = result.read;
	const amount = amountOf(price);
	const { stage } = result.words;
	return {
		...{ place, row, copies, price },
		amount: amount === undefined ? undefined : amount * copies,
		isSold: isSoldStage(stage),
		isCollected: stage === 'collected',
	};
}

/** Makers are told apart as names are: whatever the capitals and spaces. */
const makerKey = ({ row }: Sale): string => nameKey(row.typed.maker ?? '');

/** Of one maker: a statement that is right by itself, whatever others have sold. */
function sumsOf(own: readonly Sale[], { commission, vat }: Settings): MakerSums {
	const sold = own.reduce((sum, { amount }) => sum + (amount ?? 0), 0);
	const [commissionDue = 0, vatDue = 0, due = 0] = shareOut([{ cost: sold, taken: partsOfPrice(commission, vat) }], 3);
	const count = own.reduce((sum, { copies }) => sum + copies, 0);
	return { maker: own[0]!.row.typed.maker?.trim() ?? '', count, sold, commission: commissionDue, vat: vatDue, due };
}
