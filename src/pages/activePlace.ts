/**
 * Which of some things that are done one after the other is active, by its place from 0: the one that somebody went to,
 * else the first that is still to be done, else the last; -1 where there are none.
 */
export function activePlace<Thing>(
	things: readonly Thing[],
	isAt: (thing: Thing) => boolean,
	isDone: (thing: Thing) => boolean,
): number {
	const found = things.findIndex(isAt);
	if (found >= 0) return found;
	const open = things.findIndex((thing) => !isDone(thing));
	return open >= 0 ? open : things.length - 1;
}
