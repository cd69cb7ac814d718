import type { Reading } from '../length/reading.ts';
import { parsePrice, type Price } from '../settings/readPrice.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Currency } from '../values/money.ts';

/** The columns that hold an amount of money, or a word. */
export const moneyColumns = ['net', 'price', 'value'] as const satisfies readonly ColumnName[];

/** One of `moneyColumns`. */
export type MoneyColumn = (typeof moneyColumns)[number];

/**
 * Reads a cell of money: an amount in the show's currency. A text without figures (`NFS`, `on loan`) says that there is
 * no amount, and has no problem.
 * @param currency the show's; undefined where it has none, and then each cell may name its own
 */
export function readMoney(text: string, currency: Currency | undefined): Reading<Price | undefined> {
	if (!/\d/.test(text)) return { value: undefined };
	const read = parsePrice(text, currency);
	if ('problem' in read) return read;
	const { named } = read.value;
	if (currency === undefined || named === undefined || named.code === currency.code) return read;
	return { problem: `“${text.trim()}” is in ${named.code}, and the show is in ${currency.code}` };
}
