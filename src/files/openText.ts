import type { Reading } from '../core/length/reading.ts';
import type { Show } from '../core/show/show.ts';
import { type BackedUpShow, isBackup, readBackupDocument } from './backupFile.ts';
import { firstLines } from './firstLines.ts';
import { isShowFileText, readDocument, readShowDocument } from './showFile.ts';

/** The first lines of a list: enough to know its columns, and to show its first rows. */
export interface Beginning {
	readonly text: string;
	/** Whether it is all there is. */
	readonly isWhole: boolean;
}

/** A show, or all shows, as a text held them. */
export type OpenedShows =
	| { readonly kind: 'show'; readonly show: Omit<Show, 'id'> }
	| { readonly kind: 'backup'; readonly shows: readonly BackedUpShow[] };

/** What a text turns out to be. Of a list only its beginning is looked at: its rows are read once its columns are known. */
export type OpenedText = OpenedShows | { readonly kind: 'list'; readonly beginning: Beginning };

/** Opens a text: shows are read whole, a list only as far as its columns are known from it. */
export function openText(text: string): Reading<OpenedText> {
	if (!isShowFileText(text)) return { value: { kind: 'list', beginning: beginningOf(text) } };
	const document = readDocument(text);
	if ('problem' in document) return document;
	if (isBackup(document.value)) {
		const shows = readBackupDocument(document.value);
		return 'problem' in shows ? shows : { value: { kind: 'backup', shows: shows.value } };
	}
	const show = readShowDocument(document.value);
	return 'problem' in show ? show : { value: { kind: 'show', show: show.value } };
}

/** How much of a list is looked at: its headers and first rows stand there. */
const mostCharacters = 200_000;

/** The beginning of a list; see `Beginning`. */
export const beginningOf = (text: string): Beginning => ({
	text: firstLines(text, mostCharacters),
	isWhole: text.length <= mostCharacters,
});
