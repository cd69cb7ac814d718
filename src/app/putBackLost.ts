import type { LostReport } from '../core/device/lostShows.ts';
import { forgottenBefore } from '../core/device/shelf.ts';
import type { Show } from '../core/show/show.ts';
import { readDocument, readShowDocument } from '../files/showFile.ts';
import { type CopiedShow, putBack } from '../storage/putBack.ts';
import { type CopyAbout, openSecondCopies, type SecondCopies } from '../storage/secondCopies.ts';
import { backedUpAt } from './copyCount.svelte.ts';
import type { NotedShow, Notes } from './notedShows.ts';

/** What has come of putting shows back. */
export interface PuttingBack {
	/** What is to be said, with what was to be said before; undefined: nothing. */
	readonly report: LostReport | undefined;
	/** Whether any show was put back, a deleted one too. */
	readonly isChanged: boolean;
	/** Whether it failed: trying again on the same page would say it again with every edit. */
	readonly hasFailed?: boolean;
}

/**
 * Puts back the shows that are noted, or copied, and are not there; and notes what is to be said of that.
 * @param there the ids of all shows, the deleted ones too
 * @param now in milliseconds since 1970
 */
export async function putBackLost(
	databaseName: string,
	there: ReadonlySet<string>,
	notes: Notes,
	now = Date.now(),
): Promise<PuttingBack> {
	const isLacking = ({ id }: { readonly id: string }) => !there.has(id);
	const copies = await readCopies(openSecondCopies(databaseName), isLacking, now);
	const noted = notes.shows().filter(isLacking);
	try {
		const expected = noted.map(({ id }) => id);
		const restored = await putBack(databaseName, [...copies.values()], expected);
		const back = [...copies.values()].filter(({ show, about }) => restored.putBack.has(show.id) && !about.deletedAt);
		const found = {
			putBack: back.map(({ show: { id, name }, about: { at } }) => ({ id, name, at })),
			gone: noted.filter(({ id }) => restored.missing.has(id)),
		};
		notes.noteShows(notes.shows().filter(({ id }) => !restored.missing.has(id)));
		const report = noteReport(notes, found);
		return { report, isChanged: restored.putBack.size > 0 };
	} catch {
		// They stay noted and copied, and are put back the next time.
		const isNoted = ({ show }: CopiedShow) => noted.some(({ id }) => id === show.id);
		const notNoted = [...copies.values()].filter((copy) => copy.about.deletedAt === undefined && !isNoted(copy));
		notes.noteShows([...notes.shows(), ...notNoted.map(asNoted)]);
		const gone = [
			...noted.map((each) => (copies.has(each.id) ? { ...each, isCopied: true } : each)),
			...notNoted.map((copy) => ({ ...asNoted(copy), isCopied: true })),
		];
		return { report: noteReport(notes, { putBack: [], gone }), isChanged: false, hasFailed: true };
	}
}

const asNoted = ({ show: { id, name, rows }, about: { copied } }: CopiedShow): NotedShow => ({
	id,
	name,
	prints: rows.length,
	...backedUpAt({ copied }),
});

/** Adds to what is to be said already, which another tab may have noted; what is put back now is no longer said to be gone. */
function noteReport(notes: Notes, { putBack, gone }: LostReport): LostReport | undefined {
	const before = notes.lost();
	if (putBack.length + gone.length === 0) return before;
	const isNew = ({ id }: { readonly id: string }) => ![...putBack, ...gone].some((each) => each.id === id);
	const report = {
		putBack: [...(before?.putBack.filter(isNew) ?? []), ...putBack],
		gone: [...(before?.gone.filter(isNew) ?? []), ...gone],
	};
	notes.noteLost(report);
	return report;
}

/** The shows of the copies, by their ids: of more than one, the newest that can be read. */
async function readCopies(
	copies: SecondCopies,
	isWanted: (about: CopyAbout) => boolean,
	now: number,
): Promise<ReadonlyMap<string, CopiedShow>> {
	const found = new Map<string, CopiedShow>();
	const listed = (await copies.list().catch(() => [])).filter(isWanted);
	for (const about of listed.sort((one, other) => other.revision - one.revision || other.at - one.at)) {
		if (found.has(about.id)) continue;
		if (about.deletedAt !== undefined && about.deletedAt < forgottenBefore(now)) {
			await copies.remove(about).catch(() => undefined); // it was forgotten, as it should be
			continue;
		}
		const show = await readCopy(copies, about);
		if (show) found.set(about.id, { show, about });
	}
	return found;
}

/** The show of a copy; undefined where it cannot be read. A copy of an older version of the app is read as a file of it is. */
async function readCopy(copies: SecondCopies, about: CopyAbout): Promise<Show | undefined> {
	const text = await copies.read(about).catch(() => undefined);
	const document = readDocument(text ?? '');
	const show = 'value' in document ? readShowDocument(document.value) : document;
	return 'value' in show ? { id: about.id, ...show.value } : undefined;
}
