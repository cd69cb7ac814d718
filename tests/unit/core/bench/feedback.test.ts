import fc from 'fast-check';
import { expect, test } from 'vitest';
import { smallestFeedback } from '../../../../src/core/bench/feedback.ts';

const graph = (most: number) =>
	fc
		.integer({ min: 1, max: most })
		.chain((count) =>
			fc
				.array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1)), { maxLength: 4 * count })
				.map((ways) =>
					Array.from({ length: count }, (_, place) => [
						...new Set(ways.filter(([from, to]) => from === place && to !== place).map(([, to]) => to)),
					]),
				),
		);

/** Whether nothing leads round once some places are lost: whatever leads nowhere is taken off until nothing is left. */
function isWithoutRound(later: readonly (readonly number[])[], lost: ReadonlySet<number>): boolean {
	let left = [...later.keys()].filter((place) => !lost.has(place));
	for (;;) {
		const next = left.filter((place) => later[place]!.some((to) => left.includes(to)));
		if (next.length === 0) return true;
		if (next.length === left.length) return false;
		left = next;
	}
}

/** The size of the smallest set, by trying every one. */
function smallest(later: readonly (readonly number[])[]): number {
	let fewest = later.length;
	for (let set = 0; set < 1 << later.length; set++) {
		const lost = new Set([...later.keys()].filter((place) => set & (1 << place)));
		if (lost.size < fewest && isWithoutRound(later, lost)) fewest = lost.size;
	}
	return fewest;
}

test('no smaller set of places leaves nothing that leads round', () =>
	fc.assert(
		fc.property(graph(9), (later) => {
			const { places, least } = smallestFeedback(later);
			expect(isWithoutRound(later, places)).toBe(true);
			expect([places.size, least]).toEqual([smallest(later), smallest(later)]);
		}),
		{ numRuns: 500 },
	));

test('where the search is broken off, the set still does, and no more is claimed than is so', () =>
	fc.assert(
		fc.property(graph(9), fc.nat(60), (later, work) => {
			const { places, least } = smallestFeedback(later, work);
			expect(isWithoutRound(later, places)).toBe(true);
			expect(least).toBeLessThanOrEqual(smallest(later));
		}),
		{ numRuns: 300 },
	));

test('places that all lead to and fro: all but one', () => {
	const all = Array.from({ length: 30 }, (_, place) => place);
	const later = all.map((place) => all.filter((other) => other !== place));
	expect(smallestFeedback(later)).toMatchObject({ least: 29, places: { size: 29 } });
});
