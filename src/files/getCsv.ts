import type { Scale } from '../core/length/formatLength.ts';
import { type Length, mmPerMetre, toMm } from '../core/length/length.ts';
import type { ToGet } from '../core/order/whatToGet.ts';
import { sizeWords } from '../core/order/getWords.ts';
import { type Currency, formatMoney } from '../core/values/money.ts';
import { csvText } from './csvText.ts';

const header = ['kind', 'name', 'size', 'wanted', 'there', 'unit', 'packs', 'price', 'cost', 'prints'] as const;

/**
 * What to get as delimited text, a line each, then what each maker pays. Amounts are pieces or metres, money is in the
 * show's currency.
 * @param nameOf what a print is called, by its place in the show
 */
export function writeToGet(
	{ lines, shares, total }: ToGet,
	scale: Scale & { readonly currency: Currency | undefined },
	nameOf: (place: number) => string,
): string {
	const money = (value: number | undefined) => (value === undefined ? '' : formatMoney(value, scale.currency));
	const records = lines.map((line) => {
		const amount = (value: number) => (line.isByLength ? (toMm(value as Length) / mmPerMetre).toFixed(3) : `${value}`);
		return [
			line.kind,
			line.name,
			sizeWords(line, scale),
			amount(line.wanted),
			amount(line.there),
			line.isByLength ? 'm' : '',
			`${line.packs}`,
			money(line.price),
			money(line.cost),
			[...line.taken.keys()].map(nameOf).join('; '),
		];
	});
	const blank = header.map(() => '');
	const sums = [
		['total', scale.currency?.code ?? '', '', '', '', '', '', '', money(total), ''],
		...shares.map(({ maker, cost }) => ['share', maker, '', '', '', '', '', '', money(cost), '']),
	];
	return csvText([header, ...records, blank, ...sums]);
}
