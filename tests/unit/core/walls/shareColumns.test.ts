import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fraction } from '../../../../src/core/length/fraction.ts';
import { shareColumns, type Stretch } from '../../../../src/core/walls/shareColumns.ts';

/** A gap as an exact fraction. */
function gapOf({ length, gap }: Stretch, widths: readonly number[]): readonly [bigint, bigint] {
	const left = BigInt(length) - widths.reduce((sum, width) => sum + BigInt(width), 0n);
	const count = BigInt(widths.length);
	const { numerator, denominator } =
		gap === undefined ? fraction(left, count + 1n) : fraction(left - (count - 1n) * BigInt(gap), 2n);
	return [numerator, denominator];
}
const compare = (a: readonly [bigint, bigint], b: readonly [bigint, bigint]) => {
	const difference = a[0] * b[1] - b[0] * a[1];
	return difference < 0n ? -1 : difference > 0n ? 1 : 0;
};

/** All ways to share out so many columns, tried one by one: what the choice must equal. */
function exhaustive(stretches: readonly Stretch[], widths: readonly number[]) {
	for (let total = widths.length; total >= 0; total--) {
		let best: { counts: number[]; smallest: [bigint, bigint]; largest: [bigint, bigint] } | undefined;
		const share = (counts: number[]) => {
			const placed = counts.reduce((sum, count) => sum + count, 0);
			if (counts.length < stretches.length) {
				for (let count = 0; placed + count <= total; count++) share([...counts, count]);
				return;
			}
			if (placed !== total) return;
			let from = 0;
			const gaps = counts.flatMap((count, at) => {
				const own = widths.slice(from, (from += count));
				return count === 0 ? [] : [gapOf(stretches[at]!, own)];
			});
			if (gaps.some((gap) => gap[0] < 0n)) return;
			const sorted = gaps.toSorted(compare) as [bigint, bigint][];
			const now = { counts, smallest: sorted[0] ?? [0n, 1n], largest: sorted.at(-1) ?? [0n, 1n] };
			const order = best && (compare(now.smallest, best.smallest) || compare(best.largest, now.largest));
			const isEarlier = () => {
				const at = counts.findIndex((count, place) => count !== best!.counts[place]);
				return at >= 0 && counts[at]! > best!.counts[at]!;
			};
			if (order === undefined || order > 0 || (order === 0 && isEarlier())) best = now;
		};
		share([]);
		if (best) {
			const over = widths.length - total;
			return { counts: best.counts.map((count, at) => (at === stretches.length - 1 ? count + over : count)), over };
		}
	}
	throw new RangeError('nothing always fits');
}

const stretches = fc
	.record({
		lengths: fc.array(fc.integer({ min: 1, max: 24 }), { minLength: 1, maxLength: 4 }),
		gap: fc.option(fc.integer({ min: 0, max: 4 }), { nil: undefined }),
	})
	.map(({ lengths, gap }) => lengths.map((length): Stretch => ({ length, gap })));
const widths = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 0, maxLength: 8 });

test('equals exhaustive search on stretches up to 4 with columns up to 8', () =>
	fc.assert(
		fc.property(stretches, widths, (runs, columns) => {
			expect(shareColumns(runs, columns)).toEqual(exhaustive(runs, columns));
		}),
		{ numRuns: process.env.EVENHANG_SOAK === '1' ? 20_000 : 400 },
	));

test('a tie gives the earlier stretch more', () => {
	const run = { length: 10, gap: undefined };
	expect(shareColumns([run, run], [2, 2, 2])).toEqual({ counts: [2, 1], over: 0 });
});

test('what fits in none comes into the last stretch', () => {
	const run = { length: 10, gap: undefined };
	expect(shareColumns([run, run], [7, 7, 7])).toEqual({ counts: [1, 2], over: 1 });
	expect(shareColumns([run, run], [11, 2])).toEqual({ counts: [0, 2], over: 2 });
});

test('300 columns on 12 stretches', () => {
	const runs = Array.from({ length: 12 }, (_, at) => ({ length: 9000 + 100 * at, gap: undefined }));
	const { counts, over } = shareColumns(
		runs,
		Array.from({ length: 300 }, (_, at) => 300 + (at % 7)),
	);
	expect(over).toBe(0);
	expect(counts.reduce((sum, count) => sum + count, 0)).toBe(300);
});
