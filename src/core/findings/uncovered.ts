import { innerWindowIsSmaller } from '../row/cover.ts';
import type { RowContext } from './found.ts';

/** How much larger the innermost window is than the picture on an axis; undefined where either is not known. */
export function uncovered({ solution, read }: RowContext, axis: 'width' | 'height'): number | undefined {
	const { windowWidth, windowHeight, pictureWidth, pictureHeight } = solution.solved;
	const [window, picture] = axis === 'width' ? [windowWidth, pictureWidth] : [windowHeight, pictureHeight];
	if (window === undefined || picture === undefined) return undefined;
	return window - innerWindowIsSmaller(read.cells) - picture;
}

/** Whether paper was asked to show on an axis: by a reveal, or below by a signing space. */
export const isRevealAsked = ({ solution: { cover } }: RowContext, axis: 'width' | 'height'): boolean =>
	cover.reveal !== undefined || (axis === 'height' && cover.signingSpace > 0);
