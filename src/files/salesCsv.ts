import { priceText } from '../core/record/priceWords.ts';
import type { Sale, Sales, Sums } from '../core/record/sales.ts';
import { asTyped } from '../core/show/asTyped.ts';
import { formatMoney } from '../core/values/money.ts';
import { csvText } from './csvText.ts';

/** The columns of the list of sales; the buyer stands behind them where that is asked for. */
export const salesColumns = [
	...(['kind', 'number', 'title', 'maker', 'edition', 'copies', 'stage', 'price', 'currency'] as const),
	...(['sold', 'commission', 'vat', 'due'] as const),
] as const;

type SalesColumn = (typeof salesColumns)[number] | 'buyer';
type Line = { readonly [Column in SalesColumn]?: string | undefined };

/**
 * The sales of a show as delimited text: a line for each print that is sold (`print`), one for each maker (`maker`) with
 * what is due to them, and one for all (`total`). Amounts are in the show's currency; a print whose price is no amount has
 * none under `sold`.
 * @param hasBuyers whether who bought a print stands in it
 */
export function writeSales(sales: Sales, hasBuyers: boolean): string {
	const columns: readonly SalesColumn[] = [...salesColumns, ...(hasBuyers ? (['buyer'] as const) : [])];
	const money = (minorUnits: number | undefined) =>
		minorUnits === undefined ? '' : formatMoney(minorUnits, sales.currency);
	const sums = ({ sold, commission, vat, due }: Sums) => ({
		...{ sold: money(sold), commission: money(commission), vat: money(vat), due: money(due) },
		currency: sales.currency?.code ?? '',
	});
	const printLine = ({ row, copies, price, amount }: Sale): Line => ({
		kind: 'print',
		...{ number: row.typed.number, title: row.typed.title, maker: row.typed.maker, edition: asTyped(row, 'edition') },
		...{ copies: `${copies}`, stage: row.typed.stage, buyer: row.typed.buyer },
		price:
			price.kind === 'words'
				? priceText(price)
				: money(price.kind === 'none' || price.kind === 'waits' ? undefined : price.minorUnits),
		...{ currency: amount === undefined ? '' : (sales.currency?.code ?? ''), sold: money(amount) },
	});
	const lines = [
		...sales.prints.filter(({ isSold }) => isSold).map(printLine),
		...sales.makers.map((own) => ({ kind: 'maker', maker: own.maker, copies: `${own.count}`, ...sums(own) })),
		{ kind: 'total', copies: `${sales.total.count}`, ...sums(sales.total) },
	];
	const records = lines.map((line: Line) => columns.map((name) => line[name] ?? ''));
	return csvText([columns, ...records]);
}
