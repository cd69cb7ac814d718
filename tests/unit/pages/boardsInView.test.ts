import { expect, test } from 'vitest';
import { mm } from '../../../src/core/length/length.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { plannedBoard } from '../../../src/core/sheets/plannedSheets.ts';
import { markCut, tickKnife } from '../../../src/core/sheets/markSheets.ts';
import { apply } from '../../../src/core/show/edit.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Show } from '../../../src/core/show/show.ts';
import { blankNames } from '../../../src/pages/blankNames.ts';
import { boardsInView } from '../../../src/pages/boardsInView.ts';
import { activeKnifeStep, beforeTheFirst, knifeWork } from '../../../src/pages/knifeWork.ts';
import { namer } from '../core/show/randomEdits.ts';
import { jobsOfShow, plansOf, showOf } from '../core/sheets/sheetsOf.ts';

const show = showOf(6);
const boards = [plannedBoard(jobsOfShow(show)[0]!, plansOf(show)[0]!, namer('s'))];
const viewOf = ({ cutSheets = [] }: Show) => boardsInView(boards, cutSheets)[0]!;
const numbers = (sheets: readonly { readonly number: number }[]) => sheets.map(({ number }) => number);

test('sheets cut alike stand together, and each keeps its number when it is cut', () => {
	expect(viewOf(show).toCut.map(numbers)).toEqual([[1, 2, 3]]);
	const cut = apply(show, markCut(show, [boards[0]!.sheets[1]!], 'Mark'));
	expect(viewOf(cut).toCut.map(numbers)).toEqual([[1, 3]]);
	expect(numbers(viewOf(cut).cut)).toEqual([2]);
});

test('a sheet cut from an earlier plan comes first, and its cuts are no work of the knife any more', () => {
	const earlier = { ...boards[0]!.sheets[0]!, id: 'earlier', made: [0] };
	const view = viewOf({ ...show, cutSheets: [earlier] });
	expect(numbers(view.cut)).toEqual([1]);
	expect(view.toCut.map(numbers)).toEqual([[2, 3, 4]]);
	expect(knifeWork([view])).toMatchObject({ made: 0, all: 3 });
	expect(knifeWork([view]).steps.flatMap(({ sheets }) => sheets.map(({ sheet }) => sheet.id))).not.toContain('earlier');
});

test('the knife has every sheet of the plan, the begun ones with their ticks, but none that is spoilt', () => {
	const begun = apply(show, tickKnife(show, [{ sheet: boards[0]!.sheets[2]!, places: [0] }], true, 'Tick'));
	const work = knifeWork([viewOf(begun)]);
	expect(work).toMatchObject({ made: 1, all: 3, steps: [{ number: 1, isLater: false }] });
	expect([...work.names.values()]).toEqual(['Chalk, sheet 1', 'Chalk, sheet 2', 'Chalk, sheet 3']);
	const [sheet] = begun.cutSheets!;
	const spoilt = { ...begun, cutSheets: [{ ...sheet!, isSpoilt: true }] };
	expect(knifeWork([viewOf(spoilt)]).all).toBe(2);
});

test('the active step is the one that was gone to, else the first in which something is left to cut', () => {
	const sheet = boards[0]!.sheets[0]!;
	const cut = (at: number) => ({ ...sheet.cuts[0]!, at: mm(at) });
	const cuts = [cut(500), cut(300), cut(400)];
	const workOn = (made: readonly number[]) =>
		knifeWork([{ ...viewOf(show), sheets: [{ sheet: { ...sheet, cuts, made }, number: 1 }] }]);
	const { steps } = workOn([]);
	const keys = steps.map(({ key }) => key);
	expect(new Set(keys).size).toBe(3);
	expect(activeKnifeStep(workOn([]), undefined), 'before the first cut').toBe(0);
	const first = steps[0]!.sheets[0]!.places;
	expect(activeKnifeStep(workOn(first), undefined)).toBe(2);
	expect(activeKnifeStep(workOn(first), keys[0]), 'a step stays active though it is done').toBe(1);
	expect(activeKnifeStep(workOn(first), beforeTheFirst)).toBe(0);
	expect(activeKnifeStep(workOn(first), 'of another plan')).toBe(2);
	expect(activeKnifeStep(workOn([]), 'of another plan'), 'who has gone on stays among the steps').toBe(1);
	expect(activeKnifeStep(workOn([0, 1, 2]), undefined)).toBe(3);
});

test('a blank is named by its print and copy, and is left over where the print wants another size, or is gone', () => {
	const { settings } = readSettings(show.settings);
	const [blank] = boards[0]!.sheets[0]!.blanks;
	const nameWith = (typed: Record<string, string>, id = blank!.rowId!, board = 'chalk') => {
		const rows = [{ id, order: 1, typed: { shape: '3:2', title: 'Ebb', ...typed } }];
		return blankNames(
			rows,
			rows.map((row) => judgeRow(row, settings)),
			settings,
		)(blank!, { stock: { board } });
	};
	expect(nameWith({})).toBe('Ebb');
	expect(nameWith({ copies: '2' })).toBe('Ebb (1)');
	expect(nameWith({ mount: '450 x 600 mm', shape: '2:3' })).toBe('Ebb');
	expect(nameWith({ mount: '500 x 400 mm' })).toBe('Ebb, left over');
	expect(nameWith({}, 'other')).toBe('left over');
	expect(nameWith({}, blank!.rowId, 'Greyback'), 'of a board that is not asked for any more').toBe('Ebb, left over');
});
