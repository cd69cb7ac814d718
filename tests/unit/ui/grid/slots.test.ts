import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rowHeight, rowsInPage, shareSlots, type Slot } from '../../../../src/ui/grid/slots.ts';

test('the rows in view are in the page, and the active row wherever it is', () => {
	const rows = rowsInPage(100 * rowHeight, 10 * rowHeight, 1000, 3);
	expect(rows).toContain(100);
	expect(rows).toContain(109);
	expect(rows).toContain(3);
	expect(rows.length).toBeLessThan(40);
	expect(rowsInPage(0, 10 * rowHeight, 5, 2)).toEqual([0, 1, 2, 3, 4]);
	expect(rowsInPage(0, 10 * rowHeight, 0, -1)).toEqual([]);
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
