import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { framingColumns } from '../../../../src/core/grid/framingColumns.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { cellViews } from '../../../../src/ui/grid/cellView.ts';
import { framingReasons } from '../../../../src/core/reasons/framingReasons.ts';
import { columnIndexOf, gridColumns } from '../../../../src/ui/grid/gridColumns.ts';

const frame = { name: 'Oak', rebateWidth: 604, rebateHeight: 455, lip: 6, moulding: 20, weight: 0.5, depth: 20 };

function sourceOf(typed: Typed, more: object = {}) {
	const { settings, problems } = readSettings({
		mountSize: '600 x 450',
		border: '70',
		frames: [{ ...frame, ...more }],
	});
	expect(problems).toEqual([]);
	const row = {
		id: 'a',
		order: 1,
		typed: { 'picture width': '456', 'picture height': '306', mount: 'show', ...typed },
	};
	return { row, result: judgeRow(row, settings), steps: [], settings };
}

/** What a column of how a row hangs shows, and why. */
const saidOf = (key: string, ...source: Parameters<typeof sourceOf>) => {
	const place = columnIndexOf(key);
	const { result, settings } = sourceOf(...source);
	return [cellViews(sourceOf(...source), gridColumns)[place]!.text, framingReasons[key]!(result, settings)];
};

test.each([
	// 604 + 2 · (20 − 6) by 455 + 28
	['framed width', '632', 'Framed, it is 632 × 483 mm: the rebate + 2 × (20 − 6 mm).'],
	['framed height', '483', 'Framed, it is 632 × 483 mm: the rebate + 2 × (20 − 6 mm).'],
	['play', '4 × 5', 'The rebate of “Oak” is 604 × 455 mm: play 4 across, 5 mm down.'],
	// Side 75 − 1.4 − (6 − 2); top 72 and bottom 78 less 1.4 and 6 − 2.5
	[
		'seen border',
		'69.6, 66.1, 74.1',
		'In the frame “Oak” each border loses the lip’s 6 less half the play, 2 across and 2.5 down, and the bevel’s 1.4 mm. Visible borders inside the frame: sides 69.6, top 66.1, bottom 74.1 mm.',
	],
	['stack', '6.7', 'The stack is about 2 + 1.4 + 0.3 + 3 = 6.7 mm of the rebate’s 20 mm.'],
	// 0.27 m² · (5 + 4.7 · 0.7) + 0.5 · 2.23 m
	[
		'weight',
		'about 3.4 kg',
		'It weighs about 3.4 kg, in grams: glazing 1350, mount 265, print 57, backing 567, moulding 1115.',
	],
])('%s is %s, with the reason: %s', (key, text, why) => {
	const [shown, said] = saidOf(key, { frame: 'Oak' });
	expect(shown).toBe(text);
	expect(said).toContain(why);
});

test('a float loses no bevel', () =>
	expect(saidOf('seen border', { frame: 'Oak', mounting: 'float', paper: '500 x 350' })[1]).toContain(
		'each border loses the lip’s 6 less half the play, 2 across and 2.5 down mm.',
	));

test('without a frame, or with one of which too little is known, there is nothing to say', () => {
	for (const key of framingColumns.filter((each) => each !== 'hinges'))
		expect(saidOf(key, { frame: 'none' })[1], key).toBe(undefined);
	expect(saidOf('seen border', { frame: 'Oak' }, { lip: undefined })).toEqual(['', undefined]);
	expect(saidOf('weight', { frame: 'Oak' }, { weight: undefined })).toEqual(['', undefined]);
});
