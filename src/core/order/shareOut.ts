import { leastCommonMultiple } from '../length/fraction.ts';

/** A cost that several share, each by how much of it is theirs. */
export interface SharedCost {
	/** In whole minor units. */
	readonly cost: number;
	/** How much each takes of it, by place: whole numbers of any unit, areas in square units as `bigint`. */
	readonly taken: readonly bigint[];
}

/**
 * Shares costs out. Each cost is divided exactly; only the sums are rounded, to whole minor units, so that they add up to
 * the total: all go down, and what is missing goes to the greatest remainders, where these are equal to the first. A cost
 * of which nobody takes anything is shared by all alike.
 * @param count how many share
 */
export function shareOut(costs: readonly SharedCost[], count: number): readonly number[] {
	if (count === 0) return [];
	// Over one denominator for each different sum of what is taken, the sums stay exact.
	const exact = costs.map(({ cost, taken }) => {
		const own = sum(taken) > 0n ? taken : Array.from({ length: count }, () => 1n);
		return { cost: BigInt(cost), taken: own, all: sum(own) };
	});
	const common = [...new Set(exact.map(({ all }) => all))].reduce(
		(product, all) => leastCommonMultiple(product, all),
		1n,
	);
	const weighted = exact.map(({ cost, taken, all }) => ({ taken, weight: cost * (common / all) }));
	const parts = Array.from({ length: count }, (_, place) =>
		weighted.reduce((total, { taken, weight }) => total + (taken[place] ? taken[place] * weight : 0n), 0n),
	);
	const whole = parts.map((part) => part / common);
	const missing = Number(exact.reduce((total, { cost }) => total + cost, 0n) - sum(whole));
	const byRemainder = [...parts.keys()].sort((a, b) => {
		const [left, right] = [parts[a]! % common, parts[b]! % common];
		return left === right ? a - b : left > right ? -1 : 1;
	});
	for (const place of byRemainder.slice(0, missing)) whole[place]!++;
	return whole.map(Number);
}

const sum = (values: readonly bigint[]): bigint => values.reduce((total, value) => total + value, 0n);
