import fc from 'fast-check';
import type { Applicant, Assignment } from '../../../../src/core/frameChoice/assignFrames.ts';

/** A frame that suits, by the figures of one. */
export const option = (difference: number, area = 1) => ({ difference: BigInt(difference), area: BigInt(area) });

/** How good a choice is: how many prints get a frame, the sum of their differences, and that of the areas. */
export type Rank = readonly [served: number, difference: number, area: number];

/** The best that any way comes to, by trying all. */
export function bestByTrying(applicants: readonly Applicant[], counts: readonly number[]): Rank {
	let best: Rank = [-1, 0, 0];
	const left = [...counts];
	const place = (at: number, [served, difference, area]: Rank) => {
		const applicant = applicants[at];
		if (applicant === undefined) {
			if (isBetter([served, difference, area], best)) best = [served, difference, area];
			return;
		}
		place(at + 1, [served, difference, area]);
		applicant.options.forEach((own, frame) => {
			if (!own || left[frame]! < applicant.copies) return;
			left[frame]! -= applicant.copies;
			place(at + 1, [served + 1, difference + Number(own.difference), area + Number(own.area) * applicant.copies]);
			left[frame]! += applicant.copies;
		});
	};
	place(0, [0, 0, 0]);
	return best;
}

const isBetter = (a: Rank, b: Rank) => (a[0] !== b[0] ? a[0] > b[0] : a[1] !== b[1] ? a[1] < b[1] : a[2] < b[2]);

/** How good a choice is. */
export const rankOf = (applicants: readonly Applicant[], frames: Assignment['frames']): Rank =>
	frames.reduce<Rank>(
		([served, difference, area], frame, place) => {
			if (frame === undefined) return [served, difference, area];
			const { copies, options } = applicants[place]!;
			const own = options[frame]!;
			return [served + 1, difference + Number(own.difference), area + Number(own.area) * copies];
		},
		[0, 0, 0],
	);

/** Whether no frame is given out more often than it is there. */
export const fitsCounts = (
	applicants: readonly Applicant[],
	counts: readonly number[],
	frames: Assignment['frames'],
): boolean =>
	counts.every(
		(count, frame) =>
			applicants.reduce((sum, { copies }, place) => sum + (frames[place] === frame ? copies : 0), 0) <= count,
	);

/**
 * Small shows, of which every way can be tried.
 * @param unit of differences and of areas
 */
export const showsOf = (unit = { difference: 1, area: 1 }) =>
	fc.integer({ min: 1, max: 4 }).chain((frames) =>
		fc.record({
			applicants: fc.array(
				fc.record({
					copies: fc.oneof({ weight: 3, arbitrary: fc.constant(1) }, fc.integer({ min: 1, max: 4 })),
					options: fc.array(
						fc.option(
							fc
								.tuple(fc.nat(6), fc.integer({ min: 1, max: 4 }))
								.map(([difference, area]) => option(difference * unit.difference, area * unit.area)),
							{ nil: undefined, freq: 4 },
						),
						{ minLength: frames, maxLength: frames },
					),
				}),
				{ maxLength: 6 },
			),
			counts: fc.array(fc.oneof(fc.nat(6), fc.constant(Infinity)), { minLength: frames, maxLength: frames }),
		}),
	);
