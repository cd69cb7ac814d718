import type { CutTables } from './cutTables.ts';
import type { Problem } from './problem.ts';

/**
 * What every plan must keep to: give each blank a value; then the sheets of a plan must be able to hold the values of
 * all blanks together, `sum of held[s] · (how many of s) >= needed`. All whole numbers, so nothing is lost to rounding.
 */
export interface WorthBound {
	/** The value of a blank of each type. */
	readonly values: readonly number[];
	/** The most value that one piece of each entry of the stock can hold. */
	readonly held: readonly number[];
	readonly needed: number;
}

/** Values are no larger than this: sums of them stay exact. */
const largestValue = 2 ** 30;

/** The bound that some worths give, once they are whole numbers. Worths are not negative. */
export function worthBound({ types }: Problem, tables: CutTables, worth: readonly number[]): WorthBound {
	const largest = Math.max(...worth);
	const values = worth.map((one) => (largest > 0 ? Math.floor((one / largest) * largestValue) : 0));
	const needed = types.reduce((sum, { blanks }, type) => sum + blanks.length * values[type]!, 0);
	return { values, held: tables.fill(values), needed };
}

/** Whether so many pieces of each entry of the stock could hold all blanks, for all that the bound says. */
export const allows = ({ held, needed }: WorthBound, mix: readonly number[]): boolean =>
	mix.reduce((sum, count, sheet) => sum + count * held[sheet]!, 0) >= needed;
