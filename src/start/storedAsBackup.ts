import type { Tick } from '../core/show/tick.ts';
import type { Row } from '../core/show/row.ts';
import type { Show } from '../core/show/show.ts';
import { backupOf, type BackedUpShow } from '../files/backupFile.ts';
import { readShowDocument, showDocument } from '../files/showFile.ts';
import type { ShowRecord } from '../storage/schema.ts';
import type { StoredRecord } from './readStored.ts';

/** What is stored, as one file. */
export interface StoredAsFile {
	readonly text: string;
	readonly shows: number;
	/** How many records are in the file only as they are stored, because they belong to no show that can be read. */
	readonly unread: number;
}

/** The stores of which a show is made; what else is stored is no part of one. */
const storesOfShows = ['shows', 'rows', 'ticks'];

/**
 * Makes a backup of what is stored, which the app can open. What is damaged is in it as it is, beside the shows, and so
 * nothing is lost.
 */
export function storedAsBackup(records: readonly StoredRecord[]): StoredAsFile {
	const ofShows = records.filter(({ store }) => storesOfShows.includes(store));
	const shows: BackedUpShow[] = [];
	const used = new Set<StoredRecord>();
	for (const record of ofShows.filter(({ store }) => store === 'shows')) {
		const parts = ofShows.filter(({ key }) => Array.isArray(key) && key[0] === record.key);
		const show = readShow(record, parts);
		if (!show) continue;
		shows.push(show);
		for (const each of [record, ...parts]) used.add(each);
	}
	const unread = ofShows.filter((record) => !used.has(record));
	const document = { ...backupOf(shows), ...(unread.length > 0 && { unread }) };
	return { text: `${JSON.stringify(document, null, '\t')}\n`, shows: shows.length, unread: unread.length };
}

/** A show of its record and its rows and ticks; undefined where they make none that could be opened again. */
function readShow({ key, value }: StoredRecord, parts: readonly StoredRecord[]): BackedUpShow | undefined {
	const valuesIn = (name: string) => parts.filter(({ store }) => store === name).map((part) => part.value);
	try {
		const { name, settings, cutSheets, isArchived = false } = value as ShowRecord;
		const rows = valuesIn('rows') as Row[];
		const ticks = valuesIn('ticks') as Tick[];
		const show: Show = { id: key as string, name, settings, rows, ticks, ...(cutSheets && { cutSheets }) };
		return 'value' in readShowDocument(showDocument(show)) ? { show, isArchived } : undefined;
	} catch {
		return undefined; // of no form that there ever was
	}
}
