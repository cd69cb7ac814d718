import { isRecord, type PlainRecord } from '../values/isRecord.ts';
import { isSameValue } from '../values/isSameValue.ts';
import type { PartShape } from './partShape.ts';

/** What an edit does to one entry of a record; undefined: the entry is absent. */
export interface EntryDiff {
	readonly key: string;
	readonly before: unknown;
	readonly after: unknown;
}

const isEntryDiff = (diff: unknown): diff is EntryDiff => isRecord(diff) && typeof diff['key'] === 'string';

/** What changes from one record to another, entry by entry. */
export function entryDiffs(from: PlainRecord, to: PlainRecord): readonly EntryDiff[] {
	const [before, after] = [new Map(Object.entries(from)), new Map(Object.entries(to))];
	return [...new Set([...before.keys(), ...after.keys()])]
		.map((key) => ({ key, before: before.get(key), after: after.get(key) }))
		.filter((diff) => !isSameValue(diff.before, diff.after));
}

/** A part that is a record: of two that change it both stand, in one entry the last. At most one diff an entry. */
export const recordByKey = (): PartShape<PlainRecord, readonly EntryDiff[]> => ({
	compare(from, to) {
		const diffs = entryDiffs(from, to);
		return diffs.length === 0 ? undefined : diffs;
	},
	isEmpty: (diffs) => diffs.length === 0,
	sides(diffs) {
		if (!Array.isArray(diffs)) return undefined;
		const entries = diffs.flatMap((diff) => (isEntryDiff(diff) ? [diff] : []));
		if (entries.length < diffs.length) return undefined;
		const side = (name: 'before' | 'after'): PlainRecord =>
			Object.fromEntries(
				entries.flatMap((diff) => (diff[name] === undefined ? [] : [[diff.key, diff[name]] as const])),
			);
		return [side('before'), side('after')];
	},
	apply(record, diffs) {
		const entries = new Map(Object.entries(record));
		for (const { key, after } of diffs) {
			if (after === undefined) entries.delete(key);
			else entries.set(key, after);
		}
		return Object.fromEntries(entries);
	},
	invert: (diffs) => diffs.map(({ key, before, after }) => ({ key, before: after, after: before })),
	compose(first, second) {
		const byKey = new Map(first.map((diff) => [diff.key, diff]));
		for (const diff of second) byKey.set(diff.key, { ...diff, before: (byKey.get(diff.key) ?? diff).before });
		return [...byKey.values()];
	},
	rebase(diffs, record) {
		const entries = new Map(Object.entries(record));
		return diffs.map((diff) => ({ ...diff, before: entries.get(diff.key) }));
	},
	keepObjects: (old, read) => (isSameValue(old, read) ? old : read),
});
