import type { Row } from './row.ts';
import { isHash } from './rowJson.ts';

/** The file that a row names; undefined where it names none. */
export function fileOfRow({ typed }: Row): string | undefined {
	const file = typed['picture file']?.trim();
	return file === '' ? undefined : file;
}

/** The hash that a row was given, while its cell still names that file. Stored rows may hold anything there. */
export function hashOfRow(row: Row): string | undefined {
	const given: Partial<Row['picture']> | undefined = row.picture;
	const file = fileOfRow(row);
	return given && isHash(given.hash) && file !== undefined && given.file === file ? given.hash : undefined;
}
