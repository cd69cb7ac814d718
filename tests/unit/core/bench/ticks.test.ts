import { expect, test } from 'vitest';
import { changeAnyway, rowsWronged } from '../../../../src/core/bench/cutWarning.ts';
import { spoilBoard, tickCuts } from '../../../../src/core/bench/tickCuts.ts';
import type { CutTick } from '../../../../src/core/show/tick.ts';
import { cutsThatStand, tickFor } from '../../../../src/core/bench/ticks.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { apply, invert } from '../../../../src/core/show/edit.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import type { Show } from '../../../../src/core/show/show.ts';

const sheet = { kind: 'sheet', width: 1200, height: 900 };
const { settings } = readSettings({
	...{ mountSize: '600 x 450 mm', border: 70, bottomWeight: 12 },
	boards: [
		{ ...sheet, name: 'Chalk', thickness: 1.4 },
		{ ...sheet, name: 'Slate', thickness: 1.4 },
		{ ...sheet, name: 'Thick', thickness: 2.2 },
	],
});
const row = (typed: Row['typed']): Row => ({ id: 'a', order: 1, typed });
const begun = row({ shape: '3:2', copies: '2' }); // side 72, top 70, bottom 78
const ticksOf = (each: Row): CutTick[] =>
	(['left', 'right', 'top', 'bottom'] as const).map((side) =>
		tickFor(each, judgeRow(each, settings), settings, { row: 1, copy: 1, part: 'mount', side })!,
	);
const sides = (ticks: readonly CutTick[]) => ticks.map(({ side }) => side);

test.each<{ change: Row['typed']; standing: string[] }>([
	{ change: {}, standing: ['left', 'right', 'top', 'bottom'] },
	{ change: { title: 'Ebb' }, standing: ['left', 'right', 'top', 'bottom'] },
	{ change: { top: '71' }, standing: ['left', 'right'] }, // the bottom takes what the top gives
	{ change: { 'mount width': '610' }, standing: [] }, // another blank
	{ change: { copies: '1' }, standing: ['left', 'right', 'top', 'bottom'] },
	{ change: { mount: 'none' }, standing: [] },
	{ change: { board: 'Thick' }, standing: [] }, // cut in the show's first board, which is thinner
	{ change: { board: 'Slate' }, standing: ['left', 'right', 'top', 'bottom'] }, // no board was asked for by name
])('after $change of what was cut there stand $standing', ({ change, standing }) => {
	const changed = row({ ...begun.typed, 'picture width': '462', 'picture height': '308', ...change });
	const made = cutsThatStand(changed, judgeRow(changed, settings), settings, ticksOf(begun));
	expect(sides(made.standing)).toEqual(standing);
	expect(made.standing.length + made.wrong.length).toBe(4);
});

test.each([
	{ board: ' chalk ', isStanding: true },
	{ board: '', isStanding: true },
	{ board: 'Slate', isStanding: false },
	{ board: 'Moonstone', isStanding: false }, // which the show does not list: asked about before it is typed over the cut one
])('a mount cut in Chalk is one of “$board”: $isStanding', ({ board, isStanding }) => {
	const asked = row({ ...begun.typed, board });
	const { standing } = cutsThatStand(
		asked,
		judgeRow(asked, settings),
		settings,
		ticksOf(row({ ...begun.typed, board: 'Chalk' })),
	);
	expect(standing).toHaveLength(isStanding ? 4 : 0);
});

test('a cut of a copy that is no longer made, or of a row that is gone, does not stand', () => {
	const second = ticksOf(begun).map((tick) => ({ ...tick, copy: 2 }));
	const single = row({ shape: '3:2' });
	expect(cutsThatStand(single, judgeRow(single, settings), settings, second).standing).toEqual([]);
	expect(cutsThatStand(undefined, undefined, settings, second).wrong).toHaveLength(4);
});

const show: Show = { id: 's', name: 'Spring', settings: {}, rows: [begun] };

test('a tick is one edit, and can be taken back; a spoilt board takes its own ticks off and is counted', () => {
	const edit = tickCuts(show, ticksOf(begun), true, 'Tick');
	const ticked = apply(show, edit);
	expect(ticked.ticks).toEqual(ticksOf(begun));
	expect(apply(ticked, invert(edit)).ticks).toEqual([]);
	const other = { ...ticksOf(begun)[0]!, copy: 2 };
	const both = apply(ticked, tickCuts(ticked, [other], true, 'Tick'));
	const mount = { row: 'a', copy: 1, part: 'mount' } as const;
	const spoiling = spoilBoard(both, mount, 'Spoilt');
	const spoilt = apply(both, spoiling);
	expect(spoilt.ticks).toEqual([other, { ...mount, side: 'spoilt', times: 1 }]);
	expect(apply(spoilt, spoilBoard(spoilt, mount, 'Spoilt')).ticks).toContainEqual({
		...mount,
		side: 'spoilt',
		times: 2,
	});
	const back = apply(spoilt, invert(spoiling)).ticks!;
	expect(back).toHaveLength(5);
	expect(back).toEqual(expect.arrayContaining([...both.ticks!]));
});

test('a change says which cuts stand and which would be wrong, each with what it was cut at', () => {
	const typed = row({ ...begun.typed, 'picture width': '462', 'picture height': '308' });
	const ticked = { ...show, rows: [typed], ticks: ticksOf(typed) };
	const worked = (each: Show) => ({ show: each, settings, results: each.rows.map((one) => judgeRow(one, settings)) });
	const changed = { ...ticked, rows: [row({ ...typed.typed, top: '71' })] };
	const [wronged, ...others] = rowsWronged(worked(ticked), worked(changed));
	expect(others).toEqual([]);
	expect(wronged).toMatchObject({
		index: 0,
		sentence: 'Cut: top 70 mm, bottom 78 mm, which would be wrong. Still right: left 72 mm, right 72 mm.',
	});
	const deleted = rowsWronged(worked(ticked), worked({ ...ticked, rows: [] }));
	expect(deleted[0]!.sentence).toMatch(/would be left over\.$/);
	expect([
		changeAnyway([]),
		changeAnyway(deleted),
		changeAnyway([wronged!]),
		changeAnyway([...deleted, wronged!]),
	]).toEqual([
		'Go on all the same',
		'Delete all the same',
		'Change it, start the mount again',
		'Change it, start the mounts again',
	]);
	expect(rowsWronged(worked(ticked), worked({ ...ticked, rows: [row({ ...typed.typed, title: 'Ebb' })] }))).toEqual([]);
	const inChalk = row({ ...typed.typed, board: 'Chalk' });
	const cutInChalk = { ...show, rows: [inChalk], ticks: ticksOf(inChalk).slice(0, 1) };
	const inSlate = { ...cutInChalk, rows: [row({ ...typed.typed, board: 'Slate' })] };
	expect(rowsWronged(worked(cutInChalk), worked(inSlate))[0]!.sentence).toBe(
		'Cut in Chalk: left 72 mm, which would be wrong. All its cuts are lost.',
	);
	// What was wrong before is not told again.
	expect(rowsWronged(worked(changed), worked({ ...changed, rows: [row({ ...typed.typed, top: '72' })] }))).toEqual([]);
});
