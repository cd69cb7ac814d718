import { expect, test } from 'vitest';
import { unbroken } from '../../../../src/core/length/unbroken.ts';

test.each([
	['The window 440 × 401 mm is 62 mm too wide.', 'The window 440~×~401~mm is 62~mm too wide.'],
	['leave 2 5/8 in left and right', 'leave 2~5/8~in left and right'],
	['2.81 m of the roll, 4 made', '2.81~m of the roll, 4 made'],
	['about 4.6 kg, 3 prints, 2 mmx', 'about 4.6~kg, 3 prints, 2 mmx'],
	['The paper is 12.3 cm.', 'The paper is 12.3~cm.'],
])('%s breaks only between its words', (text, shown) => expect(unbroken(text)).toBe(shown.replaceAll('~', '\u00A0')));
