import type { LostReport, ShowGone, ShowPutBack } from '../core/device/lostShows.ts';
import { isRecord } from '../core/values/isRecord.ts';

/**
 * A show that this device has, as it is noted outside the database, so that the loss of the database is seen. What it says
 * of the show is what would be said of it then.
 */
export type NotedShow = ShowGone;

/** Notes that a device keeps outside the database; where it keeps none, they are empty. */
export function openNotes(databaseName: string) {
	const keptAs = { shows: `${databaseName} shows`, lost: `${databaseName} lost shows` };

	return {
		/** The shows that this device has, as last noted. */
		shows: (): readonly NotedShow[] => itemsOf(read(keptAs.shows)?.['shows'], asGone),
		noteShows: (shows: readonly NotedShow[]): void => keep(keptAs.shows, shows.length > 0 ? { shows } : undefined),

		/** What was lost, and has not been read yet. */
		lost(): LostReport | undefined {
			const kept = read(keptAs.lost);
			if (!kept) return undefined;
			const report = { putBack: itemsOf(kept['putBack'], asPutBack), gone: itemsOf(kept['gone'], asGone) };
			return report.putBack.length + report.gone.length > 0 ? report : undefined;
		},
		noteLost: (report: LostReport | undefined): void => keep(keptAs.lost, report),
	};
}

/** See `openNotes`. */
export type Notes = ReturnType<typeof openNotes>;

function read(key: string): Readonly<Record<string, unknown>> | undefined {
	try {
		const kept = JSON.parse(localStorage.getItem(key) ?? 'null') as unknown;
		return isRecord(kept) ? kept : undefined;
	} catch {
		return undefined; // nothing is kept for this page, or something else is kept there
	}
}

function keep(key: string, value: object | undefined): void {
	try {
		const text = value && JSON.stringify(value);
		if (text === undefined) localStorage.removeItem(key);
		else if (localStorage.getItem(key) !== text) localStorage.setItem(key, text);
	} catch {
		// A browser that keeps nothing for this page has said so elsewhere.
	}
}

/** The items of a list that can be used: a note may have been kept by another version of the app. */
const itemsOf = <Item>(
	list: unknown,
	asItem: (item: Readonly<Record<string, unknown>>) => Item | undefined,
): readonly Item[] =>
	Array.isArray(list) ? list.flatMap((item) => (isRecord(item) ? asItem(item) : undefined) ?? []) : [];

function asGone({ id, name, prints, copiedAt, isCopied }: Readonly<Record<string, unknown>>): ShowGone | undefined {
	if (typeof id !== 'string') return undefined;
	return {
		id,
		name: typeof name === 'string' ? name : '',
		prints: typeof prints === 'number' ? prints : 0,
		...(typeof copiedAt === 'number' && { copiedAt }),
		...(isCopied === true && { isCopied }),
	};
}

const asPutBack = ({ id, name, at }: Readonly<Record<string, unknown>>): ShowPutBack | undefined =>
	typeof id === 'string' && typeof at === 'number' ? { id, name: typeof name === 'string' ? name : '', at } : undefined;
