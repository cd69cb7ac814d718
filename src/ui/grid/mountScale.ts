import { toMm, zero } from '../../core/length/length.ts';
import type { RowResult } from '../../core/findings/rowResult.ts';
import { mountRoom } from './slots.ts';

/** Pixels a millimetre at which the largest print of a show, in its frame if it has one, fits in beside a title. */
export function mountScale(results: readonly RowResult[]): number {
	let [width, height] = [1, 1];
	for (const { framed, solved, onPaper } of results) {
		const paper = onPaper?.paper;
		width = Math.max(
			width,
			toMm(framed.size?.width ?? solved.mountWidth ?? paper?.width ?? solved.pictureWidth ?? zero),
		);
		height = Math.max(
			height,
			toMm(framed.size?.height ?? solved.mountHeight ?? paper?.height ?? solved.pictureHeight ?? zero),
		);
	}
	return Math.min(mountRoom.width / width, mountRoom.height / height);
}
