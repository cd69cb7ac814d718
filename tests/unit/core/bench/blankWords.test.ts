import { expect, test } from 'vitest';
import { blankWords } from '../../../../src/core/bench/windowCuts.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';

function words(typed: Typed, show: object, part: 'mount' | 'inner mount' = 'mount') {
	const { settings, problems } = readSettings({ mountSize: '700 x 550 mm', ...show });
	expect(problems).toEqual([]);
	return blankWords(judgeRow({ id: 'a', order: 0, typed: { shape: '3:2', ...typed } }, settings), part, settings);
}
const boards = [
	{ name: 'Chalk', width: 1200, height: 815 },
	{ name: 'Slate', width: 1200, height: 815 },
];

test('a blank is named by its size as the mount hangs, and by its board', () => {
	expect(words({}, { boards })).toBe('Blank 700 × 550 mm, Chalk');
	expect(words({ board: 'Slate' }, { boards })).toBe('Blank 700 × 550 mm, Slate');
	expect(words({}, {})).toBe('Blank 700 × 550 mm');
});

test.each(['taped', 'own blank'])('an inner mount, %s, has a blank of its own size and board', (inner) =>
	expect(
		words(
			{ 'inner mount': '5', 'inner board': 'Slate' },
			{ boards, bench: { inner }, innerBlankSmaller: 10 },
			'inner mount',
		),
	).toBe('Blank 680 × 530 mm, Slate'),
);

test('a mount without a size has none', () => expect(words({ mount: 'none' }, { boards })).toBe(''));
