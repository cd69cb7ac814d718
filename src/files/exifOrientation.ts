/** How a picture is to be turned: 1 to 8, as EXIF counts; and where that stands in its file. */
export interface ExifOrientation {
	readonly value: number;
	/** Place of the two bytes of the value. */
	readonly at: number;
	readonly isLittleEndian: boolean;
}

const orientationTag = 0x0112;
const shortType = 3;
/** More entries than any camera writes. */
const mostEntries = 1000;

/**
 * Finds the orientation in the first directory of a TIFF structure, as EXIF has it.
 * @param start where the structure begins
 * @param end where it ends
 * @returns undefined where there is none, or none that means anything
 * Source: TIFF 6.0, sections 2 and 8; EXIF 2.32, 4.6.4 (orientation)
 */
export function exifOrientation(bytes: Uint8Array, start: number, end: number): ExifOrientation | undefined {
	const stop = Math.min(end, bytes.length);
	if (start + 8 > stop) return undefined;
	const data = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	const order = data.getUint16(start);
	const isLittleEndian = order === 0x4949;
	if (!isLittleEndian && order !== 0x4d4d) return undefined;
	const directory = start + data.getUint32(start + 4, isLittleEndian);
	if (directory + 2 > stop) return undefined;
	const count = Math.min(data.getUint16(directory, isLittleEndian), mostEntries);
	for (let entry = 0; entry < count; entry++) {
		const at = directory + 2 + entry * 12;
		if (at + 12 > stop) return undefined;
		if (data.getUint16(at, isLittleEndian) !== orientationTag) continue;
		const isShort = data.getUint16(at + 2, isLittleEndian) === shortType;
		const value = isShort ? data.getUint16(at + 8, isLittleEndian) : 0;
		return value >= 1 && value <= 8 ? { value, at: at + 8, isLittleEndian } : undefined;
	}
	return undefined;
}

/** Whether a picture of an orientation lies on its side as it is stored. */
export const isTurned = (orientation: number): boolean => orientation >= 5;
