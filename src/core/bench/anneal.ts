import type { Costs } from './costs.ts';

/** Moves that are tried in one go, for each place, and goes at most. */
const triesPerPlace = 1_000;
const mostTries = 300_000;
const mostGoes = 12;
/** Moves of four kinds have the same chance: two that turn a stretch, two that carry one. */
const kinds = 4;
/** Places that are carried at once, at most; turning moves longer stretches. */
const longestCarried = 3;
/** How readily a dearer move is made: in the beginning every tenth that costs one more, in the end none. */
const [hot, cold] = [0.45, 0.1];

/**
 * Makes an order cheaper: brings places together that lie near each other, by turning a stretch of the order round or by
 * carrying a stretch elsewhere; dearer moves are now and then made too, less and less. Chance is from a fixed seed, so
 * that the same show has the same order each time. What must come after something stays after it.
 * @param least no order costs less: it ends where it gets there
 */
export function anneal(start: readonly number[], costs: Costs, least: number): readonly number[] {
	const { count, between, later } = costs;
	const near = nearPlaces(costs);
	const order = Int32Array.from(start);
	const placeOf = new Int32Array(count);
	order.forEach((item, place) => (placeOf[item] = place));
	const next = seeded(count);
	const upTo = (limit: number) => Math.floor(next() * limit);

	/** Cost from what stands at one place of the order to what stands at another; nothing beyond its ends. */
	const cost = (from: number, to: number) =>
		from < 0 || to < 0 || from >= count || to >= count ? 0 : between[order[from]! * count + order[to]!]!;

	function turn(first: number, last: number): void {
		for (let [low, high] = [first, last]; low <= high; low++, high--) {
			const [left, right] = [order[low]!, order[high]!];
			order[low] = right;
			order[high] = left;
			placeOf[right] = low;
			placeOf[left] = high;
		}
	}

	/** Whether something at the places `from` to `to` must stay before something at `low` to `high`. */
	function isBound(from: number, to: number, low: number, high: number): boolean {
		if (later === undefined) return false;
		for (let at = from; at <= to; at++)
			for (const item of later[order[at]!]!) if (placeOf[item]! >= low && placeOf[item]! <= high) return true;
		return false;
	}

	/** Turns a stretch round if that is accepted. @returns what it wins */
	function tryTurning(first: number, last: number, heat: number): number {
		if (first >= last) return 0;
		const gain = cost(first - 1, first) + cost(last, last + 1) - cost(first - 1, last) - cost(first, last + 1);
		if (!isAccepted(gain, heat) || isBound(first, last, first, last)) return 0;
		turn(first, last);
		return gain;
	}

	/** Carries a stretch to behind `to`, its far end first if `isTurned`, if that is accepted. @returns what it wins */
	function tryCarrying(first: number, last: number, to: number, isTurned: boolean, heat: number): number {
		if (last >= count || (to >= first - 1 && to <= last)) return 0;
		const [head, tail] = isTurned ? [last, first] : [first, last];
		const apart = cost(first - 1, first) + cost(last, last + 1) + cost(to, to + 1);
		const gain = apart - cost(first - 1, last + 1) - cost(to, head) - cost(tail, to + 1);
		if (!isAccepted(gain, heat)) return 0;
		const [low, middle, high] = to < first ? [to + 1, first - 1, last] : [first, last, to];
		if (isBound(low, middle, middle + 1, high) || (isTurned && isBound(first, last, first, last))) return 0;
		if (isTurned) turn(first, last);
		turn(low, middle);
		turn(middle + 1, high);
		turn(low, high);
		return gain;
	}

	function isAccepted(gain: number, heat: number): boolean {
		return gain >= 0 || next() < Math.exp(gain / heat);
	}

	let current = 0;
	for (let place = 1; place < count; place++) current += cost(place - 1, place);
	let best = order.slice();
	let bestCost = current;
	const tries = Math.min(mostTries, triesPerPlace * count);
	for (let tried = 0; tried < mostGoes * tries && bestCost > least; tried++) {
		const heat = hot * (cold / hot) ** ((tried % tries) / tries);
		const item = upTo(count);
		const others = near[item]!;
		const at = placeOf[item]!;
		const to = placeOf[others[upTo(others.length)]!]!;
		const [first, last] = at < to ? [at, to] : [to, at];
		const kind = upTo(kinds);
		if (kind === 0) current -= tryTurning(first + 1, last, heat);
		else if (kind === 1) current -= tryTurning(first, last - 1, heat);
		else {
			const from = Math.max(0, at - (kind === 3 ? upTo(longestCarried) : 0));
			const length = kind === 3 ? at - from : upTo(longestCarried);
			current -= tryCarrying(from, from + length, upTo(2) === 0 ? to : to - 1, upTo(2) === 0, heat);
		}
		if (current >= bestCost) continue;
		bestCost = current;
		best = order.slice();
	}
	return [...best];
}

/** For each place those that lie nearest to it, and next nearest. */
function nearPlaces({ count, between }: Costs): readonly (readonly number[])[] {
	const all = Array.from({ length: count }, (_, place) => place);
	return all.map((place) => {
		const others = all.filter((other) => other !== place);
		const levels = [...new Set(others.map((other) => between[place * count + other]!))].sort((a, b) => a - b);
		const limit = levels[1] ?? levels[0]!;
		return others.filter((other) => between[place * count + other]! <= limit);
	});
}

/** Numbers from 0 to under 1 that look like chance: a linear congruence, whose high bits are good enough here. */
function seeded(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
		return state / 2 ** 32;
	};
}
