import { expect, test } from 'vitest';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { length, toMm } from '../../../../src/core/length/length.ts';
import { hookDrawing, hookMarks, markInDrawing } from '../../../../src/core/order/hookMarks.ts';
import { hangingList } from '../../../../src/core/walls/hangingList.ts';
import { print, rowsOf } from '../walls/wallOf.ts';

// As large framed as its mount: a rebate without play, a face no wider than its lip.
const frames = [{ name: 'Plain', clearance: 0, moulding: 20, lip: 20, weight: 0 }];

function marks(prints: readonly Typed[], hanging: object = {}) {
	const { settings, problems } = readSettings({ frames, hanging, walls: [{ name: 'North', length: 8000 }] });
	expect(problems).toEqual([]);
	const results = rowsOf(prints).map((row) => workOut(row, settings));
	const { pages, tooLow } = hookMarks(hangingList(results, settings), 'A4');
	const said = pages.map((page) => {
		const { toTop, toLeft, toRight } = page[0]!;
		return `${page.map(({ place, hook }) => `${place + 1}.${hook}`).join(' ')}: ${[toTop, toLeft, toRight].map((edge) => edge.toFixed(1)).join(', ')}`;
	});
	return { pages, tooLow, said };
}
const framed = (size: string, typed: Typed = {}) => print(size, { frame: 'Plain', ...typed });

test('marks that lie alike under the top of their frames have one page', () => {
	// rings a third down, 5 % slack: 133.3 − √(231² − 220²) = 62.9; the wider one's edges lie beside the page too
	const { pages, said } = marks([
		framed('500x400'),
		framed('500x400'),
		framed('150x400', { drop: '62.9 mm' }),
		print('500x400'),
	]);
	expect(said).toEqual(['1.1 2.1: 62.9, 250.0, 250.0', '3.1: 62.9, 75.0, 75.0']);
	// Until a cord is measured its mark is planned.
	expect(pages.map(([mark]) => mark!.planned && toMm(length(Math.round(mark!.planned))).toFixed(1))).toEqual([
		'62.9',
		undefined,
	]);
});

test('two hooks have a page each, with the corner of the frame that is near', () => {
	expect(marks([framed('500x400')], { kind: 'two hooks', rings: '80 mm' }).said).toEqual([
		'1.1: 80.0, 30.0, 470.0',
		'1.2: 80.0, 470.0, 30.0',
	]);
	expect(marks([framed('500x400')], { kind: 'rail', nail: '2.4 m' }).said).toEqual([]);
});

test('a nail stands as far above, and may stand over the frame', () => {
	const { pages, said } = marks([framed('500x400', { drop: '40' })], { nail: '60 mm' });
	expect(said).toEqual(['1.1: -20.0, 250.0, 250.0']);
	// 1450 + 200 − 40 + 60
	expect(toMm(pages[0]![0]!.height)).toBe(1670);
	expect(markInDrawing(pages[0]![0]!, 'A4')).toEqual({ x: 90, y: 15 });
});

test('what has no room on the page is said', () => {
	const { height } = hookDrawing('A4');
	// 10 over the frame's top, 15 under the mark
	const most = height - 25;
	expect(marks([framed('500x800', { drop: `${most}` })]).tooLow).toEqual([]);
	const { said, tooLow } = marks([framed('500x800', { drop: `${most + 1}` }), framed('500x400')]);
	expect(tooLow).toEqual([0]);
	expect(said).toEqual(['2.1: 62.9, 250.0, 250.0']);
});
