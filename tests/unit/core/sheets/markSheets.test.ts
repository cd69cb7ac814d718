import { expect, test } from 'vitest';
import { spoilBoard } from '../../../../src/core/bench/tickCuts.ts';
import { isWholeCut } from '../../../../src/core/show/cutSheet.ts';
import { handBack, markCut, spoilSheet, tickKnife } from '../../../../src/core/sheets/markSheets.ts';
import { apply, compose, type Edit, invert, isEmpty, rebase } from '../../../../src/core/show/edit.ts';
import { replaceShow } from '../../../../src/core/commands/replaceShow.ts';
import type { Show } from '../../../../src/core/show/show.ts';
import { plannedSheet, plansOf, showOf } from './sheetsOf.ts';

const show = showOf(8);
const sheet = plannedSheet(show);
const cut = apply(show, markCut(show, [sheet], 'Mark as cut'));

/** The rows that get a blank from what is not cut yet, and all blanks by row. */
const toCut = (each: Show) =>
	plansOf(each).flatMap(({ layouts }) =>
		layouts.filter(({ isCut }) => !isCut).flatMap(({ blanks }) => blanks.map(({ rowId }) => rowId)),
	);
const rowsOfSheet = sheet.blanks.map(({ rowId }) => rowId);

test('a sheet that is cut stays as it is, and the rest is planned round it', () => {
	expect(sheet.blanks).toHaveLength(2);
	const [plan] = plansOf(cut);
	expect(plan!.layouts[0]).toMatchObject({ isCut: true, cuts: sheet.cuts });
	expect(plan!.layouts[0]!.blanks.map(({ rowId, x, y }) => [rowId, x, y])).toEqual(
		sheet.blanks.map(({ rowId, x, y }) => [rowId, x, y]),
	);
	expect(toCut(cut)).toHaveLength(6);
	expect(toCut(cut).filter((id) => rowsOfSheet.includes(id))).toEqual([]);
	expect(plan!.cost).toBe(3600);
});

test('a row that changes its mount leaves its cut blank over, and gets another', () => {
	const [first, ...others] = cut.rows;
	const changed = { ...cut, rows: [{ ...first!, typed: { shape: '3:2', mount: '500 x 400 mm' } }, ...others] };
	expect(toCut(changed).sort()).toEqual([...toCut(cut), 'r1'].sort());
});

test('a spoilt sheet is used up, gives nothing, and its blanks are planned again', () => {
	const spoilt = apply(cut, spoilSheet(cut, cut.cutSheets![0]!, 'Mark a sheet as spoilt'));
	expect(toCut(spoilt).sort()).toEqual(show.rows.map(({ id }) => id));
	expect(plansOf(spoilt)[0]).toMatchObject({ cost: 4500, count: 5 });
});

test('a board that is spoilt at the bench wants another blank', () => {
	const row = rowsOfSheet[0]!;
	const spoilt = apply(cut, spoilBoard(cut, { row, copy: 1, part: 'mount' }, 'Spoil a board'));
	expect(toCut(spoilt).filter((id) => id === row)).toHaveLength(1);
	expect(toCut(spoilt)).toHaveLength(7);
});

test('knife cuts are ticked one by one; the last tick taken off hands the sheet back to the plan', () => {
	const tick = (from: Show, places: readonly number[], isMade: boolean) =>
		apply(from, tickKnife(from, [{ sheet: from.cutSheets?.[0] ?? sheet, places }], isMade, 'Tick'));
	const begun = tick(show, [0], true);
	expect(begun.cutSheets).toMatchObject([{ id: 's0', made: [0] }]);
	expect(isWholeCut(begun.cutSheets![0]!)).toBe(true);
	expect(tick(begun, [0], false).cutSheets).toEqual([]);
	expect(isEmpty(tickKnife(show, [{ sheet, places: [0] }], false, 'Tick'))).toBe(true);
});

test('every edit of sheets is undone and redone exactly, composed too', () => {
	const steps: ((from: Show) => Edit)[] = [
		(from) => tickKnife(from, [{ sheet, places: [0] }], true, 'a'),
		(from) => markCut(from, [sheet, plannedSheet(from, 0)], 'b'),
		(from) => spoilSheet(from, from.cutSheets![0]!, 'c'),
		(from) => handBack(from, from.cutSheets!, 'd'),
	];
	const start: Show = { ...show, cutSheets: [] };
	const shows = [start];
	const edits = steps.map((step) => {
		const edit = step(shows.at(-1)!);
		shows.push(apply(shows.at(-1)!, edit));
		return edit;
	});
	const whole = edits.reduce(compose);
	expect(apply(start, whole)).toStrictEqual(shows.at(-1));
	edits.forEach((edit, place) => {
		expect(apply(shows[place + 1]!, invert(edit))).toStrictEqual(shows[place]);
	});
	expect(isEmpty(whole)).toBe(true);
});

test('an edit made on what another tab has changed is undone to what that tab left', () => {
	const begun = apply(show, tickKnife(show, [{ sheet, places: [0] }], true, 'Tick'));
	const mine = rebase(markCut(show, [sheet], 'Mark as cut'), begun);
	expect(apply(apply(begun, mine), invert(mine))).toStrictEqual(begun);
});

test('a show put in the place of another brings its sheets, and undo brings back those before', () => {
	const edit = replaceShow(cut, show, () => 'new', 'Open');
	expect(apply(cut, edit).cutSheets).toEqual([]);
	expect(apply(apply(cut, edit), invert(edit))).toStrictEqual(cut);
});

test('ticks of several cuts of a sheet are kept in order, and taken off one by one', () => {
	const small = showOf(4, { mountSize: '300 x 450 mm' });
	const own = plannedSheet(small);
	expect(own.cuts.length).toBeGreaterThan(2);
	const begun = apply(small, tickKnife(small, [{ sheet: own, places: [2, 0] }], true, 'Tick'));
	expect(begun.cutSheets).toMatchObject([{ made: [0, 2] }]);
	expect(isWholeCut(begun.cutSheets![0]!)).toBe(false);
	const less = apply(begun, tickKnife(begun, [{ sheet: own, places: [0] }], false, 'Take off tick'));
	expect(less.cutSheets).toMatchObject([{ made: [2] }]);
});
