import fc from 'fast-check';
import { expect, test } from 'vitest';
import { protectionOf } from '../../../../src/core/reasons/protection.ts';
import { askableKeys, whyItIsSo } from '../../../../src/core/reasons/whyItIsSo.ts';
import type { SizeKey } from '../../../../src/core/row/cells.ts';
import { solveRow } from '../../../../src/core/row/solveRow.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { rowOf, wideShow } from '../findings/rowOf.ts';
import { randomCells, randomSettings } from '../row/randomRows.ts';
import { rowOfCells } from '../row/rowOfCells.ts';
import { runs } from '../../../soak.ts';

const { settings } = readSettings(wideShow);

test.each<[string, SizeKey, string]>([
	['shape 3:2', 'windowWidth', '600 − 2 × 72 = 456 mm.'],
	['shape 3:2', 'side', '(600 − 455.4) ÷ 2 = 72.3 mm. Rounded to the 1 mm ruler: 72.'],
	['shape 3:2', 'top', '70 mm is the show’s border.'],
	['shape 3:2', 'pictureWidth', 'The window’s 456 + 2 × 3 overlap = 462 mm.'],
	['shape 3:2', 'mountWidth', '600 mm comes from the show’s mount.'],
	[
		'picture 508 x 339',
		'top',
		'450 − 333 = 117 is shared, the bottom 12 % wider: 55.2 mm above. Rounded to the 1 mm ruler: 55.',
	],
	['picture 456 x 306, side 80', 'mountWidth', 'The mount follows from what is typed: 2 × 80 + 450 = 610 mm.'],
	['picture 456 x 306, side 80', 'top', '80 mm is the side typed in this row.'],
	['picture 456 x 306, top 80', 'bottom', '450 − 300 − 80 = 70 mm.'],
	['picture 300 x 200, mount fit', 'mountHeight', 'The mount is cut to fit: 70 + 194 + 78 = 342 mm.'],
	['picture 300 x 200, mount fit', 'windowWidth', 'The picture’s 300 − 2 × 3 overlap = 294 mm.'],
	['shape 3:2, bottom 60', 'pictureHeight', 'By the shape 3:2, 514 gives 342.7 mm.'],
	['picture 456 x 306', 'pictureWidth', '456 mm is typed.'],
	['shape 3:2, paper 300 x 210', 'pictureWidth', '300 mm is what the paper holds; the mount has room for 462.'],
	[
		'bottom 150, bottom weight optical centre, paper 250 x 210',
		'pictureHeight',
		'187 mm is the height without the paper. A narrower picture gets no higher.',
	],
	['bottom 150, bottom weight optical centre, paper 250 x 210', 'top', '450 − 181 − 150 = 119 mm.'],
])('%s: %s: %s', (line, key, reason) => expect(whyItIsSo(workOut(rowOf(line), settings), key, settings)).toBe(reason));

test('every result has a reason, and no other cell has', () =>
	fc.assert(
		fc.property(randomCells, randomSettings, (cells, random) => {
			const { solved } = solveRow(cells, random);
			const worked = workOut(rowOfCells(cells), random);
			for (const key of askableKeys)
				expect(whyItIsSo(worked, key, random) === undefined, key).toBe(solved[key] === undefined);
		}),
		{ numRuns: runs(100, 5000) },
	));

test.each([
	[
		'picture 456 x 306, glazing glass',
		'The mount keeps the print 1.4 mm off the glass (the board’s thickness is not known; 1.4 mm is usual).',
	],
	[
		'picture 456 x 306, inner mount 5, glazing acrylic',
		'The mount and the inner mount keep the print 2.8 mm off the acrylic (the board’s thickness is not known; 1.4 mm is usual).',
	],
	[
		'picture 456 x 306, frame none',
		'No glazing. Nothing touches the print, and nothing keeps dust and fingers off it.',
	],
	['picture 456 x 306, mount none', 'Nothing keeps the print off the glass. It has neither mount nor spacer.'],
	['picture 456 x 306, mount none, spacer 3, glazing glass', 'A spacer keeps the print 3 mm off the glass.'],
	[
		'picture 456 x 306, mount none, glazing glass',
		'Nothing keeps the print off the glass. It has neither mount nor spacer.',
	],
	[
		'picture 456 x 306, glazing none',
		'No glazing. Nothing touches the print, and nothing keeps dust and fingers off it.',
	],
])('%s: %s', (line, sentence) => expect(protectionOf(workOut(rowOf(line), settings), settings)).toBe(sentence));
