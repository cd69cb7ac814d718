import { applyTo, type Edit } from '../core/show/edit.ts';
import { isBlankRow } from '../core/show/blankRow.ts';
import { everyPart, heldOf, showOf } from '../core/show/everyPart.ts';
import { type ItemDiff, itemOf } from '../core/show/keyedList.ts';
import type { PartApart } from '../core/show/parts.ts';
import type { Row } from '../core/show/row.ts';
import type { Show } from '../core/show/show.ts';
import { getSound } from './putAside.ts';
import { type KeyInShow, type Schema, type ShowRecord, storesApart } from './schema.ts';
import { inSlices, rangeOfShow, type Requests, type Writing } from './writing.ts';

type Item = Schema[PartApart]['value'];

const partsApart = everyPart.flatMap(([name, { apart }]) => (apart ? [{ name: name as PartApart, items: apart }] : []));
const partsInRecord = everyPart.filter(([, { apart }]) => !apart);

/**
 * The parts of a show as they are kept.
 * @param itemsIn reads the show's items in a store
 */
export async function readParts(
	record: ShowRecord,
	itemsIn: (store: PartApart) => Promise<readonly Item[]>,
): Promise<Show> {
	const read = partsApart.map(async ({ name, items: { inOrder } }) => {
		const items = await itemsIn(name);
		return [name, inOrder ? items.toSorted(inOrder) : items] as const;
	});
	const apart = Object.fromEntries(await Promise.all(read));
	return { id: record.id, ...showOf({ ...record, ...apart }) };
}

/** Makes an edit on what is kept of a show. @returns the record as the edit leaves it, which is still to be put */
export async function applyToParts(
	tx: Writing,
	request: Requests,
	record: ShowRecord,
	edit: Edit,
): Promise<ShowRecord> {
	let blankRows = record.blankRows ?? 0;
	for (const { name, items } of partsApart) {
		const store = tx.objectStore(name);
		const diffs: readonly ItemDiff<object>[] = edit[name] ?? [];
		const keyOf = (diff: ItemDiff<object>): KeyInShow => [record.id, ...items.keyOf(itemOf(diff))];
		const nothing = Promise.resolve(undefined);
		const current = await Promise.all(
			diffs.map((diff) => (diff.before ? getSound(tx, request, name, keyOf(diff)) : nothing)),
		);
		const after = diffs.map((diff, place) => items.merge(current[place], diff));
		if (name === 'rows') blankRows += countBlank(after) - countBlank(current);
		await inSlices([...diffs.entries()], request, ([place, diff]) => {
			const item = after[place];
			return item ? store.put(item as Item, keyOf(diff)) : store.delete(keyOf(diff));
		});
	}
	const inRecord = { ...edit, ...Object.fromEntries(storesApart.map((name) => [name, []])) };
	return withBlankRows(applyTo(record, inRecord), blankRows);
}

/**
 * Puts the parts of a show in the place of what is kept of them.
 * @param known what is kept of the show besides; parts among it are passed over
 */
export async function putParts(
	tx: Writing,
	request: Requests,
	known: Omit<ShowRecord, keyof Show> & Partial<Show>,
	show: Show,
): Promise<void> {
	const record = new Map<string, unknown>(Object.entries(known));
	for (const [name, part] of partsInRecord) {
		record.delete(name);
		const value = heldOf(show, name, part);
		if (value !== undefined) record.set(name, value);
	}
	const whole = withBlankRows(Object.fromEntries(record) as unknown as ShowRecord, countBlank(show.rows));
	request(tx.objectStore('shows').put(whole));
	for (const name of storesApart) request(tx.objectStore(name).delete(rangeOfShow(show.id)));
	for (const { name, items } of partsApart)
		await inSlices(show[name] ?? [], request, (item: Item) =>
			tx.objectStore(name).put(item, [show.id, ...items.keyOf(item)]),
		);
}

const countBlank = (rows: readonly (object | undefined)[]): number =>
	rows.filter((row) => row !== undefined && isBlankRow(row as Row)).length;

/** A record that says how many of the rows are blank; nothing where none is. */
function withBlankRows({ blankRows: _, ...record }: ShowRecord, blankRows: number): ShowRecord {
	return blankRows > 0 ? { ...record, blankRows } : record;
}
