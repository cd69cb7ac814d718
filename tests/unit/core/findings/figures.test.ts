import { describe, expect, test } from 'vitest';
import { type Say, writeSentence } from '../../../../src/core/findings/words/say.ts';
import { inches, mm } from '../../../../src/core/length/length.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { resultOf, rowOf, wideShow } from './rowOf.ts';

test.each<[string, TypedSettings, string]>([
	['picture 528 x 339, side 39.96', wideShow, 'Side 39.96 is under your smallest border of 40 mm'],
	[
		'picture 200 x 149.9',
		{ limits: { pictureArea: '300 cm2' } },
		'area is 299.8 cm², under the smallest allowed, 300 cm²',
	],
	['picture 200 x 120', { limits: { pictureArea: '300 cm2' } }, 'area is 240 cm², under the smallest allowed, 300 cm²'],
	[
		'picture 10 x 7',
		{ unit: 'in', limits: { pictureArea: '80 in2' } },
		'area is 70 in², under the smallest allowed, 80 in²',
	],
	[
		'mount 500.04 x 400, picture 370 x 270',
		{ limits: { largest: '500 x 400 mm' } },
		'The mount is 500.04 × 400 mm; the largest allowed is 500 × 400 mm',
	],
	[
		'mount height 450, top 70, bottom 70.02, window 450 x 310, picture width 456',
		wideShow,
		'70 + 310 + 70.02 = 450.02, 0.02 more than the mount’s 450 mm',
	],
	[
		'picture 456 x 306, window 452.06 x 302.06',
		wideShow,
		'covers only 1.97 mm of the picture at the sides, less than the cutting tolerance of 2 mm',
	],
	[
		'picture 456 x 306, side 90.04',
		{ ...wideShow, bench: { greatest: '90 mm' } },
		'Side 90.04. The cutter’s guide goes to 90 mm',
	],
	[
		'picture 516.28 x 340, side 44.86',
		{ ...wideShow, frames: [{ name: 'Oak', width: 602, height: 452, lip: 6 }] },
		'39.96 of the 44.86 side shows in the frame “Oak”, under your smallest border of 40 mm',
	],
	['picture 456 x 306, side 75, top 65.1', wideShow, 'differ by 9.9 mm, 15.2 %. You allow 15 %'],
])('of %s no sentence contradicts itself by rounding', (line, show, says) =>
	expect(
		resultOf(rowOf(line), show)
			.findings.map(({ message }) => message)
			.join('\n'),
	).toContain(says),
);

describe('figures of one sentence', () => {
	const inMm = (write: (say: Say) => string) => writeSentence({ unit: 'mm', ruler: mm(1) }, write);
	const inInches = (write: (say: Say) => string) => writeSentence({ unit: 'in', ruler: inches(1 / 16) }, write);

	test('are rounded where they are not to be mistaken', () =>
		expect(inMm(({ figure, say }) => `${figure(mm(257.333))} and ${say(mm(70))}`)).toBe('257.3 and 70 mm'));

	test('are as fine as tells them apart, and no finer', () => {
		expect(inMm(({ figure, say }) => `${figure(mm(39.96))} and ${say(mm(40))}`)).toBe('39.96 and 40 mm');
		expect(inMm(({ figure, say }) => `${figure(mm(39.998))} and ${say(mm(40))}`)).toBe('39.998 and 40 mm');
		expect(inInches(({ figure, say }) => `${figure(inches(2.499))} and ${say(inches(2.5))}`)).toBe(
			'2 255/512 and 2 1/2 in',
		);
	});

	test('what is more than nothing does not look like nothing', () =>
		expect(inMm(({ say }) => say(mm(0.02)))).toBe('0.02 mm'));

	test('lengths that count as equal may look alike', () =>
		expect(inMm(({ figure, say }) => `${figure(mm(70.0004))} and ${say(mm(70))}`)).toBe('70 and 70 mm'));

	test('the next sentence is rounded again', () => {
		inMm(({ figure, say }) => `${figure(mm(39.96))} and ${say(mm(40))}`);
		expect(inMm(({ say }) => say(mm(39.96)))).toBe('40 mm');
	});
});
