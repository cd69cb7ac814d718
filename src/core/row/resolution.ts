import { inches, type Length } from '../length/length.ts';
import type { Pixels } from '../length/parsePixels.ts';
import type { WorkedRow } from './workedRow.ts';

const inch = inches(1);

/** A size in units. */
interface Sides {
	readonly width: Length;
	readonly height: Length;
}

/**
 * Pixels an inch of a picture printed at a size, exactly. Where size and file differ in shape, the file is cropped from
 * the middle, never stretched, so that the side with fewer counts.
 */
export const pixelsAnInchAt = (pixels: Pixels, { width, height }: Sides): number =>
	Math.min((pixels.width * inch) / width, (pixels.height * inch) / height);

/** Pixels an inch of a row at its worked-out size; undefined where pixels or size are not known. */
export function pixelsAnInchOf({ read, solved }: Pick<WorkedRow, 'read' | 'solved'>): number | undefined {
	const { pixels } = read.cells;
	const { pictureWidth: width, pictureHeight: height } = solved;
	return pixels && width && height ? pixelsAnInchAt(pixels, { width, height }) : undefined;
}
