import { type Pixels, parsePixels } from '../length/parsePixels.ts';
import { isProblem } from '../length/reading.ts';
import type { Row } from '../show/row.ts';
import { fileOfRow, hashOfRow } from '../show/givenPicture.ts';

export { fileOfRow, hashOfRow };

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
	/** By their names, as `fileNameKey` has them; the one first kept first. */
	readonly byName: ReadonlyMap<string, readonly Picture[]>;
}

/** A file's name to be compared: file systems differ in capitals and in how accents are put together. */
export const fileNameKey = (name: string): string => name.trim().normalize('NFC').toLowerCase();

/** Pictures, to be found by what rows say of them. @param pictures the one first kept first */
export function knownPictures(pictures: Iterable<Picture>): KnownPictures {
	const byHash = new Map<string, Picture>();
	const byName = new Map<string, Picture[]>();
	for (const picture of pictures) {
		byHash.set(picture.hash, picture);
		for (const key of new Set(picture.names.map(fileNameKey))) byName.set(key, [...(byName.get(key) ?? []), picture]);
	}
	return { byHash, byName };
}

/**
 * The pictures that may be that of a row, the likeliest first: the one that it was given, else those of its file's name and
 * pixels, as for rows that came by CSV.
 */
export function picturesOfRow(row: Row, { byHash, byName }: KnownPictures): readonly Picture[] {
	const file = fileOfRow(row);
	if (file === undefined) return [];
	const hash = hashOfRow(row);
	if (hash !== undefined) return byHash.has(hash) ? [byHash.get(hash)!] : [];
	return (byName.get(fileNameKey(file)) ?? []).filter(({ pixels }) => hasPixels(row, pixels));
}

/** The picture of a row, of several the one first kept: another of its name changes no print. Undefined: none here. */
export const pictureOfRow = (row: Row, known: KnownPictures): Picture | undefined => picturesOfRow(row, known)[0];

/** How many pictures rows name that are not among the known ones; one that several rows name counts once. */
export function countNotHere(rows: Iterable<Row>, known: KnownPictures): number {
	const missing = new Set<string>();
	for (const row of rows) {
		const file = fileOfRow(row);
		if (file !== undefined && !pictureOfRow(row, known)) missing.add(hashOfRow(row) ?? fileNameKey(file));
	}
	return missing.size;
}

/** Whether a row names a file of this name, with these pixels where it says any. */
export const namesFile = (row: Row, name: string, pixels: Pixels): boolean =>
	fileNameKey(fileOfRow(row) ?? '') === fileNameKey(name) && hasPixels(row, pixels);

function hasPixels({ typed }: Row, pixels: Pixels): boolean {
	if ((typed.pixels ?? '').trim() === '') return true;
	// oxlint-disable-next-line house/no-second-reading -- these rows come without their results
	const read = parsePixels(typed.pixels!);
	return !isProblem(read) && read.value.width === pixels.width && read.value.height === pixels.height;
}
