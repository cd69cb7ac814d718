import type { Pixels } from '../core/length/parsePixels.ts';
import type { Reading } from '../core/length/reading.ts';
import { hashOf } from '../files/hashOf.ts';
import { bytesOfFile } from '../files/bytesOfFile.ts';
import { pictureHeader, type PictureHeader, pixelsProblem } from '../files/pictureHeader.ts';
import { uprightMatrix, uprightSize, withoutOrientation } from './upright.ts';

/** A picture made small, to be kept. */
export interface Preview {
	readonly type: string;
	readonly bytes: ArrayBuffer;
}

/** A picture file that was read; nothing of the file itself is kept. */
export interface ReadPicture {
	/** SHA-256 of the file's bytes, in hexadecimal. */
	readonly hash: string;
	/** After its orientation. */
	readonly pixels: Pixels;
	/** At most 1024 pixels a side. */
	readonly preview: Preview;
	/** At most 320 pixels a side, for lists. */
	readonly small: Preview;
}

/** The most pixels a side of what is kept. */
const mostASide = { preview: 1024, small: 320 };
/** How well it is kept: above this a file grows and nobody sees it. */
const quality = 0.82;
/** The most bytes of a file that are read at once. */
const mostBytes = 500_000_000;

/** Reads a picture file: what it is, how it lies, and a small picture of it. @returns a problem, without the file's name */
export async function readPicture(file: Blob): Promise<Reading<ReadPicture>> {
	if (file.size > mostBytes)
		return { problem: `it holds ${Math.ceil(file.size / 1e6)} MB; a picture may hold ${mostBytes / 1e6}` };
	const read = await bytesOfFile(file);
	if ('problem' in read) return read;
	const bytes = read.value;
	const header = pictureHeader(bytes);
	if ('problem' in header) return header;
	const hash = await hashOf(bytes);
	let decoded: { bitmap: ImageBitmap; stored: Pixels };
	try {
		withoutOrientation(bytes, header.value);
		decoded = await decode(bytes, header.value);
	} catch {
		return { problem: unreadable(header.value) };
	}
	const { bitmap, stored } = decoded;
	const tooLarge = pixelsProblem(stored);
	if (tooLarge !== undefined) return { problem: tooLarge };
	const orientation = header.value.exif?.value ?? 1;
	const [preview, small] = [
		await drawn(bitmap, orientation, mostASide.preview),
		await drawn(bitmap, orientation, mostASide.small),
	];
	bitmap.close();
	return { value: { hash, pixels: uprightSize(orientation, stored.width, stored.height), preview, small } };
}

/** Kinds that some browsers read and others do not, as people call them. */
const notEverywhere: Partial<Record<PictureHeader['kind'], string>> = {
	TIFF: 'a TIFF, which this browser does not read',
	HEIC: 'a HEIC, as phones make them, which this browser does not read',
	other: 'of a kind that this browser does not read',
};

function unreadable({ kind }: PictureHeader): string {
	const unread = notEverywhere[kind];
	return unread === undefined
		? `it is damaged, or a kind of ${kind} that this browser does not read`
		: `it is ${unread}, or it is damaged. Save it as JPEG or PNG, and add that`;
}

/** Decodes a picture as it is stored, at once as small as it is needed where its size is known. */
async function decode(bytes: Uint8Array<ArrayBuffer>, { stored }: PictureHeader) {
	const blob = new Blob([bytes]);
	if (!stored) {
		const bitmap = await createImageBitmap(blob);
		return { bitmap, stored: { width: bitmap.width, height: bitmap.height } };
	}
	const { width, height } = fitted(stored, mostASide.preview);
	const bitmap = await createImageBitmap(blob, { resizeWidth: width, resizeHeight: height, resizeQuality: 'high' });
	return { bitmap, stored };
}

/** A size made to fit into a square, never larger. */
function fitted({ width, height }: Pixels, most: number): Pixels {
	const by = Math.min(1, most / Math.max(width, height));
	return { width: Math.max(1, Math.round(width * by)), height: Math.max(1, Math.round(height * by)) };
}

async function drawn(bitmap: ImageBitmap, orientation: number, most: number): Promise<Preview> {
	const { width, height } = fitted(bitmap, most);
	const size = uprightSize(orientation, width, height);
	const canvas = new OffscreenCanvas(size.width, size.height);
	const context = canvas.getContext('2d')!;
	context.fillStyle = '#fff'; // what is clear in a picture is paper
	context.fillRect(0, 0, size.width, size.height);
	context.imageSmoothingQuality = 'high';
	context.setTransform(...uprightMatrix(orientation, width, height));
	context.drawImage(bitmap, 0, 0, width, height);
	let blob = await canvas.convertToBlob({ type: 'image/webp', quality });
	// A browser that does not write WebP writes PNG, which is several times as large.
	if (blob.type !== 'image/webp') blob = await canvas.convertToBlob({ type: 'image/jpeg', quality });
	return { type: blob.type, bytes: await blob.arrayBuffer() };
}
