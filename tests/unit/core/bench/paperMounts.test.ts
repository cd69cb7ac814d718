import { expect, test } from 'vitest';
import { orderBench } from '../../../../src/core/bench/orderBench.ts';
import { cornerTemplates, paperMounts } from '../../../../src/core/bench/paperMounts.ts';
import { toMm } from '../../../../src/core/length/length.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';

/** The mounts on paper of some rows, each as typed, on mounts of 600 × 450 mm with a border of 70 mm all round. */
function mountsOf(...typed: readonly Row['typed'][]) {
	const { settings } = readSettings({
		mountSize: '600 x 450 mm',
		border: 70,
		bottomWeight: 'none',
		bench: { overcut: 1 },
	});
	const rows = typed.map((each, index): Row => ({ id: `${index}`, order: index + 1, typed: each }));
	const results = rows.map((row) => judgeRow(row, settings));
	return paperMounts(rows, results, orderBench(rows, results, settings).steps, settings);
}

const opening = { 'window width': '460', 'window height': '310' };

test('each mount with cuts is on paper, an inner one after its outer one; a row without a mount is not', () => {
	const mounts = mountsOf({ ...opening, 'inner mount': '5' }, { mount: 'none' }, opening);
	expect(mounts.map(({ index, mount, overcut }) => [index, mount.part, toMm(overcut)])).toEqual([
		[0, 'mount', 1],
		[0, 'inner mount', 1],
		[2, 'mount', 1],
	]);
});

test('corners that are alike have one template with all their prints, and those of other borders their own', () => {
	const { pages, tooLarge } = cornerTemplates(mountsOf(opening, opening, { ...opening, top: '60' }), 'A4');
	expect(pages.map((alike) => alike.map(({ index, end }) => `${index} ${end}`))).toEqual([
		['0 top', '1 top'],
		['0 bottom', '1 bottom'],
		['2 top'],
		['2 bottom'],
	]);
	expect(tooLarge).toEqual([]);
});

test('a corner with no room on the paper has no template, and its print is named once', () => {
	const wide = { 'window width': '220', 'window height': '310' };
	const { pages, tooLarge } = cornerTemplates(mountsOf(opening, wide), 'A4');
	expect(pages.flat().map(({ index }) => index)).toEqual([0, 0]);
	expect(tooLarge).toEqual([1]);
});
