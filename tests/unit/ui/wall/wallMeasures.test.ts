import { expect, test } from 'vitest';
import { measuresOf } from '../../../../src/ui/wall/wallMeasures.ts';
import { hang, print } from '../../core/walls/wallOf.ts';

const door = { name: 'door', left: 4000, bottom: 0, width: 900, height: 2000 };
const { walls } = hang(
	Array.from({ length: 8 }, () => print('400x300')),
	{ walls: [{ name: 'North', length: 8000, obstacles: [door] }] },
);
const [hung] = walls as [(typeof walls)[0]];
const wordsOf = () => '333';
const measured = (scale: number, chosen?: (typeof hung.prints)[0], hasMeasures = true) =>
	measuresOf(hung, { chosen, hasMeasures, letter: 13 / scale, wordsOf }).map(({ from, to }) => [from / 1e7, to / 1e7]);

test('every gap is measured, to a door from both sides, though a gap is narrower than its figure', () => {
	// five in 0–4000 with gaps of 333⅓, 18 pixels, and three in 4900–8000
	const all = measured(0.055);
	expect(all).toHaveLength(10);
	expect(all).toContainEqual([3667, 4000]);
	expect(all).toContainEqual([4900, 5375]);
	expect(all).toContainEqual([7525, 8000]);
});

test('drawn smaller, figures that would lie on each other wait until one zooms in, but the selected print keeps its own', () => {
	const chosen = hung.prints[5]!;
	const some = measured(0.03, chosen);
	expect(some.length).toBeLessThan(10);
	expect(some.slice(0, 2)).toEqual(measured(0.03, chosen, false));
	const middles = some.map(([from, to]) => (from! + to!) / 2);
	for (const [at, middle] of middles.entries())
		for (const other of middles.slice(0, at > 1 ? at : 0))
			expect(Math.abs(middle - other) * 0.03).toBeGreaterThanOrEqual(3 * 0.62 * 13);
});

test('the two figures of a print that is narrow on the screen go away from it, and wider figures need more room', () => {
	const chosen = hung.prints[5]!;
	const at = (scale: number, words = '333') =>
		measuresOf(hung, { chosen, hasMeasures: true, letter: 13 / scale, wordsOf: () => words });
	expect(
		at(0.03)
			.slice(0, 2)
			.map(({ lean }) => lean),
	).toEqual(['end', 'start']);
	expect(
		at(0.2)
			.slice(0, 2)
			.map(({ lean }) => lean),
	).toEqual([undefined, undefined]);
	expect(at(0.05, '13 1/16').length).toBeLessThan(at(0.05).length);
});
