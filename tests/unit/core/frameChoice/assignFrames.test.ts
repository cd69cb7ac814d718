import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Applicant, assignFrames } from '../../../../src/core/frameChoice/assignFrames.ts';
import { runs } from '../../../soak.ts';
import { bestByTrying, fitsCounts, option, rankOf, showsOf } from './everyWay.ts';

const one = (...options: Applicant['options']): Applicant => ({ copies: 1, options });

test('the nearest frame, while there is one', () => {
	const applicants = [one(option(0), option(5)), one(option(1), option(9))];
	expect(assignFrames(applicants, [2, 2]).frames).toEqual([0, 0]);
	expect(assignFrames(applicants, [1, 2]).frames).toEqual([1, 0]); // 5 + 1 is less than 0 + 9
});
test('a print more is worth any difference', () =>
	expect(assignFrames([one(option(0), option(1000)), one(option(0), undefined)], [1, 1]).frames).toEqual([1, 0]));
test('of equal differences the least area', () =>
	expect(assignFrames([one(option(3, 9), option(3, 4))], [1, 1]).frames).toEqual([1]));
test('all copies in one kind', () => {
	const three: Applicant = { copies: 3, options: [option(0), option(7)] };
	expect(assignFrames([three], [2, 3]).frames).toEqual([1]);
	expect(assignFrames([three], [2, 2])).toEqual({ frames: [undefined], isMost: true, proven: true });
	// Two prints of one copy are more than one of two.
	expect(assignFrames([{ copies: 2, options: [option(0)] }, one(option(9)), one(option(9))], [2]).frames).toEqual([
		undefined,
		0,
		0,
	]);
});
test('as many as are needed', () =>
	expect(assignFrames([one(option(0)), one(option(0)), one(undefined)], [Infinity])).toEqual({
		frames: [0, 0, undefined],
		isMost: true,
		proven: true,
	}));
test('nobody, and no frame', () => {
	expect(assignFrames([], [1])).toEqual({ frames: [], isMost: true, proven: true });
	expect(assignFrames([one()], [])).toEqual({ frames: [undefined], isMost: true, proven: true });
});

test.each([
	[20, 2, 21, 10],
	[30, 2, 31, 15],
	[40, 3, 61, 20],
	[12, 2, 11, 5],
	[14, 2, 15, 7],
])('%i prints of %i copies each in %i frames: %i get one, and that is proven', (prints, copies, count, served) => {
	const alike = Array.from({ length: prints }, (): Applicant => ({ copies, options: [option(0)] }));
	const { frames, proven } = assignFrames(alike, [count]);
	expect([frames.filter((frame) => frame === 0).length, proven]).toEqual([served, true]);
});
test('prints of two and of three copies, in frames of two kinds', () => {
	const of = (copies: number): Applicant => ({ copies, options: [option(0), option(10)] });
	const mixed = [2, 3].flatMap((copies) => Array.from({ length: 10 }, () => of(copies)));
	const { frames, proven } = assignFrames(mixed, [17, 16]);
	// Ten of two copies and four of three need 32 of the 33 frames; a fifth of three would need two more than there are.
	expect([frames.filter((frame) => frame !== undefined).length, proven]).toEqual([14, true]);
});
test('a search that ends early has an answer all the same, and does not call it proven', () => {
	const mixed = [2, 3].flatMap((copies) =>
		Array.from({ length: 10 }, (): Applicant => ({ copies, options: [option(0), option(10)] })),
	);
	const { frames, proven } = assignFrames(mixed, [17, 16], 1);
	expect(frames.filter((frame) => frame !== undefined).length).toBeGreaterThan(10);
	expect(proven).toBe(false);
});

test('as good as the best of all ways, and proven', () =>
	fc.assert(
		fc.property(showsOf(), ({ applicants, counts }) => {
			const { frames, proven } = assignFrames(applicants, counts);
			expect(proven).toBe(true);
			expect(fitsCounts(applicants, counts, frames)).toBe(true);
			expect(rankOf(applicants, frames)).toEqual(bestByTrying(applicants, counts));
		}),
		{ numRuns: runs(150, 10_000) },
	));

test('sixty prints in twelve frames are proven', () => {
	const [applicants] = fc.sample(
		fc.array(
			fc.record({
				copies: fc.constantFrom(1, 1, 1, 1, 2, 3),
				options: fc.array(
					fc.tuple(fc.nat(200), fc.integer({ min: 1, max: 9 })).map(([difference, area]) => option(difference, area)),
					{ minLength: 12, maxLength: 12 },
				),
			}),
			{ minLength: 60, maxLength: 60 },
		),
		{ numRuns: 1, seed: 3 },
	);
	const { frames, proven } = assignFrames(
		applicants!,
		Array.from({ length: 12 }, () => 9),
	);
	expect(proven).toBe(true);
	expect(frames).not.toContain(undefined);
});
