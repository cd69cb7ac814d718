import { anneal } from './anneal.ts';
import { type Costs, costAlong } from './costs.ts';
import { leastByTrees } from './leastByTrees.ts';

/** An order of all places, each once. */
export interface ShortestOrder {
	readonly order: readonly number[];
	/** Sum of the costs from each to the next. */
	readonly cost: number;
	/** No order costs less than this. */
	readonly least: number;
}

/** Up to so many places all orders are weighed. */
const mostExact = 12;

/**
 * The cheapest order that goes through all places, and the least that one could cost: a shortest Hamiltonian path.
 * @param known an order that is there already
 */
export function shortestOrder(costs: Costs, known?: readonly number[]): ShortestOrder {
	if (costs.count <= 1) return { order: costs.count === 0 ? [] : [0], cost: 0, least: 0 };
	if (costs.count <= mostExact) {
		const order = exactOrder(costs);
		const cost = costAlong(order, costs);
		return { order, cost, least: cost };
	}
	const nearest = nearestOrder(costs, known?.[0] ?? 0);
	const first = known && costAlong(known, costs) < costAlong(nearest, costs) ? known : nearest;
	const least = leastByTrees(costs, costAlong(first, costs));
	const order = anneal(first, costs, least);
	return { order, cost: costAlong(order, costs), least };
}

/**
 * Held and Karp: the cheapest way through each set of places that ends in each of them, from smaller sets to larger.
 * Source: M. Held, R. M. Karp, A dynamic programming approach to sequencing problems, 1962
 */
function exactOrder({ count, between, later = [] }: Costs): readonly number[] {
	const waits = new Int32Array(count);
	later.forEach((after, place) => after.forEach((each) => (waits[each]! |= 1 << place)));
	const sets = 1 << count;
	const cheapest = new Int32Array(sets * count).fill(0x3fffffff);
	const before = new Int8Array(sets * count).fill(-1);
	for (let place = 0; place < count; place++) if (waits[place] === 0) cheapest[(1 << place) * count + place] = 0;
	for (let set = 1; set < sets; set++)
		for (let last = 0; last < count; last++) {
			if ((set & (1 << last)) === 0) continue;
			const cost = cheapest[set * count + last]!;
			for (let next = 0; next < count; next++) {
				if ((set & (1 << next)) !== 0 || (waits[next]! & ~set) !== 0) continue;
				const to = (set | (1 << next)) * count + next;
				const sum = cost + between[last * count + next]!;
				if (sum >= cheapest[to]!) continue;
				cheapest[to] = sum;
				before[to] = last;
			}
		}
	const order: number[] = [];
	let set = sets - 1;
	let last = 0;
	for (let place = 1; place < count; place++)
		if (cheapest[set * count + place]! < cheapest[set * count + last]!) last = place;
	while (last >= 0) {
		order.push(last);
		const previous = before[set * count + last]!;
		set &= ~(1 << last);
		last = previous;
	}
	return order.reverse();
}

/** From a place that waits for none on always the nearest that is left and waits for none that is. */
function nearestOrder({ count, between, later = [] }: Costs, first: number): number[] {
	const waits = new Int32Array(count);
	for (const after of later) for (const place of after) waits[place]!++;
	const order: number[] = [];
	const left = new Set(Array.from({ length: count }, (_, place) => place));
	for (let next = first; ;) {
		left.delete(next);
		order.push(next);
		if (left.size === 0) return order;
		for (const place of later[next] ?? []) waits[place]!--;
		const from = next * count;
		next = -1;
		for (const place of left)
			if (waits[place] === 0 && (next < 0 || between[from + place]! < between[from + next]!)) next = place;
	}
}
