import { formatSize, type Scale } from '../length/formatLength.ts';
import type { Settings } from '../settings/settings.ts';
import { formatMoney } from '../values/money.ts';
import type { Purchase } from './purchases.ts';
import { countOf } from '../values/countOf.ts';

/** What is to be bought of one entry of the stock, in words: `1 pack of 10 sheets, 1200 × 900 mm: 124.00`. */
export function buyWords({ stock, pieces, packs, cost }: Purchase, scale: Scale & Pick<Settings, 'currency'>): string {
	const word = stock.kind === 'blank' ? 'ready-cut blank' : stock.kind;
	const what = stock.pack === 1 ? countOf(pieces, word) : `${countOf(packs, 'pack')} of ${countOf(stock.pack, word)}`;
	const size = formatSize(stock.width, stock.height, scale);
	const spare = packs * stock.pack - pieces;
	const over = spare === 0 ? '' : `, ${spare} left over`;
	return `${what}, ${size}${over}${cost === undefined ? '; no price' : `: ${formatMoney(cost, scale.currency)}`}`;
}
