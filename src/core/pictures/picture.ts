import { type Pixels, parsePixels } from '../length/parsePixels.ts';
import { isProblem } from '../length/reading.ts';
import type { Row } from '../show/row.ts';
import { isHash } from '../show/rowJson.ts';

/** What is known of a picture beside its preview. */
export interface Picture {
	/** SHA-256 of the file's bytes, in hexadecimal. */
	readonly hash: string;
	/** The names under which its file came. */
	readonly names: readonly string[];
	/** Of the file, after its orientation. */
	readonly pixels: Pixels;
}

/** Pictures by what rows say of them. */
export interface KnownPictures {
	readonly byHash: ReadonlyMap<string, Picture>;
	/** By their names, as `nameKey` has them. */
	readonly byName: ReadonlyMap<string, readonly Picture[]>;
}

/** File systems differ in capitals and in how accents are put together. */
const nameKey = (name: string): string => name.trim().normalize('NFC').toLowerCase();

/** Pictures, to be found by what rows say of them. */
export function knownPictures(pictures: Iterable<Picture>): KnownPictures {
	const byHash = new Map<string, Picture>();
	const byName = new Map<string, Picture[]>();
	for (const picture of pictures) {
		byHash.set(picture.hash, picture);
		for (const key of new Set(picture.names.map(nameKey))) byName.set(key, [...(byName.get(key) ?? []), picture]);
	}
	return { byHash, byName };
}

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

/**
 * The picture of a row: the one that it was given, else the only one of its file's name and pixels, as for rows that came
 * by CSV. Undefined where it has none here.
 */
export function pictureOfRow(row: Row, { byHash, byName }: KnownPictures): Picture | undefined {
	const file = fileOfRow(row);
	if (file === undefined) return undefined;
	const hash = hashOfRow(row);
	if (hash !== undefined) return byHash.get(hash);
	const named = (byName.get(nameKey(file)) ?? []).filter(({ pixels }) => hasPixels(row, pixels));
	return named.length === 1 ? named[0] : undefined;
}

/** Whether a row names a file of this name, with these pixels where it says any. */
export const namesFile = (row: Row, name: string, pixels: Pixels): boolean =>
	nameKey(fileOfRow(row) ?? '') === nameKey(name) && hasPixels(row, pixels);

function hasPixels({ typed }: Row, pixels: Pixels): boolean {
	if ((typed.pixels ?? '').trim() === '') return true;
	const read = parsePixels(typed.pixels!);
	return !isProblem(read) && read.value.width === pixels.width && read.value.height === pixels.height;
}
