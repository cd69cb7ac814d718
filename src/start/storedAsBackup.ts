import { everyPart, showOf } from '../core/show/everyPart.ts';
import type { Show } from '../core/show/show.ts';
import { asJson } from '../files/asJson.ts';
import { backupOf, type BackedUpShow } from '../files/backupFile.ts';
import { readShowDocument, showDocument } from '../files/showFile.ts';
import { damageIn } from '../storage/damage.ts';
import type { StoredRecord } from './readStored.ts';

/** What is stored, as one file. */
export interface StoredAsFile {
	readonly text: string;
	readonly shows: number;
	/** How many records are in the file as they are stored: what of them can be used, if anything, is in a show. */
	readonly unread: number;
}

/** The stores of the parts of a show that are kept item by item. */
const storesApart = everyPart.flatMap(([name, { apart }]) => (apart ? [{ name, inOrder: apart.inOrder }] : []));

/** The stores of which shows are made, and that of what no show could be made of; what else is stored is no part of one. */
const storesToKeep = ['shows', ...storesApart.map(({ name }) => name), 'putAside'];

/** A record, and what of it can be used: all where it is sound, `undefined` where nothing is. */
interface Judged {
	readonly record: StoredRecord;
	readonly usable: unknown;
}

/**
 * Makes a backup of what is stored, which the app can open. What is damaged is in it as it is, beside the shows, and so
 * nothing is lost.
 */
export function storedAsBackup(records: readonly StoredRecord[]): StoredAsFile {
	const judged = records.filter(({ store }) => storesToKeep.includes(store)).map(judge);
	const shows: BackedUpShow[] = [];
	const whole = new Set<StoredRecord>();
	for (const each of judged.filter(({ record }) => record.store === 'shows')) {
		const parts = judged.filter(({ record: { key } }) => Array.isArray(key) && key[0] === each.record.key);
		const show = readShow(each, parts);
		if (!show) continue;
		shows.push(show);
		for (const { record, usable } of [each, ...parts]) if (usable === record.value) whole.add(record);
	}
	const unread = judged
		.filter(({ record }) => !whole.has(record))
		.map(({ record: { store, key, value } }) => ({ store, key: asJson(key), value: asJson(value) }));
	const document = { ...backupOf(shows), ...(unread.length > 0 && { unread }) };
	return { text: `${JSON.stringify(document, null, '\t')}\n`, shows: shows.length, unread: unread.length };
}

function judge(record: StoredRecord): Judged {
	const damage = damageIn(record.store, record.key, record.value);
	return { record, usable: damage ? damage.instead : record.value };
}

/** A show of what can be used of its record and its items; undefined where that makes none that could be opened again. */
function readShow({ record, usable }: Judged, parts: readonly Judged[]): BackedUpShow | undefined {
	const itemsIn = (store: string) =>
		parts.flatMap((part) => (part.record.store === store && part.usable !== undefined ? [part.usable] : []));
	try {
		const apart = storesApart.map(({ name, inOrder }) => {
			const items = itemsIn(name) as object[];
			return [name, inOrder ? items.toSorted(inOrder) : items] as const;
		});
		const held = { ...(usable as object), ...Object.fromEntries(apart) };
		const show: Show = { id: record.key as string, ...showOf(held) };
		const isArchived = (usable as { readonly isArchived?: boolean }).isArchived ?? false;
		const document = showDocument(show);
		JSON.stringify(document); // settings and views may hold what no file can
		return 'value' in readShowDocument(document) ? { show, isArchived } : undefined;
	} catch {
		return undefined; // of no form that there ever was
	}
}
