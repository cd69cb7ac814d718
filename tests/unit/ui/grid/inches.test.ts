import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { cellViews } from '../../../../src/ui/grid/cellView.ts';
import { columnIndexOf, gridColumns } from '../../../../src/ui/grid/gridColumns.ts';
import { inchRow, inchText } from '../../../browser/bench/inchReckoning.ts';

const { settings } = readSettings({ unit: 'in' });
/** Sides of pictures that leave a border on every side, in 32nds of an inch. */
const sides = fc.tuple(fc.integer({ min: 3 * 32, max: 18 * 32 }), fc.integer({ min: 3 * 32, max: 14 * 32 }));

test('every cell of an inch show is what exact fractions give, written in whole inches and a fraction', () =>
	fc.assert(
		fc.property(sides, fc.boolean(), (parts, isTurned) => {
			const [long, short] = parts[0] > parts[1] ? parts : parts.toReversed();
			fc.pre(long! !== short! && short! <= 14 * 32);
			const [width, height] = (isTurned ? [short, long] : [long, short]).map((part) =>
				inchText(new Fraction(part!, 32)),
			) as [string, string];
			const row = { id: 'a', order: 1, typed: { 'picture width': width, 'picture height': height } };
			const views = cellViews({ row, result: judgeRow(row, settings), steps: [], settings }, gridColumns);
			const expected = inchRow(width, height);
			const shown = Object.keys(expected).map((key) => [key, views[columnIndexOf(key)]!.text]);
			expect(Object.fromEntries(shown), `${width} × ${height}`).toEqual(expected);
		}),
		{ numRuns: 300 },
	));
