import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { mm } from '../../../../src/core/length/length.ts';
import { frameSizes, legsMeasured } from '../../../../src/core/order/frameSizes.ts';
import { stickWords } from '../../../../src/core/order/getSentences.ts';
import { whatToGet } from '../../../../src/core/order/whatToGet.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { planAllSticks } from '../../../../src/core/sticks/planSticks.ts';
import { stickJobsOf } from '../../../../src/core/sticks/stickJobsOf.ts';

const frames = [
	{ name: 'Oak', moulding: 20, lip: 6, depth: 40, stick: 3000 },
	{ name: 'Large', width: 600, height: 450, clearance: 4, moulding: 22, lip: 6 },
	{ name: 'Bare', width: 600, height: 450 },
];
const { settings } = readSettings({ mountSize: '600 x 450 mm', border: 70, frames });
const nameOf = (place: number) => `Print ${place + 1}`;

function sizesOf(...cells: readonly Typed[]) {
	const rows = cells.map((typed, order) => ({ id: `${order}`, order, typed: { shape: '3:2', ...typed } }));
	const results = rows.map((row) => judgeRow(row, settings));
	const sticks = planAllSticks(stickJobsOf(rows, results, settings), { secondsLeft: () => 0.2 });
	const { lines } = whatToGet({ rows, results, settings, plans: [], sticks });
	return { sticks, said: lines.flatMap((line) => frameSizes(line, results, nameOf, settings)) };
}

test('made frames say rebate and outside size, and for which prints', () => {
	const { said } = sizesOf({ frame: 'Oak', copies: '4' }, { frame: 'Oak' }, { frame: 'Oak', shape: '2:3' });
	// 600 + 3 and 450 + 3; outside 2 · (20 − 6) more
	expect(said).toEqual([
		'Rebate 603 × 453, outside 631 × 481 mm, for Print 1 (4 copies) and Print 2.',
		'Rebate 453 × 603, outside 481 × 631 mm, for Print 3.',
	]);
});

test('a frame that is bought has one size, whichever way prints hang in it', () => {
	expect(sizesOf({ frame: 'Large' }, { frame: 'Large', shape: '2:3' }).said).toEqual([
		'Rebate 604 × 454, outside 636 × 486 mm.',
	]);
	expect(sizesOf({ frame: 'Bare' }).said).toEqual(['Rebate 603 × 453 mm.']);
	expect(sizesOf({ frame: 'none' }).said).toEqual([]);
});

test('many prints of one size are counted, for their names follow', () => {
	const many = Array.from({ length: 13 }, () => ({ frame: 'Oak' }));
	expect(sizesOf(...many).said).toEqual(['Rebate 603 × 453, outside 631 × 481 mm, for 13 prints.']);
});

test('legs that are alike are said once, and from where to where they are measured', () => {
	const { sticks } = sizesOf({ frame: 'Oak' });
	expect(stickWords(sticks[0]!, nameOf, settings)[0]).toBe('2 × 631 mm (Print 1), 2 × 481 mm (Print 1); 756 mm left');
	// Which copy a leg is of is said of each, where there are several.
	const copied = stickWords(sizesOf({ frame: 'Oak', copies: '2' }).sticks[0]!, nameOf, settings).join(' ');
	expect(copied.match(/\(Print 1[^)]*\)/g)!.filter((whose) => !/^\(Print 1, copy [12]\)$/.test(whose))).toEqual([]);
	expect(copied).toContain('copy 1');
	expect(legsMeasured(mm(5), settings)).toMatch(
		/^Legs are long point to long point; the saw takes 5 mm more for each\. /,
	);
});
