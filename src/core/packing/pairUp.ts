import { sameWithin } from '../length/length.ts';
import type { ToPack } from './toPack.ts';

/** Two framed prints face to face, or one that has no like. */
export type Pair = readonly [ToPack] | readonly [ToPack, ToPack];

/** The larger first, then as they stand in the show: what packing goes by throughout. */
export const bySize = (one: ToPack, other: ToPack): number =>
	other.long - one.long || other.short - one.short || one.place - other.place || one.copy - other.copy;

/** Whether two framed prints have the same outer size, to 1 µm. */
const isSameSize = (one: ToPack, other: ToPack): boolean =>
	Math.abs(one.long - other.long) <= sameWithin && Math.abs(one.short - other.short) <= sameWithin;

/**
 * Whether two framed prints may go face to face: neither side differs by more than the narrower face of the two, so that
 * frame rests on frame, also where both stand on one edge, and none on the other's glass.
 */
export const areLike = (one: ToPack, other: ToPack): boolean => {
	const most = Math.min(one.face, other.face) + sameWithin;
	return Math.abs(one.long - other.long) <= most && Math.abs(one.short - other.short) <= most;
};

/** What prints weigh together, those whose weight is not known left aside. */
export const gramsOf = (prints: readonly Pick<ToPack, 'grams'>[]): number =>
	prints.reduce((sum, { grams }) => sum + (grams ?? 0), 0);

/**
 * Framed prints in pairs: first those of the same size, then of like ones the nearest. What has no like, or would make a pair
 * too heavy for a box, is left by itself.
 * @param mostGrams what a box may weigh
 */
export function pairUp(prints: readonly ToPack[], mostGrams: number): readonly Pair[] {
	const pairs: Pair[] = [];
	let left = prints.toSorted(bySize);
	for (const matches of [isSameSize, areLike]) {
		const open: ToPack[] = [];
		while (left.length > 0) {
			const [first, ...others] = left as [ToPack, ...ToPack[]];
			const other = others.find((each) => matches(first, each) && gramsOf([first, each]) <= mostGrams);
			if (other) pairs.push([first, other]);
			else open.push(first);
			left = other ? others.filter((each) => each !== other) : others;
		}
		left = open;
	}
	return [...pairs, ...left.map((alone): Pair => [alone])].toSorted(([one], [other]) => bySize(one, other));
}
