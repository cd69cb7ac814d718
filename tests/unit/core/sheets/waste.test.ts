import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import type { Layout } from '../../../../src/core/sheets/layout.ts';
import { offcutShareOf, wasteShareOf } from '../../../../src/core/sheets/waste.ts';

const piece = (width: number, height: number) => ({ width: mm(width), height: mm(height) });

test('what is neither a blank nor kept is waste, and what is kept has a share of its own', () => {
	// A sheet of 1000 × 500: half of it a blank, three tenths kept, the rest waste.
	const layout = { stock: piece(1000, 500), blanks: [piece(500, 500)], offcuts: [piece(300, 500)] };
	const layouts = [layout, { ...layout, offcuts: [] }] as unknown as readonly Layout[];
	expect(offcutShareOf(layouts.slice(0, 1))).toBeCloseTo(0.3);
	expect(wasteShareOf(layouts.slice(0, 1))).toBeCloseTo(0.2);
	expect(offcutShareOf(layouts)).toBeCloseTo(0.15);
	expect([offcutShareOf([]), wasteShareOf([])]).toEqual([0, 0]);
});
