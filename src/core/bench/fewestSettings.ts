import type { Costs } from './costs.ts';
import { groupBy } from './groupBy.ts';
import { type BoardSetUp, changesAlong, changesBetween, isOneStretch, setUpKey, widestFirst } from './setUps.ts';
import { leastCost, shortestOrder } from './shortestOrder.ts';

/** An order of set-ups, each once, boards of one thickness together. */
export interface SetUpOrder {
	readonly order: readonly BoardSetUp[];
	/** No order has fewer changes. */
	readonly leastChanges: number;
}

/**
 * The order of all set-ups with the fewest changes. Without end stops every setting is set once, and the widest comes
 * first; with them it is a shortest way through all set-ups, where a step costs as many devices as are set anew.
 * @param setUps all different
 */
export function fewestSettings(setUps: readonly BoardSetUp[]): SetUpOrder {
	const byWidth = setUps.toSorted(widestFirst);
	if (!setUps.some(({ start }) => start !== undefined)) {
		const leastChanges = byWidth.some(({ isTaped }) => isTaped) ? leastUnbound(byWidth) : leastOfGuide(byWidth);
		return { order: byWidth, leastChanges };
	}
	const key = byWidth.map(setUpKey).join(';');
	if (known?.key !== key) known = { key, result: leastChangesOrder(byWidth) };
	return known.result;
}

/** The last order that was looked for: most edits of a show leave the set-ups as they are, and the search takes a while. */
let known: { readonly key: string; readonly result: SetUpOrder } | undefined;

function leastChangesOrder(setUps: readonly BoardSetUp[]): SetUpOrder {
	const [first] = setUps;
	if (first === undefined) return { order: [], leastChanges: 0 };
	const { costs, crossings } = costsOf(setUps);
	const { order, least } = shortestOrder(costs);
	const found = order.map((place) => setUps[place]!);
	const [head, tail] = [found[0]!, found.at(-1)!];
	const bound = setUps.some(({ isTaped }) => isTaped)
		? leastUnbound(setUps)
		: changesBetween(undefined, first) + least - crossings;
	return {
		order: widestFirst(head, tail) > 0 ? found.toReversed() : found,
		leastChanges: Math.min(changesAlong(found), bound),
	};
}

/**
 * What no order is under, whatever comes before what. Where inner mounts are taped on, the order found cuts all outer
 * windows first; one that tapes each when it is ready might set less, and of that nothing is claimed.
 */
function leastUnbound(setUps: readonly BoardSetUp[]): number {
	const different = [...groupBy(setUps, ({ guide, start, end }) => [guide, start, end].join(' ')).values()].map(
		([first]) => first!,
	);
	if (different[0]?.start === undefined) return different.length;
	const count = different.length;
	const between = Int32Array.from(different.flatMap((from) => different.map((to) => changesBetween(from, to))));
	return changesBetween(undefined, different[0]) + leastCost({ count, between });
}

/**
 * The devices set anew between all set-ups. Outer windows come before taped inner ones: that is crossed once, as going to
 * and fro costs more than all stretches of either could win by lying together. From one thickness to another it costs more than can be won by going to and
 * fro: an order with `k` crossings too many could have its stretches put together by thickness, which joins as many
 * stretches at three devices each at most.
 */
function costsOf(setUps: readonly BoardSetUp[]): { costs: Costs; crossings: number } {
	const count = setUps.length;
	const stretches = new Set(setUps.map(({ thickness, isTaped }) => `${thickness} ${isTaped}`)).size;
	const isTapedTo = setUps.some(({ isTaped }) => isTaped !== setUps[0]!.isTaped);
	const crossing = 3 * stretches + 1;
	const between = new Int32Array(count * count);
	setUps.forEach((from, row) =>
		setUps.forEach((to, column) => {
			const crossed = (isOneStretch(from, to) ? 0 : 1) + (from.isTaped === to.isTaped ? 0 : 1);
			between[row * count + column] = changesBetween(from, to) + crossed * crossing;
		}),
	);
	return { costs: { count, between }, crossings: crossing * (stretches - 1 + (isTapedTo ? 1 : 0)) };
}

/**
 * Each thickness needs each of its settings once, and where one follows another they may share one: at most once for
 * each further thickness, and for each pair that has a setting in common.
 */
function leastOfGuide(setUps: readonly BoardSetUp[]): number {
	const byThickness = groupBy(setUps, ({ thickness }) => thickness);
	const groups = [...byThickness.values()].map((group) => new Set(group.map(({ guide }) => guide)));
	const pairs = groups.flatMap((group, place) =>
		groups.slice(place + 1).filter((other) => [...other].some((guide) => group.has(guide))),
	);
	return setUps.length - Math.min(Math.max(groups.length - 1, 0), pairs.length);
}
