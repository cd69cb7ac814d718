import type { Costs } from './costs.ts';
import { byWidth, jobKey, type OrderJob } from './orderJob.ts';
import { type BoardSetUp, changesAlong, changesBetween, runsOf, widestFirst } from './setUps.ts';
import { settingBySetting } from './settingBySetting.ts';
import { shortestOrder } from './shortestOrder.ts';

/** An order of set-ups, each once, boards of one thickness together as far as the taping lets them. */
export interface SetUpOrder {
	readonly order: readonly BoardSetUp[];
	/** No such order has fewer changes. */
	readonly leastChanges: number;
}

/**
 * The order of all set-ups with the fewest changes, taped inner windows after their outer ones. With a guide alone each
 * setting is visited as seldom as can be, the widest first where there is a choice; with end stops it is a shortest way
 * through all set-ups, where a step costs as many devices as are set again.
 */
export function fewestSettings(job: OrderJob): SetUpOrder {
	const key = jobKey(job);
	if (known?.key !== key) known = { key, result: search(byWidth(job)) };
	return known.result;
}

/** The last order that was looked for: most edits of a show leave the set-ups as they are, and the search takes a while. */
let known: { readonly key: string; readonly result: SetUpOrder } | undefined;

function search(job: OrderJob): SetUpOrder {
	const { setUps } = job;
	const [first] = setUps;
	if (first === undefined) return { order: [], leastChanges: 0 };
	const isAnyTaped = setUps.some(({ isTaped }) => isTaped);
	const { places, least } = settingBySetting(job);
	const inTurn = places.map((place) => setUps[place]!);
	const runs = runsOf(inTurn);
	// With a guide alone only where thicknesses meet can anything be won, and the widest first is what one looks for there.
	const isBest = !isAnyTaped || runs === 1 || changesAlong(inTurn) === least;
	if (first.start === undefined && isBest) return { order: inTurn, leastChanges: least };

	const crossing = crossingCost(runs);
	const found = shortestOrder(costsOf(job, crossing), isAnyTaped ? places : undefined);
	const order = found.order.map((place) => setUps[place]!);
	const bound = changesBetween(undefined, first) + found.least - (runs - 1) * crossing;
	return {
		order: !isAnyTaped && widestFirst(order[0]!, order.at(-1)!) > 0 ? order.toReversed() : order,
		leastChanges: Math.min(changesAlong(order), Math.max(least, bound)),
	};
}

/**
 * What it costs to go from one thickness to another: more than can be won by going to and fro. An order with `k` visits of
 * thicknesses more than the fewest, `runs`, could be taken apart into twice its visits and put together to the fewest,
 * which joins at most `runs + 2k` stretches at three devices each.
 */
const crossingCost = (runs: number): number => 3 * (runs + 2) + 1;

/** The devices set again between all set-ups. */
function costsOf({ setUps, later }: OrderJob, crossing: number): Costs {
	const between = setUps.flatMap((from) =>
		setUps.map((to) => changesBetween(from, to) + (from.thickness === to.thickness ? 0 : crossing)),
	);
	return { count: setUps.length, between: Int32Array.from(between), later };
}
