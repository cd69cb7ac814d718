import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Applicant, assignFrames } from '../../../../src/core/frameChoice/assignFrames.ts';
import { programFrames } from '../../../../src/core/frameChoice/programFrames.ts';
import { openHighs } from '../../../../src/solver/openHighs.ts';
import { runs, testInSoak } from '../../../soak.ts';
import { bestByTrying, fitsCounts, option, rankOf, showsOf } from './everyWay.ts';

const openProgram = await openHighs();
const tools = { openProgram, secondsLeft: () => 600 };
const nobody = (applicants: readonly Applicant[]) => ({
	frames: applicants.map(() => undefined),
	isMost: false,
	proven: false,
});

/** A micrometre and a square centimetre, as lengths and areas are counted. */
const unit = { difference: 10_000, area: 1e16 };

test('as good as the best of all ways, and proven', () =>
	fc.assert(
		fc.property(showsOf(unit), ({ applicants, counts }) => {
			const { frames, isMost, proven } = programFrames(applicants, counts, tools, nobody(applicants));
			expect([isMost, proven]).toEqual([true, true]);
			expect(fitsCounts(applicants, counts, frames)).toBe(true);
			expect(rankOf(applicants, frames)).toEqual(bestByTrying(applicants, counts));
		}),
		{ numRuns: runs(15, 10_000) },
	));

/** Prints of many sizes in frames of which there are too few; sizes in mm, areas in cm². */
function largeShow(prints: number, frames: number, mostCopies: number) {
	const each = fc.record({ wanted: fc.integer({ min: 20, max: 60 }), copies: fc.integer({ min: 1, max: mostCopies }) });
	const [show] = fc.sample(
		fc.record({
			wishes: fc.array(each, { minLength: prints, maxLength: prints }),
			counts: fc.array(fc.nat(Math.floor((prints * (mostCopies + 1) * 0.8) / frames)), {
				minLength: frames,
				maxLength: frames,
			}),
		}),
		{ numRuns: 1, seed: 1 },
	);
	const { wishes, counts } = show!;
	const sizes = counts.map((_, at) => 260 + (400 * at) / frames);
	const applicants = wishes.map(({ wanted, copies }): Applicant => ({
		copies,
		options: sizes.map((size) => {
			const difference = Math.abs(size - 10 * wanted);
			return difference > 250 ? undefined : option(Math.round(difference * 10_000_000), Math.round(size * size) * 1e14);
		}),
	}));
	return { applicants, counts };
}

// Of few prints the first test shows it, against every way there is.
testInSoak(
	'three hundred prints of one to three copies in twenty frames are proven, which steps alone do not come to',
	() => {
		const { applicants, counts } = largeShow(300, 20, 3);
		const first = assignFrames(applicants, counts, 30);
		expect(first.proven).toBe(false);
		const { frames, isMost, proven } = programFrames(applicants, counts, tools, first);
		expect([isMost, proven]).toEqual([true, true]);
		expect(fitsCounts(applicants, counts, frames)).toBe(true);
		const [before, after] = [rankOf(applicants, first.frames), rankOf(applicants, frames)];
		expect(after[0] > before[0] || (after[0] === before[0] && after[1] < before[1])).toBe(true);
	},
);

test('without time the choice that is known stays, and nothing is called proven', () => {
	const { applicants, counts } = largeShow(60, 6, 3);
	const first = assignFrames(applicants, counts, 1);
	expect(programFrames(applicants, counts, { openProgram, secondsLeft: () => 0 }, first)).toEqual({
		...first,
		isMost: false,
		proven: false,
	});
});

test('time that runs out after the first program proves how many get a frame, and no more', () => {
	const { applicants, counts } = largeShow(60, 6, 3);
	let asked = 0;
	const secondsLeft = () => (asked++ === 0 ? 600 : 0);
	const { isMost, proven } = programFrames(applicants, counts, { openProgram, secondsLeft }, nobody(applicants));
	expect([isMost, proven]).toEqual([true, false]);
});

test.each([
	[9, 4, 1],
	[4, 9, 0],
])('of equal differences the least area: %i or %i cm², not the least of all', (first, second, chosen) => {
	const sized = (difference: number, area: number) => option(difference * unit.difference, area * unit.area);
	const one: Applicant = { copies: 1, options: [sized(30, first), sized(30, second), sized(32, 1)] };
	expect(programFrames([one], [1, 1, 1], tools, nobody([one])).frames).toEqual([chosen]);
});

test('nobody, no frame, and none that suits', () => {
	expect(programFrames([], [1], tools, nobody([]))).toEqual({ frames: [], isMost: true, proven: true });
	const one: Applicant = { copies: 2, options: [option(0)] };
	expect(programFrames([one], [1], tools, nobody([one]))).toEqual({ frames: [undefined], isMost: true, proven: true });
	const none: Applicant = { copies: 1, options: [undefined] };
	expect(programFrames([none], [Infinity], tools, nobody([none])).frames).toEqual([undefined]);
});
