import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
	columnsInPage,
	headHeight,
	rowHeight,
	rowsInPage,
	shareSlots,
	type Slot,
	withPlace,
} from '../../../../src/ui/grid/slots.ts';

test('the rows in view are in the page with one or two over, and the active row wherever it is', () => {
	const rows = rowsInPage(100 * rowHeight, 10 * rowHeight, 1000, 3);
	expect(rows).toEqual([99, 100, 101, 102, 103, 104, 105, 106, 107, 108, 109, 110, 3]);
	expect(rowsInPage(0, 10 * rowHeight, 5, 2)).toEqual([0, 1, 2, 3, 4]);
	expect(rowsInPage(0, 10 * rowHeight, 0, -1)).toEqual([]);
});

test('wherever the rows are scrolled to, every one of which a part is seen is in the page', () =>
	fc.assert(
		fc.property(fc.nat(900 * rowHeight), fc.integer({ min: 1, max: 1200 }), (top, height) => {
			const rows = rowsInPage(top, height, 1000, -1);
			const last = Math.min(999, Math.ceil((top + height) / rowHeight) - 1);
			for (let row = Math.floor(top / rowHeight); row <= last; row++) expect(rows).toContain(row);
			expect(rows.length).toBeLessThanOrEqual(Math.ceil(height / rowHeight) + 2);
		}),
	));

const edges = [24, 74, 174, 274, 374, 474, 574];

test.each([
	{ at: 0, width: 374, places: [0, 1, 2, 3, 4] },
	{ at: 100, width: 374, places: [0, 1, 2, 3, 4, 5] },
	{ at: 99, width: 374, places: [0, 1, 2, 3, 4, 5] },
	{ at: 200, width: 374, places: [0, 1, 3, 4, 5] },
	{ at: 0, width: 0, places: [0, 1] },
])('$width pixels at $at show the columns $places, two of which stay', ({ at, width, places }) => {
	expect(columnsInPage(edges, 2, at, width)).toEqual(places);
});

test('of columns that are as narrow as they may be none is kept over', () => {
	const narrow = Array.from({ length: 36 }, (_, place) => 24 + place * 44);
	expect(columnsInPage(narrow, 2, 470, 843)).toHaveLength(20);
});

test('on a tablet held sideways there are never more than 300 cells in the page', () =>
	fc.assert(
		fc.property(
			fc.array(fc.integer({ min: 44, max: 640 }), { minLength: 33, maxLength: 33 }),
			fc.boolean(),
			fc.nat(9000 * rowHeight),
			fc.nat(20_000),
			(widths, isNarrow, top, left) => {
				const edges = [24, 68, 112];
				for (const width of widths) edges.push(edges.at(-1)! + (isNarrow ? 44 : width));
				const columns = columnsInPage(edges, 2, Math.min(left, edges.at(-1)! - 843), 843);
				const rows = rowsInPage(top, 576 - headHeight, 10_000, -1);
				const active = 3; // of an active row elsewhere: the cells that stay, and the active one
				expect(rows.length * columns.length + active).toBeLessThanOrEqual(300);
			},
		),
	));

test('a place is put in where it belongs', () => {
	const places = [0, 1, 5, 6];
	expect(withPlace(places, 3)).toEqual([0, 1, 3, 5, 6]);
	expect(withPlace(places, 5)).toBe(places);
});

test('a row that stays in the page keeps its element, and no two rows share one', () =>
	fc.assert(
		fc.property(fc.array(fc.tuple(fc.nat(900), fc.nat(999)), { minLength: 2, maxLength: 12 }), (places) => {
			let slots: readonly Slot[] = [];
			for (const [top, active] of places) {
				const rows = rowsInPage(top * rowHeight, 600, 1000, active);
				const next = shareSlots(slots, rows);
				const before = new Map(slots.map(({ index, slot }) => [index, slot]));
				expect(next.map(({ index }) => index).sort((a, b) => a - b)).toEqual([...rows].sort((a, b) => a - b));
				expect(new Set(next.map(({ slot }) => slot)).size).toBe(next.length);
				for (const { index, slot } of next) if (before.has(index)) expect(slot).toBe(before.get(index));
				slots = next;
			}
		}),
	));
