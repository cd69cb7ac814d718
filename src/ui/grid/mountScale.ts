import { toMm, zero } from '../../core/length/length.ts';
import type { RowResult } from '../../core/findings/rowResult.ts';
import { changedRange } from '../../core/values/changedRange.ts';
import { mountRoom } from './slots.ts';

/** Pixels a millimetre at which the largest print of a show, in its frame if it has one, fits in beside a title. */
export interface MountScale {
	readonly scale: number;
	readonly results: readonly RowResult[];
	/** Of all of them, in millimetres. */
	readonly width: number;
	readonly height: number;
}

/** @param former the scale of the results before: what stands there too is not measured again */
export function mountScale(results: readonly RowResult[], former?: MountScale): MountScale {
	const { from, to, shift } = changedRange(former?.results ?? [], results);
	const come = largest(results.slice(from, to));
	const gone = largest(former?.results.slice(from, to - shift) ?? []);
	const isKnown = (side: 'width' | 'height') => gone[side] < former![side] || come[side] >= former![side];
	const rest = former && (isKnown('width') && isKnown('height') ? former : largest(results));
	const width = Math.max(1, come.width, rest?.width ?? 0);
	const height = Math.max(1, come.height, rest?.height ?? 0);
	return { scale: Math.min(mountRoom.width / width, mountRoom.height / height), results, width, height };
}

/** As wide as the widest and as high as the highest, in millimetres; 0 where there is none. */
function largest(results: readonly RowResult[]): { readonly width: number; readonly height: number } {
	let [width, height] = [0, 0];
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
	return { width, height };
}
