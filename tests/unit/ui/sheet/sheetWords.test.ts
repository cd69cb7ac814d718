import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import type { PlacedBlank } from '../../../../src/core/show/cutSheet.ts';
import { inMm } from '../../../../src/ui/sheet/drawnSheet.ts';
import { letterAt, sheetWords } from '../../../../src/ui/sheet/sheetWords.ts';

const at = (x: number, y: number, width: number, height: number) => ({
	...{ x: mm(x), y: mm(y), width: mm(width), height: mm(height) },
});
const blankOf = (part: PlacedBlank['part'], place: ReturnType<typeof at>): PlacedBlank => ({
	...place,
	...{ row: 1, rowId: 'ebb', copy: 1, part, turned: false },
});
const blanks = [blankOf('mount', at(0, 0, 500, 400)), blankOf('undermount', at(0, 400, 500, 400))];
const [flat, narrow, alike] = [at(500, 0, 600, 25), at(500, 25, 30, 700), at(540, 25, 30, 700)];
const scale = { unit: 'mm', ruler: mm(1) } as const;
const words = sheetWords({ blanks, offcuts: [flat, narrow, alike] }, () => '1 Ebb', scale, 10);

test('a blank says its name and its size, and what it is where that is no mount', () => {
	expect(blanks.map(words.ofBlank)).toEqual([
		['1 Ebb', '500 × 400', ''],
		['1 Ebb', '500 × 400', 'undermount'],
	]);
	expect(words.linesOf(inMm(blanks[0]!), words.ofBlank(blanks[0]!, 0))).toEqual({
		lines: ['1 Ebb', '500 × 400'],
		way: 'flat',
	});
});

test('an offcut says its size in one line where it is flat, in two else', () => {
	expect(words.ofOffcut(flat)).toEqual(['offcut 600 × 25']);
	expect(words.ofOffcut(narrow)).toEqual(['offcut', '30 × 700']);
});

test('pieces too narrow for their words have a letter, one for all that say the same, and a legend says which', () => {
	expect(words.legend).toEqual(['offcut 30 × 700']);
	for (const piece of [narrow, alike])
		expect(words.linesOf(inMm(piece), words.ofOffcut(piece))).toEqual({ lines: [letterAt(0)], way: 'letter' });
	expect([letterAt(0), letterAt(1)]).toEqual(['a', 'b']);
});
