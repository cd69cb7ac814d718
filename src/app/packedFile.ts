import { pictureNotKept } from '../core/device/picturesProblem.ts';
import type { Reading } from '../core/length/reading.ts';
import type { Picture } from '../core/pictures/picture.ts';
import type { Row } from '../core/show/row.ts';
import { hashOf } from '../files/hashOf.ts';
import type { PackedPicture, PackedRecord } from '../files/packShow.ts';
import { packInWorker, unpackInWorker } from '../workers/archive.ts';
import type { Pictures } from './pictures.svelte.ts';

/** The pictures that rows have, each once. */
export async function picturesOfRows(pictures: Pictures, rows: Iterable<Row>): Promise<readonly Picture[]> {
	await pictures.whenListed();
	const found = new Map<string, Picture>();
	for (const row of rows) {
		const picture = pictures.of(row);
		if (picture) found.set(picture.hash, picture);
	}
	return [...found.values()];
}

/** Packs a show, or all shows, with pictures. A picture whose images cannot be read any more is left out. */
export async function packedFile(
	text: string,
	wanted: readonly Picture[],
	pictures: Pictures,
	signal: AbortSignal,
): Promise<Blob> {
	const list: PackedRecord[] = [];
	for (const picture of wanted) {
		const whole = await wholePicture(picture, pictures);
		if (!whole) continue;
		const said = async ({ type, bytes }: PackedPicture['preview']) => ({ type, hash: await hashOf(bytes) });
		list.push({ ...picture, preview: await said(whole.preview), small: await said(whole.small) });
	}
	const pictureAt = async (place: number): Promise<PackedPicture> => {
		const whole = await wholePicture(list[place]!, pictures);
		if (!whole) throw new Error('a picture has gone meanwhile');
		return whole;
	};
	return packInWorker(text, list, pictureAt, signal);
}

async function wholePicture({ hash, names, pixels }: Picture, pictures: Pictures): Promise<PackedPicture | undefined> {
	const [preview, small] = [await pictures.image(hash, 'preview'), await pictures.image(hash, 'small')];
	return preview && small && { hash, names, pixels, preview, small };
}

/** Whether a file is one that `packedFile` made, or says to be by its name. */
export async function isPackedFile(file: File): Promise<boolean> {
	const bytes = new Uint8Array(
		await file
			.slice(0, 64)
			.arrayBuffer()
			.catch(() => new ArrayBuffer(0)),
	);
	const start = String.fromCharCode(...bytes);
	return start.startsWith('PK\x03\x04') && (start.slice(30).startsWith('show.json') || /\.zip$/i.test(file.name));
}

/**
 * Unpacks a show with its pictures. The pictures are kept once all of the file is found to be sound; those of a show that
 * is then not wanted are let go after a day.
 * @returns the text of the show's file
 */
export async function unpackedFile(
	file: File,
	pictures: Pick<Pictures, 'keep' | 'announce'>,
	signal: AbortSignal,
	unpack = unpackInWorker,
): Promise<Reading<string>> {
	const found: PackedPicture[] = [];
	const read = await unpack(file, (picture) => void found.push(picture), signal);
	if ('problem' in read) return read;
	try {
		for (const picture of found) await pictures.keep(picture);
	} catch (cause) {
		return { problem: `its pictures were not saved: ${pictureNotKept((cause as Error).name)}` };
	}
	await pictures.announce();
	return read;
}
