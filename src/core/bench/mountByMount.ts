import { groupBy } from '../values/groupBy.ts';
import { byWidth, type OrderJob } from './orderJob.ts';
import { type BoardSetUp, changesAlong, changesBetween, setUpKey, widestFirst } from './setUps.ts';
import { thicknessesInTurn } from './settingBySetting.ts';
import type { SetCut } from './windowCuts.ts';

/** An order of the set-ups of one mount. */
interface Option {
	readonly first: BoardSetUp;
	readonly keys: readonly string[];
	/** Devices set again from its first set-up on. */
	readonly changes: number;
}

/**
 * The cuts in an order that finishes each mount before the next, boards of one thickness together as far as the taping lets
 * them. Next is always the mount that asks the fewest changes; of those that ask the same the first of the show, and an outer
 * mount before the inner one that is fitted to it. One that is taped behind its outer mount waits for that.
 * @param job the set-ups of the cuts
 */
export function mountByMount(cuts: readonly SetCut[], job: OrderJob): readonly SetCut[] {
	const sorted = byWidth(job);
	const runs = thicknessesInTurn(sorted);
	const runOf = new Map(
		runs.flatMap((run, turn) => run.map((place) => [setUpKey(sorted.setUps[place]!), turn] as const)),
	);
	const mounts = [...groupBy(cuts, ({ cut: { row, copy, part } }) => `${row} ${copy} ${part}`).values()];
	const stretches = groupBy(mounts, ([first]) => runOf.get(setUpKey(first!.setUp))!);
	const ordered: SetCut[] = [];
	const done = new Set<string>();
	for (const turn of runs.keys()) {
		const kinds = kindsOf(stretches.get(turn)!);
		while (kinds.size > 0) {
			const { kind, option } = nextOf(kinds, ordered.at(-1)?.setUp, done);
			const { mount } = kind.waiting[kind.done++]!;
			if (kind.done === kind.waiting.length) kinds.delete(kind);
			if (mount[0]!.cut.part === 'mount') done.add(coupleOf(mount[0]!));
			const bySetUp = groupBy(mount, ({ setUp }) => setUpKey(setUp));
			for (const key of option.keys) ordered.push(...bySetUp.get(key)!);
		}
	}
	return ordered;
}

/** Names the outer and the inner mount of one copy of a print. */
const coupleOf = ({ cut: { row, copy } }: Pick<SetCut, 'cut'>): string => `${row} ${copy}`;

/** Mounts with the same set-ups: whatever one of them asks, the others ask too. */
interface Kind {
	readonly options: readonly Option[];
	readonly waiting: readonly { readonly mount: readonly SetCut[]; readonly place: number }[];
	/** How many of them have had their turn. */
	done: number;
}

function kindsOf(mounts: readonly (readonly SetCut[])[]): Set<Kind> {
	const placed = mounts.map((mount, place) => ({ mount, place }));
	const kinds = groupBy(placed, ({ mount }) => mount.map(({ setUp }) => setUpKey(setUp)).join(';')).values();
	return new Set([...kinds].map((waiting) => ({ options: optionsOf(waiting[0]!.mount), waiting, done: 0 })));
}

/**
 * The kind whose next mount asks the fewest changes, the first of the show where several do, and the order for it. An outer
 * mount stands before its inner one in the show, so the first that is left never waits for another.
 * @param done the outer mounts that are cut
 */
function nextOf(kinds: ReadonlySet<Kind>, from: BoardSetUp | undefined, done: ReadonlySet<string>) {
	let best: { kind: Kind; option: Option; asked: number; place: number } | undefined;
	for (const kind of kinds) {
		const { mount, place } = kind.waiting[kind.done]!;
		if (mount[0]!.setUp.isTaped && !done.has(coupleOf(mount[0]!))) continue;
		for (const option of kind.options) {
			const asked = changesFrom(from, option);
			const isBetter = !best || asked < best.asked || (asked === best.asked && place < best.place);
			if (isBetter) best = { kind, option, asked, place };
		}
	}
	return best!;
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
