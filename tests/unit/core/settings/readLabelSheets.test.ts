import { expect, test } from 'vitest';
import { inches, mm, zero } from '../../../../src/core/length/length.ts';
import { usualContents } from '../../../../src/core/settings/readLabelContents.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';

const small = { name: 'Small', width: '70', height: 37, columns: '3', rows: 8 };

test('a sheet of labels by its measures; a blank margin puts the labels in the middle of the page', () => {
	const { settings, problems } = readSettings({
		labelSheets: [
			small,
			{
				...small,
				name: 'Ours',
				paper: 'letter',
				width: '2 5/8 in',
				height: '1 in',
				rows: 10,
				left: '3/16 in',
				top: '1/2 in',
				gapAcross: '1/8 in',
			},
		],
	});
	expect(problems).toEqual([]);
	expect(settings.labelSheets).toEqual([
		{
			...{ name: 'Small', paper: 'A4', width: mm(70), height: mm(37), columns: 3, rows: 8 },
			...{ left: zero, top: mm(0.5), gapAcross: zero, gapDown: zero },
		},
		{
			...{ name: 'Ours', paper: 'Letter', width: inches(2.625), height: inches(1), columns: 3, rows: 10 },
			...{ left: inches(0.1875), top: inches(0.5), gapAcross: inches(0.125), gapDown: zero },
		},
	]);
});

test.each<[string, Record<string, unknown>, string, string]>([
	['too wide', { left: '1 mm' }, 'labelSheets[0]', '3 across reach 211 mm, and A4 is 210 mm wide'],
	['too high', { gapDown: 2, top: '0' }, 'labelSheets[0]', '8 down reach 310 mm, and A4 is 297 mm high'],
	['another paper', { paper: 'A5' }, 'labelSheets[0].paper', 'A5 is none of: A4, Letter'],
	['no columns', { columns: '' }, 'labelSheets[0].columns', 'the number of columns is missing'],
	['no rows at all', { rows: 0 }, 'labelSheets[0].rows', '0 is not a whole number, 1 or more'],
	['past all sheets', { rows: 101 }, 'labelSheets[0].rows', '101 is more than 100'],
	['no name', { name: ' ' }, 'labelSheets[0].name', 'the name is missing'],
	['no width', { width: '' }, 'labelSheets[0].width', 'the width is missing'],
	['no gap', { gapAcross: 'wide' }, 'labelSheets[0].gapAcross', ''],
])('%s is said, and the sheet is not offered', (_, change, key, problem) => {
	const { settings, problems } = readSettings({ labelSheets: [{ ...small, ...change }] });
	expect(problems.map((each) => each.key)).toEqual([key]);
	if (problem !== '') expect(problems[0]!.problem).toBe(problem);
	if (key !== 'labelSheets[0].gapAcross') expect(settings.labelSheets).toEqual([]);
});

test('a name that is there twice', () => {
	const { settings, problems } = readSettings({ labelSheets: [small, { ...small, name: 'small' }] });
	expect(settings.labelSheets).toHaveLength(1);
	expect(problems).toEqual([
		{ key: 'labelSheets[1].name', problem: '“small” is the name of a sheet before it too; give this one another' },
	]);
});

test('what stands on labels: a list or words with commas, each once, in the order of a label', () => {
	const { settings, problems } = readSettings({
		labelContents: { back: ['size', 'Title', 'size'], wall: 'price, title' },
	});
	expect(problems).toEqual([]);
	expect(settings.labelContents).toEqual({ back: ['title', 'size'], wall: ['title', 'price'] });
	expect(readSettings({}).settings.labelContents).toBe(usualContents);
});

test('no buyer stands on a label, and no way up on the wall', () => {
	const { settings, problems } = readSettings({ labelContents: { back: ['buyer'], wall: ['this way up'] } });
	expect(settings.labelContents).toEqual(usualContents);
	expect(problems.map(({ key }) => key)).toEqual(['labelContents.back', 'labelContents.wall']);
});
