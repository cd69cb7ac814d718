import { groupBy } from './groupBy.ts';
import { type BoardSetUp, changesAlong, changesBetween, setUpKey, widestFirst } from './setUps.ts';
import type { SetCut } from './windowCuts.ts';

/** An order of the set-ups of one mount. */
interface Option {
	readonly first: BoardSetUp;
	readonly keys: readonly string[];
	/** Devices set anew from its first set-up on. */
	readonly changes: number;
}

/**
 * The cuts in an order that finishes each mount before the next, boards of one thickness together. Next is always the
 * mount that asks the fewest changes; of those that ask the same the first of the show, and an outer mount before the
 * inner one that is fitted to it.
 */
export function mountByMount(cuts: readonly SetCut[]): readonly SetCut[] {
	const known = new Map<string, readonly Option[]>();
	const mounts = [...groupBy(cuts, ({ cut: { row, copy, part } }) => `${row} ${copy} ${part}`).values()].map(
		(mount) => {
			const key = mount.map(({ setUp }) => setUpKey(setUp)).join(';');
			if (!known.has(key)) known.set(key, optionsOf(mount));
			return { mount, options: known.get(key)! };
		},
	);
	const byThickness = groupBy(mounts, ({ mount: [first] }) => first!.setUp.thickness);
	const ordered: SetCut[] = [];
	for (const [, left] of [...byThickness].sort(([a], [b]) => (a ?? 0) - (b ?? 0)))
		while (left.length > 0) {
			const from = ordered.at(-1)?.setUp;
			const asked = left.map(({ options }) => Math.min(...options.map((option) => changesFrom(from, option))));
			const place = asked.indexOf(Math.min(...asked));
			const [{ mount, options }] = left.splice(place, 1) as [(typeof left)[number]];
			const option = options.find((each) => changesFrom(from, each) === asked[place])!;
			const bySetUp = groupBy(mount, ({ setUp }) => setUpKey(setUp));
			ordered.push(...option.keys.flatMap((key) => bySetUp.get(key)!));
		}
	return ordered;
}

const changesFrom = (from: BoardSetUp | undefined, { first, changes }: Option): number =>
	changesBetween(from, first) + changes;

/** All orders of the set-ups of one mount, the widest first leading. */
function optionsOf(mount: readonly SetCut[]): readonly Option[] {
	const groups = [...groupBy(mount, ({ setUp }) => setUpKey(setUp)).values()];
	groups.sort(([a], [b]) => widestFirst(a!.setUp, b!.setUp));
	return ordersOf(groups).map((order) => {
		const setUps = order.map(([first]) => first!.setUp);
		const first = setUps[0]!;
		return { first, keys: setUps.map(setUpKey), changes: changesAlong(setUps) - changesBetween(undefined, first) };
	});
}

/** All orders of a few things, the one given first. */
function ordersOf<Item>(items: readonly Item[]): Item[][] {
	if (items.length <= 1) return [[...items]];
	return items.flatMap((item, place) =>
		ordersOf([...items.slice(0, place), ...items.slice(place + 1)]).map((rest) => [item, ...rest]),
	);
}
