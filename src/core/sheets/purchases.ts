import { placeInStock, type Stock } from '../stock/stock.ts';
import type { Layout } from './layout.ts';

/** What is bought of one entry of the stock. */
export interface Purchase {
	readonly stock: Stock;
	/** How many sheets or ready-cut blanks are used. */
	readonly pieces: number;
	/** Whole packs. */
	readonly packs: number;
	/** In whole minor units; undefined where the entry has no price. */
	readonly cost: number | undefined;
}

/** What must be bought for some layouts, in whole packs, in the order of the stock; what is there already is left out. */
export function purchasesOf(layouts: readonly Layout[], stock: readonly Stock[]): readonly Purchase[] {
	const gone = layouts.map(({ stock: piece }) => piece).filter((piece) => placeInStock(piece, stock) < 0);
	const entries = [...stock, ...gone.filter((piece, index) => placeInStock(piece, gone) === index)];
	const pieces = entries.map(() => 0);
	for (const { stock: piece } of layouts) pieces[placeInStock(piece, entries)]!++;
	return entries.flatMap((entry, place): readonly Purchase[] => {
		if (pieces[place] === 0 || entry.price === 0) return [];
		const packs = Math.ceil(pieces[place]! / entry.pack);
		const cost = entry.price === undefined ? undefined : packs * entry.price;
		return [{ stock: entry, pieces: pieces[place]!, packs, cost }];
	});
}

/**
 * What must still be bought once sheets have been begun, cut or spoilt: those came out of whole packs, which are there.
 * @param begun those among the layouts that the knife has begun
 */
export function stillToBuy(
	layouts: readonly Layout[],
	begun: readonly Layout[],
	stock: readonly Stock[],
): readonly Purchase[] {
	const bought = purchasesOf(begun, stock);
	return purchasesOf(layouts, stock).flatMap((purchase) => {
		const { packs = 0 } = bought.find((each) => placeInStock(each.stock, [purchase.stock]) === 0) ?? {};
		const left = purchase.packs - packs;
		if (left <= 0) return [];
		const { price, pack } = purchase.stock;
		return [
			{
				...purchase,
				pieces: purchase.pieces - packs * pack,
				packs: left,
				cost: price === undefined ? undefined : left * price,
			},
		];
	});
}

/** What some layouts cost, in whole minor units: what has no price counts as 0. */
export const costOf = (layouts: readonly Layout[], stock: readonly Stock[]): number =>
	purchasesOf(layouts, stock).reduce((sum, { cost = 0 }) => sum + cost, 0);
