import { expect, test } from 'vitest';
import { packPrints } from '../../../src/core/packing/packPrints.ts';
import { boxesWords, boxWords } from '../../../src/core/packing/packingWords.ts';
import { workOut } from '../../../src/core/row/workOut.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { writePackingList } from '../../../src/files/packingCsv.ts';
import { rowOf } from '../core/findings/rowOf.ts';

const frames = [
	{ name: 'Oak', rebateWidth: 500, rebateHeight: 400, moulding: 20, lip: 6, weight: '0.5 kg' },
	{ name: 'Plain', rebateWidth: 500, rebateHeight: 400, moulding: 20, lip: 6 },
	{ name: 'Bare', rebateWidth: 500, rebateHeight: 400 },
];
const { settings } = readSettings({ unit: 'cm', frames, packing: { most: 2 } });
const lines = [
	'mount 50 x 40, frame Oak, glazing none, backing none, copies 2',
	'mount 50 x 40, frame Plain',
	'mount 50 x 40, frame Bare',
	'mount 30 x 20, frame none',
];
const plan = packPrints(
	lines.map((line) => workOut(rowOf(line), settings)),
	settings,
);

test('the packing list as a file: each copy with its box and pair, exact, and guarded against formulas', () => {
	const names = ['=1+1', 'Quay, left', 'Weir', 'Ebb'];
	const text = writePackingList(plan, settings, (place) => names[place]!);
	// The moulding: 2 · (52.8 + 42.8) cm · 0.5 kg/m = 0.956 kg; 2000 cm² of board 1.4 mm and a print of 0.3 mm at 0.7: 0.238 kg.
	expect(text.split('\r\n')).toEqual([
		'box,inside width (cm),inside height (cm),pair,print,copy,width (cm),height (cm),weight (kg),note',
		"1,62.8,52.8,1,'=1+1,1,52.8,42.8,1.194,weight approximate",
		"1,62.8,52.8,1,'=1+1,2,52.8,42.8,1.194,weight approximate",
		'2,62.8,52.8,2,"Quay, left",1,52.8,42.8,,weight not known',
		',,,,Weir,1,,,,framed size not known',
		',,,,Ebb,1,30,20,,flat in a folder',
		'',
	]);
});

test('boxes in words', () => {
	expect(plan.boxes.map((box) => boxWords(box, settings))).toEqual([
		'Box 1: inside 62.8 × 52.8 cm, about 2.4 kg',
		'Box 2: inside 62.8 × 52.8 cm, weight not known',
	]);
	expect(boxesWords(plan)).toBe('3 framed prints in 2 boxes. No fewer are possible with these pairs.');
});
