import { expect, test } from 'vitest';
import { makingSteps } from '../../../../src/core/row/makingSteps.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { rowOf, wideShow } from '../findings/rowOf.ts';

const show: TypedSettings = { ...wideShow, frames: [{ name: 'Oak', width: 600, height: 450 }] };
const stepsOf = (line: string, settings: TypedSettings = {}) => {
	const read = readSettings({ ...show, ...settings }).settings;
	return makingSteps(workOut(rowOf(line), read), read).join(', ');
};

test.each<[string, TypedSettings, string]>([
	[
		'picture 300 x 200, frame Oak',
		{},
		'printed, signed, hinged, window clean, glazing clean, sealed, labelled, corded',
	],
	// Nothing is glazed or sealed without a frame.
	['picture 300 x 200, frame none', {}, 'printed, signed, hinged, window clean, labelled'],
	['picture 300 x 200, frame Oak, glazing none', {}, 'printed, signed, hinged, window clean, sealed, labelled, corded'],
	// A frame that nobody lists is framed all the same, though nobody knows what glazes it.
	['picture 300 x 200, frame Elm', {}, 'printed, signed, hinged, window clean, sealed, labelled, corded'],
	// A float has no window.
	[
		'picture 300 x 200, mounting float, frame Oak',
		{},
		'printed, signed, hinged, glazing clean, sealed, labelled, corded',
	],
	// Without a mount neither.
	['picture 300 x 200, mount none, frame none', {}, 'printed, signed, hinged, labelled'],
	// No width is known that hinges could hold.
	['title Ebb, mount none, frame none', {}, 'printed, signed, labelled'],
	[
		'picture 300 x 200, frame Oak',
		{ hanging: 'rail' },
		'printed, signed, hinged, window clean, glazing clean, sealed, labelled',
	],
	[
		'picture 300 x 200, frame Oak',
		{ hanging: { kind: 'two hooks' } },
		'printed, signed, hinged, window clean, glazing clean, sealed, labelled',
	],
])('%s, %j: %s', (line, settings, steps) => expect(stepsOf(line, settings)).toBe(steps));

test('nothing is made of a row in which nothing is typed', () => {
	const { settings } = readSettings(show);
	expect(makingSteps(workOut({ id: 'a', order: 1, typed: {} }, settings), settings)).toEqual([]);
});
