import type { Costs } from './costs.ts';

/** Work that is put into the bound: rounds times places squared. */
const mostWork = 6_000_000;

/** Rounds at least, however many places there are, and at most, however few. */
const [leastRounds, mostRounds] = [10, 400];

/** What rounding may have added to a sum of tolls: it is given away before a bound goes up to the next whole number. */
const rounding = 1e-6;

/** The cost that the tolls aim at, beside that of the order: a little over it, so that there is a step left where the bound comes up to it. */
const aim = 1.05;

/**
 * A cost that no order through all places is under. An order is a tree in which each place has two neighbours, but for
 * the two ends; so none costs less than the cheapest tree. A toll is laid on places where trees branch and taken off
 * where they end: an order pays each toll twice, but at its ends, so what the tolls bring in is known, and the cheapest
 * tree comes nearer to an order. Costs are whole, so the bound goes up to the next whole number.
 * @param cost what some order costs: no bound is over it
 * Source: M. Held, R. M. Karp, The traveling-salesman problem and minimum spanning trees, 1970
 */
export function leastByTrees({ count, between }: Costs, cost: number): number {
	const tolls = new Float64Array(count);
	const neighbours = new Int32Array(count);
	const rounds = Math.max(leastRounds, Math.min(mostRounds, Math.floor(mostWork / (count * count))));
	let least = 0;
	for (let round = 0; round < rounds; round++) {
		const tree = cheapestTree(between, tolls, neighbours);
		// The two ends of an order pay their toll once: at best they are the two places with the greatest to be taken off.
		let [low, lower] = [-1, -1];
		let sum = 0;
		for (let place = 0; place < count; place++) {
			sum += tolls[place]!;
			if (low < 0 || tolls[place]! < tolls[low]!) [lower, low] = [low, place];
			else if (lower < 0 || tolls[place]! < tolls[lower]!) lower = place;
		}
		const bound = tree - 2 * sum + tolls[low]! + tolls[lower]!;
		least = Math.max(least, Math.ceil(bound - rounding));
		if (least >= cost) return cost;
		neighbours[low]! += 1;
		neighbours[lower]! += 1;
		let wrong = 0;
		for (let place = 0; place < count; place++) wrong += (neighbours[place]! - 2) ** 2;
		if (wrong === 0) return least;
		const stride = ((aim * cost - bound) / wrong) * (1 - round / rounds);
		for (let place = 0; place < count; place++) tolls[place]! += stride * (neighbours[place]! - 2);
	}
	return least;
}

/**
 * The cost of the cheapest tree over all places, tolls of both ends on each branch.
 * @param neighbours filled with how many branches each place has
 */
function cheapestTree(between: Int32Array, tolls: Float64Array, neighbours: Int32Array): number {
	const count = tolls.length;
	const nearest = new Float64Array(count).fill(Infinity);
	const from = new Int32Array(count);
	const isIn = new Uint8Array(count);
	neighbours.fill(0);
	let sum = 0;
	let place = 0;
	for (let taken = 1; ; taken++) {
		isIn[place] = 1;
		if (taken === count) return sum;
		let next = -1;
		for (let other = 0; other < count; other++) {
			if (isIn[other] === 1) continue;
			const cost = between[place * count + other]! + tolls[place]! + tolls[other]!;
			if (cost < nearest[other]!) {
				nearest[other] = cost;
				from[other] = place;
			}
			if (next < 0 || nearest[other]! < nearest[next]!) next = other;
		}
		sum += nearest[next]!;
		neighbours[next]! += 1;
		neighbours[from[next]!]! += 1;
		place = next;
	}
}
