import fc from 'fast-check';
import { expect, test } from 'vitest';
import { deckle } from '../../../../src/ui/mount/deckle.ts';

const pointsOf = (path: string) =>
	path
		.slice(1, -1)
		.split('L')
		.map((point) => point.split(' ').map(Number) as [number, number]);

test('a deckle edge wanders within the sheet, never further in than it may, and is the same each time', () =>
	fc.assert(
		fc.property(
			fc.record({ width: fc.integer({ min: 20, max: 900 }), height: fc.integer({ min: 20, max: 900 }) }),
			fc.integer({ min: 2, max: 9 }),
			({ width, height }, step) => {
				const sheet = { left: 10, right: 10 + width, top: 20, bottom: 20 + height };
				const path = deckle(sheet, { step, depth: 3 });
				expect(deckle(sheet, { step, depth: 3 })).toBe(path);
				const points = pointsOf(path);
				expect(points.length).toBeGreaterThanOrEqual(8);
				const inward = points.map(([x, y]) =>
					Math.min(x - sheet.left, sheet.right - x, y - sheet.top, sheet.bottom - y),
				);
				expect(Math.min(...inward)).toBeGreaterThanOrEqual(0);
				expect(Math.max(...inward)).toBeLessThanOrEqual(3);
			},
		),
	));

test('it bends, and no side is like the one across', () => {
	const points = pointsOf(deckle({ left: 0, right: 100, top: 0, bottom: 100 }, { step: 5, depth: 3 }));
	const side = (from: number, depthOf: (point: [number, number]) => number) =>
		points.slice(from, from + 20).map((point) => depthOf(point).toFixed(2));
	const top = side(0, ([, y]) => y);
	expect(new Set(top).size).toBeGreaterThan(10);
	expect(side(40, ([, y]) => 100 - y)).not.toEqual(top);
});
