import type { Reading } from '../core/length/reading.ts';
import { printsOf } from '../core/show/blankRow.ts';
import { everyPart, heldOf, showOf } from '../core/show/everyPart.ts';
import type { TypedSettings } from '../core/settings/settings.ts';
import { isRecord } from '../core/values/isRecord.ts';
import type { Show } from '../core/show/show.ts';
import { storedVersion, type Stored, upgrade, viewsApart } from '../core/show/upgrade.ts';
import { jsonPieces } from './jsonPieces.ts';
import { jsonProblem } from './jsonProblem.ts';

/** What marks a show file. */
export const showFormat = 'evenhang-show';

/** Writes everything that a show is; `parts.ts` says what that is. */
export const writeShowFile = (show: Omit<Show, 'id'>): string => [...writingShowFile(show)].join('');

/** Writes it in pieces that take little time each. */
export function* writingShowFile(show: Omit<Show, 'id'>): Generator<string, void, undefined> {
	yield* jsonPieces(showDocument(show));
	yield '\n';
}

/** What a show file holds, before it is written as text: a row in which nothing is typed is no print, and is left out. */
export function showDocument(show: Omit<Show, 'id'>): Stored {
	const prints = { ...show, rows: printsOf(show.rows) };
	const held = everyPart.map(([name, part]) => [name, part.write(heldOf(prints, name, part))] as const);
	const written = held.filter(([, form]) => form !== undefined);
	return { format: showFormat, version: storedVersion, ...Object.fromEntries(written) };
}

/**
 * Reads a show file of any version up to today's.
 * @returns a problem, one sentence that names the place, if it is damaged, newer, or no show file
 */
export function readShowFile(text: string): Reading<Omit<Show, 'id'>> {
	const document = readDocument(text);
	return 'problem' in document ? document : readShowDocument(document.value);
}

/** Reads what a show file holds. */
export function readShowDocument(document: Stored): Reading<Omit<Show, 'id'>> {
	if (!isShowDocument(document)) return { problem: 'this is no show file: it is not marked as one' };
	const stored = upgrade(document);
	if ('problem' in stored) return { problem: `this show file cannot be opened: ${stored.problem}` };
	const show = readShow(viewsApart(stored.value));
	return 'problem' in show ? { problem: `this show file is damaged: ${show.problem}` } : show;
}

/** Reads settings from a file: a bare record of them, or those of a show file. */
export function readSettingsFile(text: string): Reading<TypedSettings> {
	const document = readDocument(text);
	if ('problem' in document) return document;
	if (!isShowDocument(document.value)) {
		const { settings } = document.value;
		return { value: isRecord(settings) ? settings : document.value };
	}
	const show = readShowDocument(document.value);
	return 'problem' in show ? show : { value: show.value.settings };
}

/** Whether a text looks like a show file, not like rows. */
export const isShowFileText = (text: string): boolean => /^\s*\{/.test(text);

const isShowDocument = (document: Stored): boolean => document['format'] === showFormat;

/** A JSON document that is a record. @returns a problem that says where it is damaged */
export function readDocument(text: string): Reading<Stored> {
	if (text.trim() === '') return { problem: 'the file is empty' };
	const document = parsed(text);
	if ('problem' in document) return document;
	return isRecord(document.value) ? { value: document.value } : { problem: 'this file holds no show and no settings' };
}

function parsed(text: string): Reading<unknown> {
	try {
		return { value: JSON.parse(text) as unknown };
	} catch (cause) {
		return { problem: `this file cannot be read: ${jsonProblem(text) ?? (cause as Error).message}` };
	}
}

function readShow(document: Stored): Reading<Omit<Show, 'id'>> {
	const held: Record<string, unknown> = {};
	for (const [name, part] of everyPart) {
		if (document[name] === undefined) continue;
		const read = part.read(document[name]);
		if ('problem' in read) return read;
		held[name] = read.value;
	}
	return { value: showOf(held) };
}
