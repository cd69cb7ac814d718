import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { groupStillThere, type LabelGroup, labelGroups } from '../../../../src/core/labels/labelGroups.ts';
import { labelPages } from '../../../../src/core/labels/labelPages.ts';
import { sheetsOf } from '../../../../src/core/labels/usualSheets.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { newShow } from '../../../../src/core/show/newShow.ts';
import { readPrinting } from '../../../../src/core/show/printing.ts';

const walls = ['North', 'South', 'Bare'].map((name) => ({ name, length: 4000 }));
const { settings } = readSettings({ walls, labelContents: { wall: ['title'] } });
const rows = [
	{ title: 'Ebb', maker: 'Ines Vale', wall: 'north' },
	{ title: 'Quay', maker: 'Otto Lind', wall: 'North' },
	{ title: 'Kelp', maker: ' ines vale ', wall: 'South' },
	{ title: 'Slip', maker: 'Nobody', copies: '0', wall: 'Bare' },
	{ title: 'Tar', 'picture width': '300' },
].map((typed, order) => ({ id: `${order}`, order, typed }));
const results = rows.map((row) => judgeRow(row, settings));

test('labels can be chosen by the makers and walls of the prints that get any', () =>
	expect(labelGroups(rows, results, settings)).toEqual({
		makers: ['Ines Vale', 'Otto Lind'],
		walls: ['North', 'South'],
	}));

test.each<[LabelGroup, readonly string[]]>([
	[{}, ['Ebb', 'Kelp', 'Quay', 'Tar']],
	[{ maker: 'INES VALE' }, ['Ebb', 'Kelp']],
	[{ wall: 'North' }, ['Ebb', 'Quay']],
	[{ maker: 'Ines Vale', wall: 'South' }, ['Kelp']],
	[{ maker: 'Otto Lind', wall: 'South' }, []],
])('labels of %j: %j', (group, titles) => {
	const [sheet] = sheetsOf(settings, 'A4');
	const show = { ...newShow('s'), rows };
	const run = { kind: 'wall' as const, sheet: sheet!, start: 1, isOnlyNew: false, group };
	const { pages } = labelPages({ ...run, show, results, settings, costOf: () => undefined }, () => 1);
	expect(
		pages
			.flat()
			.flatMap((label) => label?.lines.map(({ text }) => text) ?? [])
			.sort(),
	).toEqual(titles);
});

test('a maker or a wall that no print has any more is no choice, and what is kept of it is read again', () => {
	const groups = labelGroups(rows, results, settings);
	expect(groupStillThere({ maker: 'ines vale', wall: 'Gone' }, groups)).toEqual({ maker: 'Ines Vale' });
	expect(
		readPrinting({ labels: { wall: { maker: 'Otto Lind', wall: 'South' }, back: { maker: '', wall: 3 } } }),
	).toEqual({
		...{ shown: [], labels: { wall: { maker: 'Otto Lind', wall: 'South' }, back: {} } },
	});
});
