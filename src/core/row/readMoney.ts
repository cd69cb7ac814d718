import { isProblem, type Reading } from '../length/reading.ts';
import { parsePrice, type Price } from '../settings/readPrice.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import type { Currency } from '../values/money.ts';

/** The columns that hold an amount of money, or a word. */
export const moneyColumns = ['net', 'price', 'value'] as const satisfies readonly ColumnName[];

/** One of `moneyColumns`. */
export type MoneyColumn = (typeof moneyColumns)[number];

const noAmount = { value: undefined };

/** What the cells of money of a row say, each as it was read. */
export interface ReadMoney extends Readonly<Record<MoneyColumn, Reading<Price | undefined>>> {
	/** The show's currency, in which they were read. */
	readonly currency: Currency | undefined;
}

/** The amount of a cell of money, in minor units; undefined where it is blank, a word, or cannot be read. */
export const amountIn = (read: Reading<Price | undefined>): number | undefined =>
	isProblem(read) ? undefined : read.value?.minorUnits;

/**
 * What a cell of money says in the currency of all prices: as it was read with its row. Only where the show has no
 * currency, and a row names one, it is read in that: which one it is nobody knows before all rows are read.
 */
export function moneyIn(
	{ typed }: Pick<Row, 'typed'>,
	{ read }: { readonly read: { readonly money: ReadMoney } },
	column: MoneyColumn,
	currency: Currency | undefined,
): Reading<Price | undefined> {
	const isAsRead = read.money.currency !== undefined || currency === undefined;
	return isAsRead ? read.money[column] : readMoney(typed[column]?.trim() ?? '', currency);
}

/**
 * Reads a cell of money: an amount in the show's currency. A text without figures (`NFS`, `on loan`) says that there is
 * no amount, and has no problem.
 * @param currency the show's; undefined where it has none, and then each cell may name its own
 */
export function readMoney(text: string, currency: Currency | undefined): Reading<Price | undefined> {
	if (!/\d/.test(text)) return noAmount;
	const read = parsePrice(text, currency);
	if ('problem' in read) return read;
	const { named } = read.value;
	if (currency === undefined || named === undefined || named.code === currency.code) return read;
	return { problem: `“${text.trim()}” is in ${named.code}, and the show is in ${currency.code}` };
}

/** The currency that a price of a row names; undefined where none does. */
export function currencyNamed(moneyOf: (column: MoneyColumn) => ReadMoney[MoneyColumn]): Currency | undefined {
	for (const column of moneyColumns) {
		const money = moneyOf(column);
		if (!isProblem(money) && money.value?.named) return money.value.named;
	}
	return undefined;
}

/** The same from its texts alone, for who cannot wait until all rows are worked out. */
export const currencyTyped = ({ typed }: Pick<Row, 'typed'>): Currency | undefined =>
	currencyNamed((column) => readMoney(typed[column]?.trim() ?? '', undefined));
