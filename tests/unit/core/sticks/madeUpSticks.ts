import fc from 'fast-check';
import { mm } from '../../../../src/core/length/length.ts';
import type { Leg, StickJob, StickPlan } from '../../../../src/core/sticks/stickPlan.ts';
import { expect } from 'vitest';

/** A job of a stick and legs in mm. */
export const jobOf = (stickMm: number, sawMm: number, legsMm: readonly number[]): StickJob => ({
	frame: 'Ash',
	stick: mm(stickMm),
	saw: mm(sawMm),
	legs: legsMm.map((each, place): Leg => ({ row: place + 1, rowId: `r${place}`, copy: 1, length: mm(each) })),
});

/** Checks by sums alone that a plan saws every leg once from sticks that are long enough. */
export function checkSticks(job: StickJob, { sticks, tooLong, leastCount, proven }: StickPlan): void {
	const nameOf = ({ row, copy, length }: Leg) => `${row} ${copy} ${length}`;
	const given = [...sticks.flatMap(({ legs }) => legs), ...tooLong].map(nameOf);
	expect(given.sort()).toEqual(job.legs.map(nameOf).sort());
	for (const { legs, rest } of sticks) {
		const used = legs.reduce((sum, { length }) => sum + length + job.saw, 0);
		expect(legs.length).toBeGreaterThan(0);
		expect(used).toBeLessThanOrEqual(job.stick);
		expect(used + rest).toBe(job.stick);
	}
	for (const { length } of tooLong) expect(length + job.saw).toBeGreaterThan(job.stick);
	expect(leastCount).toBeLessThanOrEqual(sticks.length);
	expect(proven).toBe(leastCount === sticks.length);
}

/** The fewest sticks, by trying every stick for every leg: for few legs only. */
export function fewestByTrying(stick: number, lengths: readonly number[]): number {
	let best = lengths.length;
	const rooms: number[] = [];
	const place = (at: number) => {
		if (rooms.length >= best) return;
		if (at === lengths.length) {
			best = rooms.length;
			return;
		}
		for (const [stickAt, room] of rooms.entries()) {
			if (room < lengths[at]!) continue;
			rooms[stickAt] = room - lengths[at]!;
			place(at + 1);
			rooms[stickAt] = room;
		}
		rooms.push(stick - lengths[at]!);
		place(at + 1);
		rooms.pop();
	};
	place(0);
	return best;
}

/** Sticks of a few frames: legs of some lengths, often more than one of each. */
export const smallJobs: fc.Arbitrary<StickJob> = fc
	.record({
		stick: fc.integer({ min: 20, max: 60 }),
		saw: fc.nat(3),
		legs: fc.array(fc.integer({ min: 1, max: 62 }), { minLength: 0, maxLength: 9 }),
	})
	.map(({ stick, saw, legs }) => jobOf(stick, saw, legs));

/** The lengths of a job's legs with their saw, those left out that no stick gives. */
export const takenOf = ({ legs, saw, stick }: StickJob): readonly number[] =>
	legs.map(({ length }): number => length + saw).filter((taken) => taken <= stick);
