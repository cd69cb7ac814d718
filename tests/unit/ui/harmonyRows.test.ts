import { expect, test } from 'vitest';
import { harmonise } from '../../../src/core/harmonise/harmonise.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { harmonyRows, mostDifference } from '../../../src/ui/across/harmonyRows.ts';
import { rowOf, wideShow } from '../core/findings/rowOf.ts';

const { settings } = readSettings({ ...wideShow, sizes: [{ name: 'Middle', width: '600 mm', height: '450 mm' }] });

test('each print of a choice says whether it changes, and if not, why', () => {
	const lines = [
		'shape 3:2, picture width 300',
		'shape 3:2',
		'mount height 450, top 70, bottom 84, picture height 316, picture width 400',
		'picture 300 x 200, mount none',
		'shape 20:1',
	];
	const rows = lines.map((line, index) => ({ ...rowOf(line), id: `${index}`, order: index }));
	const results = rows.map((row) => judgeRow(row, settings));
	const harmonised = harmonise(rows, settings, 1).rows;
	expect(harmonyRows(harmonised, rows, results).map(({ standing }) => standing)).toEqual([
		'changes',
		'same',
		'stopped',
		'no mount',
		'same',
	]);
	const tight = harmonise(rows.slice(0, 1), { ...settings, leastBorder: settings.mountSize!.width }, 1).rows;
	expect(harmonyRows(tight, rows, results).map(({ standing }) => standing)).toEqual(['fits none']);
	expect(harmonyRows(harmonised, rows.slice(1), results.slice(1)).map(({ row }) => row.id)).toEqual([
		'1',
		'2',
		'3',
		'4',
	]);
});

test('the most that the long side of one print changes', () => {
	const of = (differences: readonly (number | undefined)[]) =>
		mostDifference(differences.map((difference) => ({ harmonised: { difference } }) as never));
	expect([of([3, undefined, 12, 0]), of([undefined]), of([])]).toEqual([12, 0, 0]);
});
