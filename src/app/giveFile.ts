import { writeRows } from '../files/csv.ts';
import { writeShowFile } from '../files/showFile.ts';
import type { Session } from './session.svelte.ts';

/**
 * Hands out the rows as CSV, with everything that is worked out from them, to be saved where the person wants.
 * @returns the name of the file
 */
export function giveRows(session: Session): string {
	const { show, results, bench, settings } = session;
	const text = writeRows({ rows: show.rows, results, bench, settings }, { hasIds: true });
	return download(new File([text], fileName(show.name, 'csv'), { type: 'text/csv' }));
}

/** Hands out the whole show as one file. @returns its name */
export const giveShow = ({ show }: Session): string =>
	download(new File([writeShowFile(show)], fileName(show.name, 'evenhang.json'), { type: 'application/json' }));

/** The name of a show as the name of a file, on every system; `show` where nothing of it can stand in one. */
export function fileName(showName: string, ending: string): string {
	const name = showName
		.replace(/[\p{Cc}\\/:*?"<>|]+/gu, ' ')
		.replace(/\s+/g, ' ')
		.replace(/^[. ]+|[. ]+$/g, '')
		.slice(0, 100);
	return `${name || 'show'}.${ending}`;
}

function download(file: File): string {
	const address = URL.createObjectURL(file);
	const link = document.createElement('a');
	link.href = address;
	link.download = file.name;
	link.click();
	setTimeout(() => URL.revokeObjectURL(address), 60_000); // some browsers begin to read only after a question
	return file.name;
}
