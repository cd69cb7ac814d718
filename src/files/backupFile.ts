import type { Reading } from '../core/length/reading.ts';
import { isRecord } from '../core/values/isRecord.ts';
import type { Show } from '../core/show/show.ts';
import { type Stored, versionWords } from '../core/show/upgrade.ts';
import { jsonPieces } from './jsonPieces.ts';
import { readDocument, readShowDocument, showDocument } from './showFile.ts';

/** What marks a backup of all shows. */
export const backupFormat = 'evenhang-backup';

/** The form in which backups are written. Each show in one has the version of a show file. */
export const backupVersion = 1;

/** A show of a backup. */
export interface BackedUpShow {
	readonly show: Show;
	/** Whether it was put away. */
	readonly isArchived: boolean;
}

/** Writes shows into one file, each with everything that it is. */
export const writeBackup = (shows: readonly BackedUpShow[]): string => [...writingBackup(shows)].join('');

/** Writes them in pieces that take little time each. */
export function* writingBackup(shows: readonly BackedUpShow[]): Generator<string, void, undefined> {
	yield* jsonPieces(backupOf(shows));
	yield '\n';
}

/** What a backup holds, before it is written as text. */
export const backupOf = (shows: readonly BackedUpShow[]): Stored => ({
	format: backupFormat,
	version: backupVersion,
	shows: shows.map(({ show, isArchived }) => ({
		id: show.id,
		...(isArchived && { isArchived }),
		...showDocument(show),
	})),
});

/** Whether a document is a backup, whole or damaged. */
export const isBackup = (document: Stored): boolean => document['format'] === backupFormat;

/**
 * Reads a backup.
 * @returns a problem, one sentence that names the show, if it is damaged, newer, or no backup
 */
export function readBackup(text: string): Reading<readonly BackedUpShow[]> {
	const document = readDocument(text);
	return 'problem' in document ? document : readBackupDocument(document.value);
}

/** Reads what a backup holds. */
export function readBackupDocument(document: Stored): Reading<readonly BackedUpShow[]> {
	const { version, shows } = document;
	if (!isBackup(document)) return { problem: 'this is no backup: it is not marked as one' };
	if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
		return {
			problem: `this backup cannot be opened: its version is ${versionWords(version)}`,
		};
	if (version > backupVersion)
		return {
			problem: `this backup cannot be opened: it is of version ${version}, newer than the ${backupVersion} that this app opens; update the app, then open it again`,
		};
	if (!Array.isArray(shows)) return { problem: 'this backup is damaged: shows is not a list' };
	const all: BackedUpShow[] = [];
	const ids = new Set<string>();
	for (const [place, stored] of shows.entries()) {
		if (!isRecord(stored)) return { problem: `this backup is damaged: shows[${place}] is not a record` };
		const { id, isArchived = false } = stored;
		if (typeof id !== 'string' || id === '' || ids.has(id))
			return { problem: `this backup is damaged: shows[${place}].id is not a name of its own` };
		ids.add(id);
		const show = readShowDocument(stored);
		if ('problem' in show) return { problem: `in this backup, shows[${place}]: ${show.problem}` };
		all.push({ show: { id, ...show.value }, isArchived: isArchived === true });
	}
	return { value: all };
}
