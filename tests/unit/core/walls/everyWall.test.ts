import fc from 'fast-check';
import { expect, test } from 'vitest';
import { overlapsOn } from '../../../../src/core/walls/overlaps.ts';
import { hang, print } from './wallOf.ts';
import { runs } from '../../../soak.ts';

const prints = fc.array(
	fc
		.record({
			width: fc.integer({ min: 100, max: 900 }),
			height: fc.integer({ min: 100, max: 900 }),
			order: fc.option(fc.integer({ min: 1, max: 9 }), { nil: undefined, freq: 1 }),
			left: fc.option(fc.integer({ min: 0, max: 9000 }), { nil: undefined, freq: 5 }),
			centre: fc.option(fc.integer({ min: 500, max: 2200 }), { nil: undefined, freq: 6 }),
		})
		.map(({ width, height, order, left, centre }) =>
			print(`${width}x${height}`, {
				...(order !== undefined && { 'hang order': `${order}` }),
				...(left !== undefined && { 'hang left': `${left}` }),
				...(centre !== undefined && { 'hang centre': `${centre}` }),
			}),
		),
	{ minLength: 1, maxLength: 12 },
);

const walls = fc.record({
	name: fc.constant('North'),
	length: fc.integer({ min: 2000, max: 12_000 }),
	gap: fc.option(fc.integer({ min: 0, max: 400 }), { nil: null, freq: 2 }),
	obstacles: fc.array(
		fc.record({
			left: fc.integer({ min: 0, max: 9000 }),
			width: fc.integer({ min: 50, max: 1200 }),
			bottom: fc.integer({ min: 0, max: 1500 }),
			height: fc.integer({ min: 100, max: 2500 }),
		}),
		{ maxLength: 3 },
	),
});

test('on every wall gaps are alike, the sum is the stretch, nothing overlaps, typed places and the order are kept', () =>
	fc.assert(
		fc.property(prints, walls, fc.constantFrom('1 mm', '0.5 mm', '5 mm', '1/8 in'), (typed, wall, ruler) => {
			const { walls: hung, settings, results } = hang(typed, { walls: [wall], ruler });
			const on = hung[0]!;
			expect(on.prints.map(({ place }) => place).toSorted((a, b) => a - b)).toEqual(typed.map((_, place) => place));
			for (const { place, left, centre } of on.prints) {
				const { hangLeft, hangCentre } = results[place]!.read.cells;
				if (hangLeft !== undefined) expect(left).toBe(hangLeft);
				if (hangCentre !== undefined) expect(centre).toBe(hangCentre);
			}
			/** The edges of a column, from what hangs in it. */
			const edges = (column: number, by: 'left' | 'exactLeft') => {
				const own = on.prints.filter((each) => each.column === column);
				return [
					Math.min(...own.map((each) => each[by])),
					Math.max(...own.map((each) => each[by] + each.size.width)),
				] as const;
			};
			const graduation = settings.ruler;
			const over = overlapsOn(on);
			for (const { from, to, columns, gap, isCrowded } of on.stretches) {
				if (columns.length === 0 || gap === undefined) continue;
				const exact = columns.map((column) => edges(column, 'exactLeft'));
				const spaces = [from, ...exact.map(([, right]) => right)].map((right, at) => (exact[at]?.[0] ?? to) - right);
				// All spaces and widths together are the stretch, to the rounding of doubles.
				const widths = exact.reduce((sum, [left, right]) => sum + right - left, 0);
				expect(spaces.reduce((sum, each) => sum + each, 0) + widths).toBeCloseTo(to - from, 2);
				if (isCrowded) {
					expect(Math.max(...spaces.slice(0, -1).map(Math.abs))).toBeLessThan(1);
					continue;
				}
				expect(Math.min(...spaces)).toBeGreaterThan(-1);
				const cut = columns.map((column) => edges(column, 'left'));
				const inner = cut.slice(1).map(([left], at) => left - cut[at]![1]);
				const ends = [cut[0]![0] - from, to - cut.at(-1)![1]];
				// Where everything lies on the ruler, gaps are the graduations round the exact one; else each is within one of it.
				const alike = wall.gap === null ? [...inner, ...ends] : inner;
				const isOnRuler = [from, to, ...cut.map(([left, right]) => right - left)].every(
					(each) => each % graduation === 0,
				);
				if (isOnRuler && alike.length > 0)
					expect(Math.max(...alike) - Math.min(...alike)).toBeLessThanOrEqual(graduation);
				for (const space of alike) expect(Math.abs(space - gap)).toBeLessThanOrEqual(graduation + 2);
				expect(Math.abs(ends[0]! - ends[1]!)).toBeLessThanOrEqual(2 * graduation + 2);
				// Nothing that was placed overlaps in its stretch.
				for (const each of on.prints.filter(({ column, isCentreTyped }) => columns.includes(column) && !isCentreTyped))
					expect(
						(over.get(each) ?? []).filter(
							(overlap) =>
								overlap.kind === 'print' && columns.includes(overlap.other.column) && !overlap.other.isCentreTyped,
						),
					).toEqual([]);
			}
			// The free columns stand in their order.
			const free = on.stretches.flatMap(({ columns }) => columns);
			const orderOf = (column: number) => {
				const own = on.prints.filter((each) => each.column === column).map(({ place }) => place);
				return [results[own[0]!]!.hangs.order ?? Infinity, Math.min(...own)] as const;
			};
			const orders = free.map(orderOf);
			const sorted = orders.toSorted((a, b) => (a[0] === b[0] ? a[1] - b[1] : a[0] - b[0]));
			expect(orders).toEqual(sorted);
		}),
		{ numRuns: runs(75, 20_000) },
	));
