import { pixelsAnInchOf } from '../row/resolution.ts';
import type { WorkedRow } from '../row/workedRow.ts';

/** The column of how finely a picture is printed: nothing can be typed in it. */
export const resolutionColumn = 'pixels an inch';

/** The column of small pictures: nothing can be typed in it. */
export const pictureColumn = 'picture';

/** What it shows, in whole pixels, down; blank where pixels or size are not known. */
export function resolutionText(worked: WorkedRow): string {
	const has = pixelsAnInchOf(worked);
	return has === undefined ? '' : `${Math.floor(has)}`;
}
