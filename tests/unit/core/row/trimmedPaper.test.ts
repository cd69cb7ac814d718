import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { mm, toMm } from '../../../../src/core/length/length.ts';
import { printNotes } from '../../../../src/core/order/printWords.ts';
import { whatToPrint } from '../../../../src/core/order/whatToPrint.ts';
import { hingeWords } from '../../../../src/core/reasons/framedWords.ts';
import { layHinges } from '../../../../src/core/row/layHinges.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';

const papers = [{ name: 'Roll', width: 610, roll: '15 m', margin: 3 }];
const { settings } = readSettings({ mountSize: '450 x 600 mm', border: 70, papers });

function worked(typed: Typed) {
	const row = { id: 'a', order: 1, typed };
	const result = judgeRow(row, settings);
	const [picture] = whatToPrint([row], [result], settings).papers[0]?.pictures ?? [];
	const laid = layHinges(result, settings);
	return { result, laid, notes: picture ? printNotes(picture, settings) : [] };
}

test('hinges of a paper wider than the mount are measured on the sheet as it is trimmed, and every hinge is on it', () => {
	const { result, laid, notes } = worked({ 'picture width': '316', 'picture height': '395', paper: 'Roll' });
	const { place } = result;
	// The roll of 610 lies 80 past each edge of 450. Trimmed to 5 inside them it is 440, and 62 of it is beside the picture.
	expect(toMm(place!.from.left)).toBe(-80);
	expect(toMm(laid!.trimmed!.place.paper.width)).toBe(440);
	expect(laid!.trimmed!.cut).toEqual({ left: mm(62), right: mm(62), top: undefined, bottom: undefined });
	// Three, by the paper's own width, at 1, 3 and 5 sixths of 440, from 5.
	expect(laid!.at.map((at) => Math.round(toMm(at) * 10) / 10)).toEqual([78.3, 225, 371.7]);
	const trim = 'Before hinging, trim the paper to 440 × 401 mm. Leave 62 mm left and right, from the picture’s edge.';
	expect(hingeWords(result, settings)).toContain(`${trim} The paper, 440 × 401 mm, lies 5 from the left and`);
	expect(notes).toEqual([trim]);
});

test.each([
	['a paper inside the mount', { 'picture width': '316', 'picture height': '395', paper: '430 x 500 mm' }],
	['a picture without a paper', { 'picture width': '316', 'picture height': '395' }],
])('%s is not trimmed', (_, typed) => {
	const { laid } = worked(typed);
	expect(laid!.trimmed).toBeUndefined();
	expect(laid!.at).toHaveLength(2);
});

test('where the picture itself reaches past the mount nothing is trimmed, and no hinge is measured', () => {
	const typed = { 'picture width': '470', 'picture height': '480', 'window width': '310', paper: '500 x 500 mm' };
	const { result, laid } = worked(typed);
	expect(result.hinges).toEqual({ count: 2 });
	expect(laid).toBeUndefined();
});

test('a paper with its picture to one side is trimmed where it reaches past, and there alone', () => {
	const typed = { 'picture width': '316', 'picture height': '395', paper: '500 x 500 mm', 'margin left': '40' };
	const { laid, notes } = worked(typed);
	expect(laid!.trimmed!.cut).toEqual({ left: undefined, right: mm(62), top: undefined, bottom: undefined });
	expect(notes).toEqual([
		'Before hinging, trim the paper to 418 × 500 mm. Leave 62 mm right, from the picture’s edge.',
	]);
});

test.each([
	['297 x 420 mm', '297', '297', ['No white edge at the left and right to hold the print by.']],
	['297 x 420 mm', '297', '420', ['No white edge on any side to hold the print by.']],
	['297 x 420 mm', '290', '297', []],
])('on %s a picture of %s × %s', (paper, width, height, notes) => {
	expect(worked({ 'picture width': width, 'picture height': height, paper }).notes).toEqual(notes);
});
