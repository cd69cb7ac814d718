import { isRecord, type PlainRecord } from '../values/isRecord.ts';
import { isSameValue } from '../values/isSameValue.ts';
import type { ItemDiff } from './keyedList.ts';
import type { Row } from './row.ts';

/**
 * A row after a diff. Where the row is no longer the diff's `before`, only the cells that the diff changes are changed:
 * two tabs that type into different cells of one row both keep what was typed.
 * @param current the row as it is now; undefined where there is none
 * @returns undefined where the diff removes the row
 */
export function mergeRow(current: Row | undefined, { before, after }: ItemDiff<Row>): Row | undefined {
	if (!after || !before || !current || current === before) return after;
	const merged = mergeRecord({ ...current }, { ...before }, { ...after }, mergeField);
	return { typed: {}, ...merged } as unknown as Row;
}

type MergeValue = (current: unknown, before: unknown, after: unknown) => unknown;

/** A field of a row: of a record, such as the typed cells, its entries each; absent where none is left. */
function mergeField(current: unknown, before: unknown, after: unknown): unknown {
	const isByEntry = [current, before, after].every((value) => value === undefined || isRecord(value));
	if (!isByEntry) return mergeValue(current, before, after);
	const merged = mergeRecord(asRecord(current), asRecord(before), asRecord(after), mergeValue);
	return Object.keys(merged).length > 0 ? merged : undefined;
}

const asRecord = (value: unknown): PlainRecord => (isRecord(value) ? value : {});

const mergeValue: MergeValue = (current, before, after) => (isSameValue(before, after) ? current : after);

/** Records merged entry by entry; an entry that is undefined is absent. */
function mergeRecord(current: PlainRecord, before: PlainRecord, after: PlainRecord, merge: MergeValue): PlainRecord {
	const [now, old, next] = [current, before, after].map((record) => new Map(Object.entries(record)));
	const keys = new Set([...now!.keys(), ...next!.keys()]);
	const entries = [...keys].map((key) => [key, merge(now!.get(key), old!.get(key), next!.get(key))] as const);
	return Object.fromEntries(entries.filter(([, value]) => value !== undefined));
}
