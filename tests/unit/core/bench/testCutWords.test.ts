import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { testCutWords } from '../../../../src/core/bench/testCutWords.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';

const scale = { unit: 'mm', ruler: mm(1) } as const;

const wordsWith = (slipBoard: unknown, thickness = 1.4) =>
	testCutWords(mm(thickness), readSettings({ bench: { slipBoard } }).settings.bench, scale).join(' ');

test.each([
	{
		slipBoard: undefined,
		said: /Lay a waste strip under the mount\. .*board of 1\.4 mm/,
		unsaid: /cuts through the strip/,
	},
	{ slipBoard: '2', said: /a waste strip of 2 mm under .* Never set it to 3\.4 mm/, unsaid: /Nothing lies/ },
	{ slipBoard: 'None', said: /Nothing lies under the mount/, unsaid: /slip/ },
	{ slipBoard: 0, said: /Nothing lies under the mount/, unsaid: /slip/ },
])('with a waste strip of $slipBoard the test cut says so', ({ slipBoard, said, unsaid }) => {
	expect(wordsWith(slipBoard)).toMatch(said);
	expect(wordsWith(slipBoard)).not.toMatch(unsaid);
});

test('board of unknown thickness is called this board', () => {
	const { bench } = readSettings({ bench: { slipBoard: '2 mm' } }).settings;
	expect(testCutWords(undefined, bench, scale).join(' ')).toMatch(/through this board and/);
});

test('a waste strip that cannot be read is told', () => {
	expect(readSettings({ bench: { slipBoard: 'thick' } }).problems).toMatchObject([{ key: 'bench.slipBoard' }]);
});
