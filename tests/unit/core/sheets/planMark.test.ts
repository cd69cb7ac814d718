import { expect, test } from 'vitest';
import { mm, plus } from '../../../../src/core/length/length.ts';
import { tickKnife } from '../../../../src/core/sheets/markSheets.ts';
import { planMark } from '../../../../src/core/sheets/planMark.ts';
import { plannedBoard } from '../../../../src/core/sheets/plannedSheets.ts';
import { apply } from '../../../../src/core/show/edit.ts';
import { namer } from '../show/randomEdits.ts';
import { jobsOfShow, plansOf, showOf } from './sheetsOf.ts';

const show = showOf(6);
const { sheets } = plannedBoard(jobsOfShow(show)[0]!, plansOf(show)[0]!, namer('s'));

test('a plan keeps its mark while it is cut, and when it is opened again', () => {
	const mark = planMark(sheets);
	expect(mark).toMatch(/^[B-Z]{3}$/);
	expect(planMark(JSON.parse(JSON.stringify(sheets)) as typeof sheets)).toBe(mark);
	const begun = apply(show, tickKnife(show, [{ sheet: sheets[0]!, places: [0] }], true, 'Tick')).cutSheets!;
	expect(planMark([begun[0]!, ...sheets.slice(1)])).toBe(mark);
});

test('another cut, another place of a blank, another print or another order of sheets has another mark', () => {
	const [first, ...others] = sheets;
	const [cut] = first!.cuts;
	const [blank] = first!.blanks;
	const changed = [
		[{ ...first!, cuts: [{ ...cut!, at: plus(cut!.at, mm(1)) }, ...first!.cuts.slice(1)] }, ...others],
		[{ ...first!, blanks: [{ ...blank!, x: plus(blank!.x, mm(1)) }] }, ...others],
		[{ ...first!, blanks: [{ ...blank!, rowId: 'other' }] }, ...others],
		others,
	];
	const marks = [sheets, ...changed].map(planMark);
	expect(new Set(marks).size).toBe(marks.length);
});
