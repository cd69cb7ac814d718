import { picturesLeftOut } from '../core/device/picturesProblem.ts';
import type { Picture } from '../core/pictures/picture.ts';
import type { Row } from '../core/show/row.ts';
import { hashOf } from '../files/hashOf.ts';
import { type PackedPicture, type PackedRecord, tooMuchToPack } from '../files/packShow.ts';
import { packInWorker, type UnpackedFile } from '../workers/archive.ts';
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

/** How a file is packed with its pictures. */
export interface Packing {
	readonly signal: AbortSignal;
	/** Called with how many pictures are packed, of how many. */
	readonly onProgress: (done: number, of: number) => void;
}

/** A packed file would hold more than one can be opened with. The message is what it would hold. */
export class TooMuchToPack extends Error {}

/**
 * Packs a show, or all shows, with pictures. A picture whose images cannot be read any more is left out.
 * @throws TooMuchToPack
 */
export async function packedFile(
	text: string,
	wanted: readonly Picture[],
	pictures: Pictures,
	{ signal, onProgress }: Packing,
): Promise<Blob> {
	const refuse = (what: string | undefined) => {
		if (what !== undefined) throw new TooMuchToPack(what);
	};
	refuse(tooMuchToPack(wanted.length, 0, []));
	const list: PackedRecord[] = [];
	const images: number[] = [];
	// Half of the time goes into their hashes, which stand before them.
	for (const [place, picture] of wanted.entries()) {
		onProgress(Math.floor(place / 2), wanted.length);
		const whole = await wholePicture(picture, pictures);
		if (!whole) continue;
		signal.throwIfAborted();
		images.push(whole.preview.bytes.byteLength, whole.small.bytes.byteLength);
		const said = async ({ type, bytes }: PackedPicture['preview']) => ({ type, hash: await hashOf(bytes) });
		list.push({ ...picture, preview: await said(whole.preview), small: await said(whole.small) });
	}
	refuse(tooMuchToPack(list.length, new TextEncoder().encode(JSON.stringify(list)).length, images));
	const pictureAt = async (place: number): Promise<PackedPicture> => {
		onProgress(Math.floor((list.length + place) / 2), list.length);
		const whole = await wholePicture(list[place]!, pictures);
		if (!whole) throw new Error('a picture has gone meanwhile');
		return whole;
	};
	const blob = await packInWorker(text, list, pictureAt, signal);
	onProgress(list.length, list.length);
	return blob;
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
 * Keeps the pictures of a packed show, as many as there is room for: its shows open without them too.
 * @returns a sentence where some were not kept
 */
export async function keepPictures(
	{ count, pictureAt }: Pick<UnpackedFile, 'count' | 'pictureAt'>,
	pictures: Pick<Pictures, 'keep' | 'announce'>,
	signal: AbortSignal,
	onProgress: (done: number, of: number) => void,
): Promise<string | undefined> {
	let said: string | undefined;
	for (let place = 0; place < count && said === undefined; place++) {
		onProgress(place, count);
		const picture = await pictureAt(place);
		signal.throwIfAborted();
		await pictures.keep(picture).catch((cause: unknown) => {
			said = picturesLeftOut(count - place, count, (cause as Error).name);
		});
	}
	await pictures.announce();
	return said;
}
