import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { blanksLeftOver } from '../../../../src/core/sheets/blankWarning.ts';
import { markCut, spoilSheet, tickKnife } from '../../../../src/core/sheets/markSheets.ts';
import { apply } from '../../../../src/core/show/edit.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Show } from '../../../../src/core/show/show.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { plannedSheet, showOf } from './sheetsOf.ts';

const show = showOf(4);
const sheet = plannedSheet(show); // of the first two prints
const cut = apply(show, markCut(show, [sheet], 'Mark'));

const worked = (show: Show) => {
	const { settings } = readSettings(show.settings);
	return { show, settings, results: show.rows.map((row) => judgeRow(row, settings)) };
};
const withFirst = (show: Show, typed: Typed): Show => ({
	...show,
	rows: show.rows.map((row, place) => (place === 0 ? { ...row, typed: { ...row.typed, ...typed } } : row)),
});
const leftOver = (before: Show, after: Show) =>
	blanksLeftOver(worked(before), worked(after)).map(({ index, sentence }) => `${index} ${sentence}`);

const said = '0 A blank of 600 × 450 mm, cut from “Chalk”, would be left over.';

test.each<{ what: string; after: Show; told: readonly string[] }>([
	{ what: 'another size of mount', after: withFirst(cut, { mount: '500 x 400 mm' }), told: [said] },
	{ what: 'another board', after: withFirst(cut, { board: 'Greyback' }), told: [said] },
	{ what: 'no copies', after: withFirst(cut, { copies: '0' }), told: [said] },
	{ what: 'the print deleted', after: { ...cut, rows: cut.rows.slice(1) }, told: [said] },
	{ what: 'the mount turned', after: withFirst(cut, { mount: '450 x 600 mm', shape: '2:3' }), told: [] },
	{ what: 'another title', after: withFirst(cut, { title: 'Ebb' }), told: [] },
	{ what: 'one that cannot be read yet', after: withFirst(cut, { 'mount width': 'abc', mount: 'fit' }), told: [] },
	{
		what: 'the show’s mount, for the two that are cut and not for the others',
		after: { ...cut, settings: { ...cut.settings, mountSize: '500 x 400 mm' } },
		told: [said, said.replace('0', '1')],
	},
])('after a change, $what', ({ after, told }) => {
	expect(leftOver(cut, after)).toEqual(told);
});

test('a blank of a sheet that is only begun is said to be on it; of one that is spoilt nothing is said', () => {
	const begun = apply(
		show,
		tickKnife(show, [{ sheet: { ...sheet, cuts: [...sheet.cuts, ...sheet.cuts] }, places: [0] }], true, 'Tick'),
	);
	expect(leftOver(begun, withFirst(begun, { copies: '0' }))[0]).toBe(
		'0 A blank of 600 × 450 mm, on a started sheet of “Chalk”, would be left over.',
	);
	const spoilt = apply(show, spoilSheet(show, sheet, 'Spoil'));
	expect(leftOver(spoilt, withFirst(spoilt, { copies: '0' }))).toEqual([]);
});

test('what was left over before is not said again', () => {
	const smaller = withFirst(cut, { mount: '500 x 400 mm' });
	expect(leftOver(smaller, withFirst(smaller, { mount: '400 x 300 mm' }))).toEqual([]);
});
