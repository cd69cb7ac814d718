import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import {
	frameChangeWords,
	givenWords,
	noFrameWords,
	provenWords,
} from '../../../../src/core/frameChoice/frameChangeWords.ts';
import { giveFrames } from '../../../../src/core/frameChoice/giveFrames.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';

const frame = { name: 'Oak', width: 400, height: 300, depth: 40, moulding: 20, lip: 6 };

function words(typed: Typed, show: object = {}) {
	const { settings } = readSettings({ frames: [frame], ...show });
	const row = { id: 'a', order: 1, typed };
	const [print] = giveFrames([row], settings).rows;
	return print!.frame === undefined
		? noFrameWords(print!, judgeRow(row, settings).findings.find(({ level }) => level === 'stop')?.message)
		: frameChangeWords(print!, row, settings);
}

test.each<[Typed, object, string]>([
	[{ shape: '3:2' }, { mountSize: '400 x 300 mm' }, ''],
	[
		{ shape: '3:2' },
		{},
		'Picture 254 × 169.3 mm instead of 376.5 × 251 mm. Side, top, bottom 76, 65, 72 instead of 65, 74, 81.',
	],
	[
		{ 'picture width': '200', 'picture height': '133', mount: '420 x 320' },
		{},
		'Side, top, bottom 103, 82, 91 instead of 113, 92, 101. “frame” replaces “420 x 320” in the mount cell.',
	],
	[{ shape: '3:2', mount: '400 x 300' }, {}, 'Same size. “frame” replaces “400 x 300” in the mount cell.'],
	[{ 'picture width': '500', 'picture height': '333' }, {}, 'No frame in the list suits it.'],
	[
		{ 'picture width': '600', mount: '500 x 400', shape: '3:2' },
		{},
		'Can’t be cut yet. The window’s width 594 is 94 larger than the mount’s 500 mm.',
	],
	[{ shape: '3:2', mount: '50 x 40' }, {}, 'Can’t be cut yet. Mount 50 × 40 look like cm (500 × 400 mm).'],
	[{ shape: '3:2' }, { frames: [{ ...frame, count: 0 }] }, 'No frame is left for it.'],
])('%o in %o', (typed, show, said) => expect(words(typed, show)).toBe(said));

test.each([
	[1, 1, 'The print gets a frame. The long side of its picture changes by 3 mm.'],
	[1, 4, '1 of 4 prints gets a frame. The long side of its picture changes by 3 mm.'],
	[3, 4, '3 of 4 prints get a frame. The long sides of their pictures change by 3 mm in all.'],
	[4, 4, 'All 4 prints get a frame. The long sides of their pictures change by 3 mm in all.'],
])('%i of %i get a frame: %s', (given, of, sentence) => expect(givenWords(given, of, '3 mm')).toBe(sentence));

test.each([
	[1, 1, 1, 'The print keeps its frame and size. Its mount follows the frame from now on.'],
	[22, 25, 22, '22 of 25 prints keep their frame and size. Their mount follows the frame from now on.'],
	[
		4,
		5,
		3,
		'1 of 5 prints gets another frame or size. The long side of its picture changes by 3 mm. 3 prints keep their frame and size. Their mount follows the frame from now on.',
	],
])('%i of %i get a frame, %i the one they have: %s', (given, of, kept, said) =>
	expect(givenWords(given, of, '3 mm', kept)).toBe(said),
);

test.each([
	[true, true, /^No other choice frames more prints or changes their pictures less\.$/],
	[true, false, /^No other choice frames more prints\. .*ran out of time.* less may exist\.$/],
	[false, false, /^The search ran out of time\. There may be a better choice\.$/],
])('most %s, proven %s: %s', (isMost, proven, said) => expect(provenWords({ isMost, proven })).toMatch(said));
