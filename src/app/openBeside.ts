import { type FileReport, notRead, showOpened } from '../core/imports/fileReports.ts';
import { countPrints } from '../core/show/blankRow.ts';
import type { Show } from '../core/show/show.ts';
import { keepImported } from './importFile.ts';
import type { Shelf } from './shelf.svelte.ts';

/**
 * Puts a show of a file on the shelf, under a name of its own, and opens it.
 * @param fileName undefined for the example, which is in no file of theirs
 * @returns what has come of it
 */
export async function openBeside(shelf: Shelf, show: Omit<Show, 'id'>, fileName?: string): Promise<FileReport> {
	const named = { ...show, name: shelf.freeName(show.name) };
	const id = await shelf.add([named]);
	if (id === undefined || !(await shelf.open(id))) return notRead(`“${fileName ?? show.name}”`, shelf.problem ?? '');
	if (fileName !== undefined) await keepImported(shelf.session, fileName);
	return showOpened(named.name, countPrints(show.rows));
}
