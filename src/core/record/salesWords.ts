import { nameOfPrint } from '../show/nameOfPrint.ts';
import { listed } from '../values/listed.ts';
import { type Currency, formatMoney, moneyWords } from '../values/money.ts';
import type { MakerSums, Sale, Sales, Sums } from './sales.ts';
import { countOf } from '../values/countOf.ts';

/** Figures in a line, each after its word. */
export interface SumFigure {
	readonly word: string;
	readonly figure: string;
}

/** What was sold, and who gets what of it. Where there is no commission, only what was sold. */
export function sumFigures(
	sums: Sums & { readonly count: number },
	currency: Currency | undefined,
): readonly SumFigure[] {
	const say = (minorUnits: number) => formatMoney(minorUnits, currency);
	return [
		{ word: 'prints', figure: `${sums.count}` },
		{ word: 'sold for', figure: say(sums.sold) },
		{ word: 'commission', figure: say(sums.commission) },
		{ word: 'VAT on commission', figure: say(sums.vat) },
		{ word: 'due to the maker', figure: say(sums.due) },
	];
}

/** The heading over the sums: `3 prints sold for 1350.00 EUR`. */
export function totalSentence({ total, currency }: Pick<Sales, 'total' | 'currency'>): string {
	if (total.count === 0) return 'Nothing sold yet';
	return `${countOf(total.count, 'print')} sold for ${moneyWords(total.sold, currency)}`;
}

/** How many of the prints sold are collected, and for which no buyer is named; blank where nothing is sold. */
export function collectedSentence({ prints }: Pick<Sales, 'prints'>): string {
	const sold = prints.filter(({ isSold }) => isSold);
	if (sold.length === 0) return '';
	const count = (of: readonly Sale[]) => of.reduce((sum, { copies }) => sum + copies, 0);
	const collected = `Collected ${count(sold.filter(({ isCollected }) => isCollected))} of ${count(sold)}.`;
	const missing = sold.filter(({ row }) => (row.typed.buyer ?? '').trim() === '');
	return missing.length === 0 ? collected : `${collected} Buyer missing for ${namesOf(missing)}.`;
}

/** The first of some prints by their names, and how many more there are. */
function namesOf(sales: readonly Sale[]): string {
	const names = sales.slice(0, mostNamed).map(({ row, place }) => nameOfPrint(row, place));
	const more = sales.length - names.length;
	return more > 0 ? `${names.join(', ')} and ${more} more` : listed(names);
}

/** What a maker is called: prints without one are named so. */
export const makerWords = ({ maker }: Pick<MakerSums, 'maker'>): string => (maker === '' ? 'No maker named' : maker);

/** The prints that were sold and count in no sum, in a sentence; blank where there are none. */
export function unpricedSentence({ unpriced }: Pick<Sales, 'unpriced'>): string {
	if (unpriced.length === 0) return '';
	return `Sold without a price in figures, so left out of the sums: ${namesOf(unpriced)}.`;
}

const mostNamed = 8;

/** What several copies come to: `3 copies, sold together: 3 × 45.00 = 135.00`; undefined for one. */
export function copiesSentence({ copies, amount, price }: Sale, currency: Currency | undefined): string | undefined {
	if (copies < 2) return undefined;
	const each =
		price.kind === 'typed' || price.kind === 'worked out' ? formatMoney(price.minorUnits, currency) : undefined;
	const sum =
		each === undefined || amount === undefined ? '' : `: ${copies} × ${each} = ${formatMoney(amount, currency)}`;
	return `${copies} copies, sold together${sum}`;
}
