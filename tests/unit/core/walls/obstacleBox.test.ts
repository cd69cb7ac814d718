import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm, toMm } from '../../../../src/core/length/length.ts';
import type { Obstacle, Wall } from '../../../../src/core/settings/wall.ts';
import {
	drawnObstacle,
	movedObstacle,
	resizedObstacle,
	type Side,
	usualObstacle,
	usualObstacles,
} from '../../../../src/core/walls/obstacleBox.ts';

const wall: Wall = {
	name: 'North',
	length: mm(4000),
	height: mm(2600),
	centre: mm(1450),
	gap: undefined,
	obstacles: [],
};
const by = { wall, ruler: mm(1), near: 0 };
const box = (left: number, bottom: number, width: number, height?: number): Obstacle => ({
	name: 'window',
	...{ left: mm(left), bottom: mm(bottom), width: mm(width) },
	height: height === undefined ? undefined : mm(height),
});
const said = (each: Obstacle | undefined) =>
	each && [each.left, each.bottom, each.width, each.height].map((side) => side !== undefined && toMm(side));
const moved = (from: Obstacle, x: number, y: number, near = 0) =>
	said(movedObstacle(from, { x: mm(x), y: mm(y) }, { ...by, near: mm(near) }));

test('moved, it stays as large and on its wall', () => {
	expect(moved(box(1000, 900, 1200, 1200), 30.4, -20)).toEqual([1030, 880, 1200, 1200]);
	expect(moved(box(1000, 900, 1200, 1200), -2000, -2000)).toEqual([0, 0, 1200, 1200]);
	expect(moved(box(1000, 900, 1200, 1200), 9000, 9000)).toEqual([2800, 1400, 1200, 1200]);
	// To the ceiling: along the wall alone.
	expect(moved(box(1000, 900, 1200), 10, 10)).toEqual([1010, 900, 1200, false]);
	// One off the ruler that moves up alone keeps its place along the wall.
	expect(moved(box(10.5, 900, 100, 100), 0, 1)).toEqual([10.5, 901, 100, 100]);
});

test('near the floor or an end of the wall it is there', () => {
	expect(moved(box(1000, 100, 900, 2000), -980, -70, 30)).toEqual([0, 0, 900, 2000]);
	expect(moved(box(1000, 100, 900, 2000), 2080, 480, 30)).toEqual([3100, 600, 900, 2000]);
	expect(moved(box(1000, 100, 900, 2000), -960, -60, 30)).toEqual([40, 40, 900, 2000]);
});

test('resized, the other sides stay, and ten graduations are left', () => {
	const resized = (side: Side, to: number, from = box(1000, 900, 1200, 1200)) =>
		said(resizedObstacle(from, side, mm(to), by));
	expect(resized('left', -100)).toEqual([900, 900, 1300, 1200]);
	expect(resized('right', 100)).toEqual([1000, 900, 1300, 1200]);
	expect(resized('top', -100)).toEqual([1000, 900, 1200, 1100]);
	expect(resized('bottom', -900)).toEqual([1000, 0, 1200, 2100]);
	expect(resized('left', 5000)).toEqual([2190, 900, 10, 1200]);
	expect(resized('right', -5000)).toEqual([1000, 900, 10, 1200]);
	expect(resized('top', 5000)).toEqual([1000, 900, 1200, 1700]);
	expect(resized('bottom', 5000)).toEqual([1000, 2090, 1200, 10]);
	// To the ceiling: its top is pulled down from there, its bottom leaves it there.
	expect(resized('top', -600, box(0, 0, 100))).toEqual([0, 0, 100, 2000]);
	expect(resized('bottom', 50, box(0, 0, 100))).toEqual([0, 50, 100, false]);
});

test('drawn from any corner to any other, within the wall', () => {
	const drawn = (x: number, y: number, toX: number, toY: number, near = 0) =>
		said(drawnObstacle({ x: mm(x), y: mm(y) }, { x: mm(toX), y: mm(toY) }, { ...by, near: mm(near) }));
	expect(drawn(900, 100, 100, 2000)).toEqual([100, 100, 800, 1900]);
	expect(drawn(100, 2000, 900, 20, 30)).toEqual([100, 0, 800, 2000]);
	expect(drawn(-50, -50, 9000, 9000)).toEqual([0, 0, 4000, 2600]);
	expect(drawn(100, 100, 109, 500)).toBeUndefined();
});

test('what is usual lies on its wall', () => {
	for (const kind of usualObstacles)
		for (const unit of ['mm', 'in'] as const) {
			const each = usualObstacle(kind, wall, unit, mm(1));
			expect(each.left + each.width).toBeLessThanOrEqual(wall.length);
			expect(each.name).toBe(kind);
		}
	expect(said(usualObstacle('door', { ...wall, length: mm(600) }, 'mm', mm(1)))).toEqual([0, 0, 600, 2000]);
});

test('whatever is done with one on a wall, it is on its wall, and on the ruler or where it was', () => {
	const side = fc.constantFrom('left', 'right', 'top', 'bottom');
	const far = fc.integer({ min: -5000, max: 5000 });
	fc.assert(
		fc.property(
			fc.nat(3000),
			fc.nat(2000),
			fc.nat(900),
			fc.nat(500),
			side,
			far,
			far,
			fc.nat(40),
			(x, y, w, h, of, dx, dy, near) => {
				const from = box(x, y, w + 10, h + 10);
				const snapping = { ...by, near: mm(near) };
				for (const each of [
					movedObstacle(from, { x: dx * 1e7 + 3, y: dy * 1e7 - 3 }, snapping),
					resizedObstacle(from, of, dx * 1e7 + 3, snapping),
				]) {
					const sides = [each.left, each.bottom, each.width, each.height!];
					expect(Math.min(each.left, each.bottom)).toBeGreaterThanOrEqual(0);
					expect(Math.min(each.width, each.height!)).toBeGreaterThanOrEqual(mm(10));
					expect(each.left + each.width).toBeLessThanOrEqual(wall.length);
					expect(each.bottom + each.height!).toBeLessThanOrEqual(wall.height!);
					expect(sides.every((value) => value % mm(1) === 0)).toBe(true);
				}
			},
		),
	);
});
