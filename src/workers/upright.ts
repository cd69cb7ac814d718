import { checksum } from '../files/checksum.ts';
import { type ExifOrientation, isTurned } from '../files/exifOrientation.ts';
import type { PictureHeader } from '../files/pictureHeader.ts';

/** A matrix as `setTransform` takes it. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/**
 * Puts a picture upright that is stored in an orientation, on a canvas of the upright size.
 * @param width of the stored picture as it is drawn, in pixels
 */
export function uprightMatrix(orientation: number, width: number, height: number): Matrix {
	switch (orientation) {
		case 2:
			return [-1, 0, 0, 1, width, 0]; // mirrored
		case 3:
			return [-1, 0, 0, -1, width, height]; // upside down
		case 4:
			return [1, 0, 0, -1, 0, height];
		case 5:
			return [0, 1, 1, 0, 0, 0]; // mirrored and on its side
		case 6:
			return [0, 1, -1, 0, height, 0]; // its top is at the right
		case 7:
			return [0, -1, -1, 0, height, width];
		case 8:
			return [0, -1, 1, 0, 0, width]; // its top is at the left
		default:
			return [1, 0, 0, 1, 0, 0];
	}
}

/** The size of a picture once it is upright. */
export const uprightSize = (orientation: number, width: number, height: number) =>
	isTurned(orientation) ? { width: height, height: width } : { width, height };

/**
 * Takes the orientation out of a file's bytes: browsers differ in which kinds of file they turn by themselves, and turned
 * here it is turned once.
 */
export function withoutOrientation(bytes: Uint8Array, { kind, exif }: PictureHeader): void {
	if (!exif) return;
	const data = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	data.setUint16(exif.at, 1, exif.isLittleEndian);
	if (kind === 'PNG') renewChecksum(bytes, data, exif);
}

/** A chunk of a PNG whose checksum is wrong is passed over, or spoils the file. */
function renewChecksum(bytes: Uint8Array, data: DataView, { at }: ExifOrientation): void {
	for (let chunk = 8; chunk + 12 <= bytes.length;) {
		const end = chunk + 8 + data.getUint32(chunk);
		if (at < end) {
			data.setUint32(end, checksum(bytes.subarray(chunk + 4, end)));
			return;
		}
		chunk = end + 4;
	}
}
