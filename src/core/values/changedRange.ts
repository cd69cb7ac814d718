/** Where a list differs from a former one: what stands before `from`, and from `to` on, is the same objects. */
export interface ChangedRange {
	readonly from: number;
	readonly to: number;
	/** How many places further all from `to` on stands than before: below 0 where items have gone. */
	readonly shift: number;
}

/**
 * How lists were made of others, so that of thousands of items nothing is compared that was not made again. A former list is
 * held weakly: each step of a long session has one.
 */
const made = new WeakMap<
	readonly unknown[],
	{ readonly former: WeakRef<readonly unknown[]>; readonly range: ChangedRange }
>();

/** Notes that a list was made of another and differs from it in no more than a range. @returns the list */
export function madeOf<List extends readonly unknown[]>(former: List, range: ChangedRange, now: List): List {
	made.set(now, { former: new WeakRef(former), range });
	return now;
}

/**
 * The range in which a list differs from a former one: where it was made of that, what was made again, else the shortest.
 * What is the same is only compared, by identity.
 */
export function changedRange(former: readonly unknown[], now: readonly unknown[]): ChangedRange {
	const known = made.get(now);
	if (known?.former.deref() === former) return known.range;
	const shift = now.length - former.length;
	const shorter = Math.min(former.length, now.length);
	let from = 0;
	while (from < shorter && now[from] === former[from]) from++;
	let to = now.length;
	while (to > from && to - shift > from && now[to - 1] === former[to - 1 - shift]) to--;
	return { from, to, shift };
}

/** A list that follows item by item from another, where only those of a range are made again. */
export function withRange<Item>(
	former: readonly Item[],
	range: ChangedRange,
	make: (place: number) => Item,
): readonly Item[] {
	const { from, to, shift } = range;
	const again = Array.from({ length: to - from }, (_, at) => make(from + at));
	return madeOf(former, range, former.slice(0, from).concat(again, former.slice(to - shift)));
}
