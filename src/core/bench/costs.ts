/** Whole costs from each place to each other, the same both ways; `costs[a * count + b]`. */
export interface Costs {
	readonly count: number;
	readonly between: Int32Array;
	/** For each place those that come after it, where any must. */
	readonly later?: readonly (readonly number[])[];
}

/** Sum of the costs from each place of an order to the next. */
export function costAlong(order: readonly number[], { count, between }: Costs): number {
	let sum = 0;
	for (let at = 1; at < order.length; at++) sum += between[order[at - 1]! * count + order[at]!]!;
	return sum;
}
