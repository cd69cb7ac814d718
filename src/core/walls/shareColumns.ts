/** What of a wall is free for columns of prints: lengths in units, halves of units among them. */
export interface Stretch {
	readonly length: number;
	/** Between two columns. Undefined: what makes all gaps, and both ends, alike. */
	readonly gap: number | undefined;
}

/** How many columns, in order, come into each stretch. */
export interface Shares {
	readonly counts: readonly number[];
	/** How many of the last stretch fit in none. */
	readonly over: number;
}

/** An exact quotient; `by` is above zero. */
interface Quotient {
	readonly value: number;
	readonly by: number;
}

const compare = (a: Quotient, b: Quotient): number => a.value * b.by - b.value * a.by;

/** What a stretch has between its columns, or with a gap of its own at its ends; below zero where they do not fit. */
export const freeIn = ({ length, gap }: Stretch, widths: number, count: number): Quotient =>
	gap === undefined ? { value: length - widths, by: count + 1 } : { value: length - widths - (count - 1) * gap, by: 2 };

/**
 * Shares columns out, in order, over stretches: so that the smallest gap is largest, then the largest smallest, then the
 * earlier stretch has more. A stretch in which nothing hangs has no gap. Columns that fit in none come into the last one.
 *
 *     |  1   2   3  |door|   4   5   |     counts 3, 2
 *
 * Found by dynamic programming over (stretch, columns before it), first for the smallest gap, then with that as a bound
 * for the largest, then for the counts; so it is the best there is. Tests compare it with trying all.
 */
export function shareColumns(stretches: readonly Stretch[], widths: readonly number[]): Shares {
	if (stretches.length === 0) return { counts: [], over: widths.length };
	const sums = [0];
	for (const width of widths) sums.push(sums.at(-1)! + width);
	const free = (stretch: number, from: number, count: number) =>
		freeIn(stretches[stretch]!, sums[from + count]! - sums[from]!, count);
	const total = fitting(stretches.length, widths.length, free);
	const smallest = bestBound(stretches.length, total, free, (gap) => gap, 1);
	const largest = bestBound(
		stretches.length,
		total,
		free,
		(gap) => (smallest === undefined || compare(gap, smallest) >= 0 ? gap : undefined),
		-1,
	);
	const isWithin = (gap: Quotient) =>
		smallest === undefined || largest === undefined || (compare(gap, smallest) >= 0 && compare(gap, largest) <= 0);
	const counts = firstCounts(stretches.length, total, free, isWithin);
	const over = widths.length - total;
	counts[counts.length - 1]! += over;
	return { counts, over };
}

type Free = (stretch: number, from: number, count: number) => Quotient;

const fits = (gap: Quotient) => gap.value >= 0;

/** How many of the columns find room, each stretch filled with as many as go in: no other way has more. */
function fitting(stretches: number, columns: number, free: Free): number {
	let placed = 0;
	for (let stretch = 0; stretch < stretches; stretch++) {
		let count = 0;
		while (placed + count < columns && fits(free(stretch, placed, count + 1))) count++;
		placed += count;
	}
	return placed;
}

/**
 * The best that the worst gap can be.
 * @param allowed the gap where it may be, else undefined
 * @param way 1: the smallest gap is to be large; -1: the largest is to be small
 * @returns undefined where nothing hangs
 */
function bestBound(
	stretches: number,
	total: number,
	free: Free,
	allowed: (gap: Quotient) => Quotient | undefined,
	way: 1 | -1,
): Quotient | undefined {
	const worse = (a: Quotient | undefined, b: Quotient) => (a === undefined || way * compare(b, a) < 0 ? b : a);
	/** For each number of columns placed: whether they can be, and the worst gap of the best way to. */
	let before = new Map<number, Quotient | undefined>([[0, undefined]]);
	for (let stretch = 0; stretch < stretches; stretch++) {
		const after = new Map(before);
		for (const [placed, worst] of before)
			for (let count = 1; placed + count <= total; count++) {
				const gap = free(stretch, placed, count);
				if (!fits(gap)) break;
				if (allowed(gap) === undefined) continue;
				const now = worse(worst, gap);
				const known = after.get(placed + count);
				if (!after.has(placed + count) || (known !== undefined && way * compare(now, known) > 0))
					after.set(placed + count, now);
			}
		before = after;
	}
	return before.get(total);
}

/** The counts that give the earliest stretch the most, then the next, with every gap as it may be. */
function firstCounts(stretches: number, total: number, free: Free, isAllowed: (gap: Quotient) => boolean): number[] {
	/** For each stretch, the numbers of columns before it from which the rest finds room. */
	const open: Set<number>[] = [];
	open[stretches] = new Set([total]);
	for (let stretch = stretches - 1; stretch >= 0; stretch--) {
		const from = new Set<number>();
		for (let placed = 0; placed <= total; placed++)
			for (let count = 0; placed + count <= total; count++) {
				if (count > 0 && !fits(free(stretch, placed, count))) break;
				if (!open[stretch + 1]!.has(placed + count)) continue;
				if (count > 0 && !isAllowed(free(stretch, placed, count))) continue;
				from.add(placed);
				break;
			}
		open[stretch] = from;
	}
	const counts: number[] = [];
	let placed = 0;
	for (let stretch = 0; stretch < stretches; stretch++) {
		let best = 0;
		for (let count = 1; placed + count <= total; count++) {
			const gap = free(stretch, placed, count);
			if (!fits(gap)) break;
			if (isAllowed(gap) && open[stretch + 1]!.has(placed + count)) best = count;
		}
		counts.push(best);
		placed += best;
	}
	return counts;
}
