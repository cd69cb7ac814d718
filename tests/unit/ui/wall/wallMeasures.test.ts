import { expect, test } from 'vitest';
import { measuresOf } from '../../../../src/ui/wall/wallMeasures.ts';
import { hang, print } from '../../core/walls/wallOf.ts';

const door = { name: 'door', left: 4000, bottom: 0, width: 900, height: 2000 };
const { walls } = hang(
	Array.from({ length: 8 }, () => print('400x300')),
	{ walls: [{ name: 'North', length: 8000, obstacles: [door] }] },
);
const [hung] = walls as [(typeof walls)[0]];
const wordsOf = (length: number) => `${Math.round(length / 1e7)}`;
const at = (scale: number, chosen?: (typeof hung.prints)[0], hasMeasures = true) =>
	measuresOf(hung, { chosen, hasMeasures, letter: 13 / scale, wordsOf });
const figures = (scale: number) =>
	at(scale)
		.map(({ figure }) => figure!.words)
		.filter((words) => words !== '');

test('every gap is measured, to a door from both sides, in a lane under the floor', () => {
	// five in 0–4000 with gaps of 333⅓, and three in 4900–8000 with gaps of 475
	const all = at(0.055).map(({ from, to }) => [from / 1e7, to / 1e7]);
	expect(all).toHaveLength(10);
	expect(all).toContainEqual([3667, 4000]);
	expect(all).toContainEqual([4900, 5375]);
	expect(all).toContainEqual([7525, 8000]);
	expect(Math.max(...at(0.055).map(({ y }) => y))).toBeLessThan(0);
});

test('gaps that are alike are said once, however the ruler rounds them', () =>
	expect(figures(0.055)).toEqual(['6 gaps 333–334', '4 gaps 475']));

test('drawn so small that two figures would lie on each other, the second waits', () => {
	expect(figures(0.04)).toHaveLength(2);
	expect(figures(0.015)).toEqual(['6 gaps 333–334']);
});

test('the two figures of a print that is narrow on the screen go away from it, and stay inside the wall', () => {
	const middles = (scale: number, place: number) =>
		at(scale, hung.prints[place], false).map(({ figure }) => figure!.middle / 1e7);
	const { left, size } = hung.prints[5]!;
	const [before, after] = middles(0.03, 5);
	expect(before).toBeLessThan(left / 1e7 - 237.5);
	expect(after).toBeGreaterThan((left + size.width) / 1e7 + 237.5);
	expect(middles(0.2, 5)[0]).toBeCloseTo(left / 1e7 - 237.5, 0);
	// 3 figures of 13 pixels with room beside them are 2.46 letters wide
	expect(middles(0.01, 0)[0]).toBeCloseTo((2.46 * 1300) / 2, 0);
});
