import { expect, test } from 'vitest';
import { withFindingsAcross } from '../../../../src/core/findings/acrossRows.ts';
import { acceptanceOf } from '../../../../src/core/findings/accepted.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';

const print: Typed = { 'picture width': '300', 'picture height': '200' };
const oak = { name: 'Oak', width: 500, height: 400 };
// 500 + 3 + 2 · (20 − 6) = 531 by 431: two legs of 536 and two of 436 with the saw, 1944 together
const made = { name: 'Made', moulding: 20, lip: 6 };

function told(cells: readonly Typed[], ...frames: readonly object[]) {
	const { settings } = readSettings({ frames });
	const rows = cells.map((typed, place) => ({ id: `r${place}`, order: place, typed }));
	const results = withFindingsAcross(
		rows,
		rows.map((row) => judgeRow(row, settings)),
		settings,
	);
	return results.map(({ findings, accepted }) => ({
		findings: findings.filter(({ code }) => code === 'no-frame'),
		accepted: accepted.map(({ code }) => code),
	}));
}
const messages = (...args: Parameters<typeof told>) => told(...args).map(({ findings }) => findings[0]?.message);

test('more frames of one name are wanted than are there', () => {
	const cells = [
		{ ...print, frame: 'Oak', copies: '2' },
		{ ...print, frame: 'oak' },
		{ ...print, frame: 'none' },
	];
	const says = 'You need 3 “Oak” and have 2.';
	expect(messages(cells, { ...oak, count: 2 })).toEqual([says, says, undefined]);
	expect(messages(cells, { ...oak, count: 3 })).toEqual([undefined, undefined, undefined]);
	expect(messages(cells, oak)).toEqual([undefined, undefined, undefined]);
});

test('a row that is stopped wants none', () => {
	const cells = [
		{ ...print, frame: 'Oak' },
		{ ...print, frame: 'Oak', side: '300' },
	];
	expect(messages(cells, { ...oak, count: 1 })).toEqual([undefined, undefined]);
});

test('sticks of a moulding', () => {
	const cells = [{ ...print, frame: 'Made', copies: '2' }];
	// Two frames take 3888 mm of legs: two sticks of 2400 hold four legs each, and one of 4000 all of them.
	expect(messages(cells, { ...made, stick: '2400', count: 2 })).toEqual([undefined]);
	expect(messages(cells, { ...made, stick: '2400', count: 1 })).toEqual(['You need 2 lengths of “Made” and have 1.']);
	expect(messages(cells, { ...made, stick: '4000', count: 1 })).toEqual([undefined]);
	// Of 1000 mm each holds one long and one short leg: 536 + 436 = 972.
	expect(messages(cells, { ...made, stick: '1000', count: 3 })).toEqual(['You need 4 lengths of “Made” and have 3.']);
});

test('a moulding without the length of its sticks counts as frames, as it is got', () => {
	const cells = [{ ...print, frame: 'Made', copies: '2' }];
	expect(messages(cells, { ...made, count: 1 })).toEqual(['You need 2 “Made” and have 1.']);
	expect(messages(cells, { ...made, count: 2 })).toEqual([undefined]);
	expect(messages(cells, { name: 'Made', count: 1 }), 'its width is not known').toEqual([
		'You need 2 “Made” and have 1.',
	]);
});

test('a leg that is longer than a stick stops its row', () => {
	const cells = [{ ...print, frame: 'Made' }];
	expect(told(cells, { ...made, stick: '535' })[0]!.findings).toMatchObject([{ level: 'stop' }]);
	expect(told(cells, { ...made, stick: '536' })[0]!.findings).toEqual([]); // 531 and the saw’s 5
});

test('another frame of the list that takes the mount, and of which there are enough, is offered', () => {
	const cells = [
		{ ...print, frame: 'Oak', copies: '2' },
		{ ...print, frame: 'Oak' },
	];
	const labels = (...others: readonly object[]) =>
		told(cells, { ...oak, count: 2 }, ...others).map(({ findings }) =>
			findings[0]!.mends.map(({ label, change }) => [label, change]),
		);
	const elm = { ...oak, name: 'Elm' };
	const use = (frame: string) => [`Set frame to “${frame}”`, { frame }];
	expect(labels()).toEqual([[], []]);
	expect(labels(elm)).toEqual([[use('Elm')], [use('Elm')]]);
	expect(labels({ ...elm, count: 1 }), 'one is there, and the first print wants two').toEqual([[], [use('Elm')]]);
	expect(labels({ ...elm, depth: 1 }), 'too deep for it').toEqual([[], []]);
	expect(labels({ ...elm, width: 400 })).toEqual([[], []]);
	expect(labels({ ...made, stick: '2400', count: 1 }), 'its legs come to one stick a print').toEqual([
		[],
		[use('Made')],
	]);
});

test('it can be accepted, and comes back when its figures change', () => {
	const cells = [{ ...print, frame: 'Oak', copies: '2' }];
	const short = { ...oak, count: 1 };
	const accepted = acceptanceOf(told(cells, short)[0]!.findings[0]!);
	const [after] = told([{ ...cells[0], accepted }], short);
	expect(after).toEqual({ findings: [], accepted: ['no-frame'] });
	expect(told([{ ...cells[0], copies: '3', accepted }], short)[0]!.findings).toHaveLength(1);
});
