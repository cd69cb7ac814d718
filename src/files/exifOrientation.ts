import type { Pixels } from '../core/length/parsePixels.ts';

/** How a picture is to be turned: 1 to 8, as EXIF counts; and where that stands in its file. */
export interface ExifOrientation {
	readonly value: number;
	/** Place of the two bytes of the value. */
	readonly at: number;
	readonly isLittleEndian: boolean;
}

const orientationTag = 0x0112;
const shortType = 3;
const longType = 4;
/** More entries than any camera writes. */
const mostEntries = 1000;

/** What the first directory of a TIFF structure says of a tag: one number, and where it stands. */
interface TagValue extends ExifOrientation {
	readonly isShort: boolean;
}

/** Finds a tag with one number of two or four bytes. Source: TIFF 6.0, sections 2 and 8 */
function tagValue(bytes: Uint8Array, start: number, end: number, tag: number): TagValue | undefined {
	const stop = Math.min(end, bytes.length);
	if (start + 8 > stop) return undefined;
	const data = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	const order = data.getUint16(start);
	const isLittleEndian = order === 0x4949;
	if ((!isLittleEndian && order !== 0x4d4d) || data.getUint16(start + 2, isLittleEndian) !== 42) return undefined;
	const directory = start + data.getUint32(start + 4, isLittleEndian);
	if (directory + 2 > stop) return undefined;
	const count = Math.min(data.getUint16(directory, isLittleEndian), mostEntries);
	for (let entry = 0; entry < count; entry++) {
		const at = directory + 2 + entry * 12;
		if (at + 12 > stop) return undefined;
		if (data.getUint16(at, isLittleEndian) !== tag) continue;
		const type = data.getUint16(at + 2, isLittleEndian);
		const isShort = type === shortType;
		if ((!isShort && type !== longType) || data.getUint32(at + 4, isLittleEndian) !== 1) return undefined;
		const value = isShort ? data.getUint16(at + 8, isLittleEndian) : data.getUint32(at + 8, isLittleEndian);
		return { value, at: at + 8, isLittleEndian, isShort };
	}
	return undefined;
}

/**
 * Finds the orientation in the first directory of a TIFF structure, as EXIF has it.
 * @param start where the structure begins
 * @param end where it ends
 * @returns undefined where there is none, or none that means anything
 * Source: EXIF 2.32, 4.6.4 (orientation)
 */
export function exifOrientation(bytes: Uint8Array, start: number, end: number): ExifOrientation | undefined {
	const found = tagValue(bytes, start, end, orientationTag);
	if (!found?.isShort || found.value < 1 || found.value > 8) return undefined;
	const { value, at, isLittleEndian } = found;
	return { value, at, isLittleEndian };
}

/** The pixels of the first picture of a TIFF file; undefined where they are not said as usual. */
export function tiffPixels(bytes: Uint8Array): Pixels | undefined {
	const [width, height] = [256, 257].map((tag) => tagValue(bytes, 0, bytes.length, tag)?.value);
	return width === undefined || height === undefined ? undefined : { width, height };
}

/** Whether a picture of an orientation lies on its side as it is stored. */
export const isTurned = (orientation: number): boolean => orientation >= 5;
