import { describe, expect, test } from 'vitest';
import { accept, withdraw } from '../../../../src/core/findings/accepted.ts';
import { gravestWords, saidTogether } from '../../../../src/core/findings/together.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { resultOf, rowOf, wideShow, withChange } from './rowOf.ts';

const withPapers = (width: string, height: string): TypedSettings => ({
	...wideShow,
	papers: [{ name: 'Rag', width, height, margin: '5 mm' }],
});
const withFrame = (width: string, clearance: string): TypedSettings => ({
	...wideShow,
	frames: [{ name: 'Ash', width, height: '450 mm', clearance, moulding: '20 mm', lip: '9 mm' }],
});

const saidOf = (line: string, show: TypedSettings = wideShow) =>
	saidTogether(resultOf(rowOf(line), show).findings, readSettings(show).settings);

describe('what is wrong both ways for one cause is said once, with both figures', () => {
	const cases: readonly (readonly [line: string, code: string, message: string, show?: TypedSettings])[] = [
		[
			'picture 456 x 306, window 440 x 290, overlap 3',
			'adds-up',
			'Picture 456 × 306 needs a window of 450 × 300 (overlap 3 a side), but 440 × 290 mm is typed.',
		],
		[
			'mount 600 x 450, side 80, top 70, bottom 84, picture 456 x 316',
			'adds-up',
			'Across, 80 + 450 + 80 = 610, 10 more than the mount’s 600; down, 70 + 310 + 84 = 464, 14 more than its 450 mm.',
		],
		[
			'mount 600 x 450, window 700 x 500',
			'does-not-fit',
			'The window 700 × 500 is larger than the mount 600 × 450 mm.',
		],
		[
			'mount 600 x 450, window 700 x 450',
			'does-not-fit',
			'The window 700 × 450 is no smaller than the mount 600 × 450 mm.',
		],
		[
			'mount 600 x 450, side 300, top 300, bottom 200',
			'does-not-fit',
			'Borders of 300 and 300 across, 300 and 200 down, leave nothing of the mount 600 × 450 mm for the window.',
		],
		[
			'picture 310 x 220, paper 297 x 210',
			'falls-through',
			'The window is 7 mm wider and 4 mm taller than the paper 297 × 210.',
		],
		[
			'picture 310 x 220, paper 297 x 210',
			'paper-short',
			'The paper 297 × 210 mm is 13 mm too narrow and 10 mm too short for the picture 310 × 220.',
		],
		[
			'picture 292 x 205, paper 297 x 209, reveal 1',
			'paper-short',
			'Behind the mount the paper has only 1.5 at the sides and 1 mm at the top, and needs 5 mm.',
		],
		[
			'picture 280 x 190, paper 297 x 208, reveal 5',
			'paper-short',
			'Behind the mount the paper has only 3.5 at the sides and 4 mm at the top, and needs 5 mm.',
		],
		[
			'picture 292 x 205, paper Rag',
			'paper-margin',
			'The picture 292 × 205 is larger than the 287 × 200 mm that can be printed of its paper.',
			withPapers('297 mm', '210 mm'),
		],
		[
			'picture 292 x 205, paper Rag, margin left 3, margin top 2',
			'paper-margin',
			'The margins left and top of the picture are 3 and 2 mm; the printer leaves 5 mm blank.',
			withPapers('420 mm', '297 mm'),
		],
		[
			'picture 520 x 370, paper 594 x 442',
			'paper-crowds',
			'The paper is 3 from the mount’s edge at the sides and 2 mm at the top; hinges need 5 mm.',
		],
		[
			'picture 456 x 306, frame Ash, mount 610 x 460',
			'frame-clash',
			'The mount 610 × 460 is too large for the rebate of “Ash”, 603 × 453 mm.',
			withFrame('600 mm', '3 mm'),
		],
		[
			'picture 456 x 306, frame Ash',
			'frame-clash',
			'The mount 600 × 450 has no play each way in “Ash”; 1 to 5 mm is usual.',
			withFrame('600 mm', '0 mm'),
		],
		[
			'picture 456 x 306, frame Ash, mount 590 x 441',
			'frame-clash',
			'The mount 590 × 441 has 13 mm of play across and 12 mm of play down in “Ash”, and its lip of 9 mm does not hide a gap.',
			withFrame('600 mm', '3 mm'),
		],
		['picture 540 x 390', 'thin-border', 'Side 33, top 31 and bottom 35 are under your smallest border of 40 mm.'],
		[
			'picture 450 x 300, window 456 x 306',
			'bare-paper',
			'The window 456 × 306 is larger than the picture 450 × 300. 3 mm of bare paper shows all round, and no reveal is set.',
		],
		[
			'picture 458 x 308, window 456 x 306',
			'thin-overlap',
			'The mount covers only 1 mm of the picture at the sides and at top and bottom, less than the cutting tolerance of 2 mm.',
		],
		['mount 600 x 450, window 455.3 x 300.7', 'off-ruler', 'Side 72.4 and bottom 79.3 are not on the ruler of 1 mm.'],
		[
			'picture 456 x 306',
			'past-guide',
			'Side 75, top 71 and bottom 79. The cutter’s guide goes to 60 mm.',
			{ ...wideShow, bench: { kind: 'guide', greatest: '60 mm' } },
		],
	];

	test.each(cases.map(([line, code, message, show]) => ({ line, code, message, show })))(
		'$line: $code, “$message”',
		({ line, code, message, show }) => {
			const ofCode = saidOf(line, show).filter((said) => said.code === code);
			expect(ofCode.map((said) => said.message)).toEqual([message]);
			expect(ofCode[0]!.findings).toHaveLength(2);
			// What stands in files stays one for each axis.
			expect(resultOf(rowOf(line), show).findings.filter((finding) => finding.code === code)).toHaveLength(2);
		},
	);
});

