import type { Problem, SheetType } from './problem.ts';
import type { WorthBound } from './worthBound.ts';

/** How many pieces of each entry of the stock are cut, sheets that are cut already left out. */
export type Mix = readonly number[];

/** What a mix is judged by, in this order: the less the better. */
export interface MixPrice {
	/** Of what must be bought beyond the packs that are open. */
	readonly cost: number;
	/** Pieces that must be bought although nobody knows their price. */
	readonly bought: number;
	/** Pieces of stock of all kinds. */
	readonly pieces: number;
}

/** The price of a mix. */
export function priceOf(mix: Mix, { sheets }: Problem): MixPrice {
	let [cost, bought, pieces] = [0, 0, 0];
	for (const [place, count] of mix.entries()) {
		cost += costOfPieces(sheets[place]!, count);
		if (sheets[place]!.isBought && sheets[place]!.stock.price === undefined) bought += count;
		pieces += count;
	}
	return { cost, bought, pieces };
}

/** What so many further pieces of an entry cost: whole packs, the open one first. */
function costOfPieces({ stock: { price = 0, pack }, alreadyCut }: SheetType, count: number): number {
	return price * (Math.ceil((alreadyCut + count) / pack) - Math.ceil(alreadyCut / pack));
}

/** Below zero where `a` is better. */
export const compareMixPrices = (a: MixPrice, b: MixPrice): number =>
	a.cost - b.cost || a.bought - b.bought || a.pieces - b.pieces;

/** How mixes are ordered. */
export type MixOrder = (a: MixPrice, b: MixPrice) => number;

/** What is known of the mixes that could hold all blanks. */
export interface MixRules {
	readonly bounds: readonly WorthBound[];
	/** Mixes that cannot, and with them every mix that has no more of any entry. */
	readonly refuted: readonly Mix[];
}

/** How many mixes are looked at, at most, for the next one. */
const mostLooks = 30_000;

/**
 * The best mix that is not ruled out and is better than `limit`.
 * @returns `none` where every other mix is ruled out, `unknown` where there were too many to look at
 */
export function nextMix(
	problem: Problem,
	{ bounds, refuted }: MixRules,
	limit: MixPrice,
	order: MixOrder = compareMixPrices,
): Mix | 'none' | 'unknown' {
	const { sheets } = problem;
	const byWorth = [...sheets.keys()].sort((a, b) => perPiece(sheets[a]!) - perPiece(sheets[b]!));
	// What all entries from one on can hold together, for each bound.
	const canHold = bounds.map(({ held }) => {
		const sums = new Array<number>(sheets.length + 1).fill(0);
		for (let depth = sheets.length - 1; depth >= 0; depth--)
			sums[depth] = sums[depth + 1]! + held[byWorth[depth]!]! * sheets[byWorth[depth]!]!.most;
		return sums;
	});
	const mix = sheets.map(() => 0);
	let best: Mix | undefined;
	let bestPrice = limit;
	let looks = 0;
	const look = (depth: number, needs: readonly number[]): void => {
		if (++looks > mostLooks) return;
		if (order(priceOf(mix, problem), bestPrice) >= 0) return;
		if (needs.some((need, bound) => need > canHold[bound]![depth]!)) return;
		if (depth === sheets.length) {
			if (refuted.some((other) => mix.every((count, sheet) => count <= other[sheet]!))) return;
			best = [...mix];
			bestPrice = priceOf(mix, problem);
			return;
		}
		const sheet = byWorth[depth]!;
		const { most } = sheets[sheet]!;
		// The last entry must hold all that is still missing.
		const least =
			depth < sheets.length - 1
				? 0
				: Math.max(0, ...needs.map((need, bound) => (need > 0 ? Math.ceil(need / bounds[bound]!.held[sheet]!) : 0)));
		for (let count = least; count <= most; count++) {
			mix[sheet] = count;
			if (order(priceOf(mix, problem), bestPrice) >= 0) break;
			look(
				depth + 1,
				needs.map((need, bound) => need - count * bounds[bound]!.held[sheet]!),
			);
		}
		mix[sheet] = 0;
	};
	look(
		0,
		bounds.map(({ needed }) => needed),
	);
	if (looks > mostLooks) return 'unknown';
	return best ?? 'none';
}

const perPiece = ({ stock: { price = 0, pack }, isBought }: SheetType) => (isBought ? 1 + price / pack : 0);
