/** Where a list differs from a former one: what stands before `from`, and from `to` on, is the same objects. */
export interface ChangedRange {
	readonly from: number;
	readonly to: number;
	/** How many places further all from `to` on stands than before: below 0 where items have gone. */
	readonly shift: number;
}

/** The shortest range in which a list differs from a former one. What is the same is only compared, by identity. */
export function changedRange(former: readonly unknown[], now: readonly unknown[]): ChangedRange {
	const shift = now.length - former.length;
	const shorter = Math.min(former.length, now.length);
	let from = 0;
	while (from < shorter && now[from] === former[from]) from++;
	let to = now.length;
	while (to > from && to - shift > from && now[to - 1] === former[to - 1 - shift]) to--;
	return { from, to, shift };
}

/** A list that follows item by item from another, where only those of a range are made again. */
export const withRange = <Item>(
	former: readonly Item[],
	{ from, to, shift }: ChangedRange,
	make: (place: number) => Item,
): readonly Item[] => [
	...former.slice(0, from),
	...Array.from({ length: to - from }, (_, at) => make(from + at)),
	...former.slice(to - shift),
];