test('an axis that depends on the other is not said beside it', () => {
	const line = 'shape 3:2, bottom weight 600 mm';
	const said = saidOf(line).filter(({ code }) => code === 'does-not-fit');
	expect(said.map(({ message, findings }) => [message, findings.length])).toEqual([
		[
			'A border of 372.7 and a window of 304.7 use 677.3 of the mount’s height 450 mm, which leaves −227.3 for the other border.',
			2,
		],
	]);
});

test('axes that are wrong in different ways have a sentence each, under one title', () => {
	const [first] = saidOf('mount 600 x 450, window width 700, top 300, bottom 200');
	expect(first!.message).toBe(
		'The window’s width 700 is 100 larger than the mount’s 600 mm. Borders of 300 and 200 leave −50 of the mount’s height 450 mm for the window.',
	);
});

test('what has two causes stays two: cells that are not understood, and findings of another level', () => {
	const twice = saidOf('side x, top y').filter(({ code }) => code === 'not-read');
	expect(twice.map(({ findings }) => findings.length)).toEqual([1, 1]);
	const levels = saidOf('picture 300 x 202, paper 297 x 210, reveal 1').filter(({ code }) => code === 'paper-short');
	expect(levels.map(({ level }) => level)).toEqual(['stop', 'look']);
});

test('the mends offered are those that mend both, each tried; else those of each axis', () => {
	const line = 'picture 310 x 220, paper 297 x 210';
	const [, short] = saidOf(line);
	expect(short!.mends.map(({ label }) => label)).toContain('Clear paper and don’t check it');
	for (const { change } of short!.mends) {
		const after = resultOf(withChange(rowOf(line), change)).findings.map(({ code }) => code);
		expect(after).not.toContain('paper-short');
	}
	const [thin] = saidOf('picture 458 x 308, window 456 x 306').filter(({ code }) => code === 'thin-overlap');
	const columns = thin!.mends.map(({ change }) => Object.keys(change).join());
	expect(columns).toEqual(['window width', 'picture width', 'window height', 'picture height']);
});

test('leaving it accepts both axes, and checking again takes both back', () => {
	const row = rowOf('picture 540 x 390, mount 600 x 450');
	const said = saidTogether(resultOf(row).findings, readSettings(wideShow).settings);
	const { findings } = said.find(({ code }) => code === 'thin-border')!;
	const accepted = withChange(row, accept(findings, row));
	expect(accepted.typed.accepted).toBe(
		'thin-border(side:33mm/least:40mm) thin-border(top:31mm/bottom:35mm/least:40mm)',
	);
	expect(resultOf(accepted).findings.map(({ code }) => code)).not.toContain('thin-border');
	expect(withChange(accepted, withdraw(findings, accepted))).toEqual(row);
});

test('a list that has room for one sentence has the gravest, for both axes', () => {
	const { settings } = readSettings(wideShow);
	expect(gravestWords(resultOf(rowOf('mount 600 x 450, window 700 x 500')).findings, settings)).toBe(
		'The window 700 × 500 is larger than the mount 600 × 450 mm.',
	);
	expect(gravestWords([], settings)).toBeUndefined();
});

test('a window as large as the paper is one cause: that too little paper is behind the mount is not said besides', () => {
	const found = saidOf('picture 528 x 360, paper 528 x 360, reveal 6, signing space 12').map(({ code }) => code);
	expect(found).toContain('falls-through');
	expect(found).not.toContain('paper-short');
	const held = saidOf('picture 528 x 360, paper 545 x 390, reveal 6, signing space 12').map(({ code }) => code);
	expect(held).toContain('paper-short');
});

test('what ends a finding whole is offered before a paper that is no longer said', () => {
	const through = saidOf('picture 528 x 360, paper 528 x 360, reveal 6, signing space 12');
	const labels = through.find(({ code }) => code === 'falls-through')!.mends.map(({ label }) => label);
	expect(labels).toContain('Clear reveal and signing space, window 522 × 354');
	expect(labels.at(-1)).toBe('Clear paper and don’t check it');
	const short = saidOf('picture 528 x 360, paper 545 x 390, reveal 6');
	const ofShort = short.find(({ code }) => code === 'paper-short')!.mends.map(({ label }) => label);
	expect(ofShort).toContain('Clear reveal');
	expect(ofShort.at(-1)).toBe('Clear paper and don’t check it');
});
