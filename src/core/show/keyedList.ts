import { isRecord } from '../values/isRecord.ts';
import { madeOf } from '../values/changedRange.ts';
import { isSameValue } from '../values/isSameValue.ts';
import type { PartShape } from './partShape.ts';

/** What an edit does to one item of a list: adds it (no `before`), removes it (no `after`) or changes it. */
export interface ItemDiff<Item> {
	readonly before?: Item;
	readonly after?: Item;
}

/** What a list needs to know of its items. Written as methods, so that a list of anything is one of unknown items. */
export interface KeyedItems<Item> {
	/** Names an item within its show. */
	keyOf(item: Item): readonly (string | number)[];
	/**
	 * An item after a diff; undefined where the diff removes it.
	 * @param current the item as it is now, which may be another than the diff's `before`; undefined where there is none
	 */
	merge(current: Item | undefined, diff: ItemDiff<Item>): Item | undefined;
	/** The sequence in which items stand; without it each new one comes last. */
	inOrder?(this: void, one: Item, other: Item): number;
}

/** For `merge`: an item is changed as a whole, and of two that change it the last wins. */
export const replaceItem = <Item>(_current: Item | undefined, { after }: ItemDiff<Item>): Item | undefined => after;

const isItemDiff = (diff: unknown): diff is ItemDiff<unknown> =>
	isRecord(diff) && ('before' in diff || 'after' in diff);

/** A diff without what is absent in it. */
export const itemDiff = <Item>(before: Item | undefined, after: Item | undefined): ItemDiff<Item> => ({
	...(before !== undefined && { before }),
	...(after !== undefined && { after }),
});

/** The item that a diff is about. */
export const itemOf = <Item>({ before, after }: ItemDiff<Item>): Item => (before ?? after)!;

/**
 * Where the items stand that diffs change, if each is there as its diff has it, in this sequence; else undefined. Nothing
 * but their identity is looked at: a key asks nothing of the thousands of rows that it leaves as they are.
 */
function placesOf<Item>(list: readonly Item[], diffs: readonly ItemDiff<Item>[]): readonly number[] | undefined {
	const places: number[] = [];
	for (const { before, after } of diffs) {
		const place = before && after ? list.indexOf(before, (places.at(-1) ?? -1) + 1) : -1;
		if (place < 0) return undefined;
		places.push(place);
	}
	return places;
}

/** A part that is a list of items with keys of their own. At most one diff an item. */
export function keyedList<Item extends object>(
	items: KeyedItems<Item>,
): PartShape<readonly Item[], readonly ItemDiff<Item>[]> {
	const keyOf = (item: Item): string => {
		const [first, ...others] = items.keyOf(item);
		return others.length === 0 ? `${first}` : JSON.stringify([first, ...others]);
	};
	const byKey = (list: readonly Item[]) => new Map(list.map((item) => [keyOf(item), item]));
	const keyOfDiff = (diff: ItemDiff<Item>) => keyOf(itemOf(diff));
	const isSomething = ({ before, after }: ItemDiff<Item>) => before !== undefined || after !== undefined;
	const isInPlace = (item: Item, former: Item) => items.inOrder === undefined || items.inOrder(former, item) === 0;

	return {
		compare(from, to) {
			const next = byKey(to);
			const kept = from.map((before) => {
				const after = next.get(keyOf(before));
				next.delete(keyOf(before));
				return itemDiff(before, after);
			});
			const diffs = [
				...kept.filter(({ before, after }) => !isSameValue(before, after)),
				...[...next.values()].map((after) => ({ after })),
			];
			return diffs.length === 0 ? undefined : diffs;
		},
		isEmpty: (diffs) => diffs.length === 0,
		sides(diffs) {
			if (!Array.isArray(diffs)) return undefined;
			const items = diffs.flatMap((diff) => (isItemDiff(diff) ? [diff] : []));
			if (items.length < diffs.length) return undefined;
			// Those before are of different items, and so are those after.
			const side = (name: keyof ItemDiff<unknown>) =>
				items.flatMap((diff) => (diff[name] === undefined ? [] : [diff[name]]));
			return [side('before'), side('after')];
		},
		apply(list, diffs) {
			const places = placesOf(list, diffs);
			const merged = places?.map((place, at) => items.merge(list[place], diffs[at]!));
			if (places && merged!.every((item, at) => item && isInPlace(item, list[places[at]!]!))) {
				const after = [...list];
				for (const [at, place] of places.entries()) after[place] = merged![at]!;
				const [from = 0, to = -1] = [places[0], places.at(-1)];
				return madeOf(list, { from, to: to + 1, shift: 0 }, after);
			}
			const open = new Map(diffs.map((diff) => [keyOfDiff(diff), diff]));
			const after: Item[] = [];
			for (const item of list) {
				const diff = open.get(keyOf(item));
				const merged = diff ? items.merge(item, diff) : item;
				if (merged) after.push(merged);
				open.delete(keyOf(item));
			}
			for (const diff of open.values()) {
				const added = items.merge(undefined, diff);
				if (added) after.push(added);
			}
			return items.inOrder ? after.sort(items.inOrder) : after;
		},
		invert: (diffs) => diffs.map(({ before, after }) => itemDiff(after, before)),
		compose(first, second) {
			const diffs = new Map(first.map((diff) => [keyOfDiff(diff), diff]));
			for (const diff of second) {
				const { before } = diffs.get(keyOfDiff(diff)) ?? diff;
				diffs.set(keyOfDiff(diff), itemDiff(before, diff.after));
			}
			return [...diffs.values()].filter(isSomething);
		},
		rebase(diffs, list) {
			const touched = new Set(diffs.map(keyOfDiff));
			const current = placesOf(list, diffs) ? undefined : byKey(list.filter((item) => touched.has(keyOf(item))));
			return diffs
				.map((diff) => {
					const before = current ? current.get(keyOfDiff(diff)) : diff.before;
					return itemDiff(before, items.merge(before, diff));
				})
				.filter(({ before, after }) => before !== after);
		},
		keepObjects(old, read) {
			const known = byKey(old);
			const kept = read.map((item) => {
				const before = known.get(keyOf(item));
				return before && isSameValue(before, item) ? before : item;
			});
			return kept.length === old.length && kept.every((item, place) => item === old[place]) ? old : kept;
		},
	};
}
