import { expect, test } from 'vitest';
import { withFindingsAcross } from '../../../../src/core/findings/acrossRows.ts';
import { acceptanceOf } from '../../../../src/core/findings/accepted.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { print, rowsOf } from '../walls/wallOf.ts';

function resultsOf(prints: readonly Typed[], typed: TypedSettings) {
	const { settings } = readSettings(typed);
	const rows = rowsOf(prints);
	return withFindingsAcross(
		rows,
		rows.map((row) => judgeRow(row, settings)),
		settings,
	);
}

/** What is said of places, with the mends, by print. */
const told = (prints: readonly Typed[], typed: TypedSettings) =>
	resultsOf(prints, typed).map(({ findings }) =>
		findings
			.filter(({ code }) => code === 'off-wall' || code === 'hangs-over' || code === 'not-read')
			.map(({ code, message, mends }) => [code, message, ...mends.map(({ label }) => label)]),
	);

const three = [print('500x400'), print('500x400'), print('400x400', { title: 'Third' })];

test('off the wall, by how much, and what would mend it', () => {
	expect(told(three, { walls: [{ name: 'A', length: 1200 }] })).toEqual([
		[],
		[],
		[['off-wall', 'It is 200 mm past the end of “A”.']],
	]);
	const walls = [
		{ name: 'A', length: 1500, gap: 200 },
		{ name: 'B', length: 390 },
		{ name: 'C', length: 400 },
	];
	const on = three.map((typed) => ({ ...typed, wall: 'A' }));
	// 1400 of 1500 are prints: two gaps of 50 fit, and the wall C takes the third print
	expect(told(on, { walls })).toEqual([[], [], []]);
	expect(told([...on, print('200x200', { wall: 'a' })], { walls })[3]).toEqual([
		['off-wall', 'It is 100 mm past the end of “A”.', 'Set wall to “B”'],
	]);
	expect(told(on, { walls: [{ name: 'A', length: 1390, gap: 20 }, ...walls.slice(1)] })[2]).toEqual([
		['off-wall', 'It is 10 mm past the end of “A”.', 'Set wall to “C”'],
	]);
});

test('past the left end: a part of a column beside one with a place typed', () => {
	const part = { 'hang order': '1', wall: 'A' };
	const walls = [{ name: 'A', length: 3000 }];
	expect(told([print('200x200', { ...part, 'hang left': '0' }), print('400x300', part)], { walls })).toEqual([
		[],
		[['off-wall', 'It is 100 mm past the left end of “A”.']],
	]);
	// The part is past both ends, further past the right.
	expect(told([print('200x200', { ...part, 'hang left': '0' }), print('3600x300', part)], { walls })[1]).toEqual([
		['off-wall', 'It is 1700 mm past the left end of “A”.'],
	]);
	expect(told([print('200x200', { ...part, 'hang left': '101' }), print('402x300', part)], { walls })).toEqual([
		[],
		[],
	]);
});

test('a smaller gap, where it gives room', () => {
	const walls = [{ name: 'A', length: 2000, gap: 900, obstacles: [{ left: 1000, width: 100, height: 3000 }] }];
	const [, , third] = resultsOf([print('400x400'), print('400x400'), print('400x400')], { walls });
	// 400 + 900 + 400 does not fit into 900, 400 + 100 + 400 does
	expect(third!.findings.find(({ code }) => code === 'off-wall')).toBeUndefined();
	// 400 + 400 before the pillar and 300 + 300 behind it, with gaps of 200 and none
	const crowded = resultsOf([print('400x400'), print('400x400'), print('300x400'), print('310x400')], {
		walls: [{ ...walls[0]!, length: 1640, gap: 250 }],
	});
	const past = crowded.at(-1)!.findings.find(({ code }) => code === 'off-wall');
	expect(past?.mends).toEqual([]);
	const roomy = resultsOf([print('400x400'), print('400x400'), print('300x400'), print('310x400')], {
		walls: [{ ...walls[0]!, length: 1720, gap: 250 }],
	});
	expect(roomy.at(-1)!.findings.find(({ code }) => code === 'off-wall')?.mends[0]).toEqual({
		label: 'Set the gap on “A” to 10',
		change: {},
		wallGap: { wall: 'A', gap: 100_000_000 },
	});
	const narrow = resultsOf([print('400x400'), print('400x400'), print('300x400')], {
		walls: [{ ...walls[0]!, length: 1100, gap: 50 }],
	});
	const off = narrow.at(-1)!.findings.find(({ code }) => code === 'off-wall');
	expect(off?.message).toBe('It has no room on “A”. It is 100 mm past the end of what is free.');
});

test('over another print, an obstacle, the floor, the top', () => {
	const walls = [
		{ name: 'A', length: 3000, height: 2400, obstacles: [{ name: 'door', left: 2000, width: 900, height: 2000 }] },
	];
	const at = (left: number, centre: number, title: string) =>
		print('500x400', { 'hang left': `${left}`, 'hang centre': `${centre}`, title });
	const left = (at: number, title: string) => print('500x400', { 'hang left': `${at}`, title });
	expect(told([left(100, 'One'), left(580, 'Two'), at(1200, 200, 'Low')], { walls })).toEqual([
		[['hangs-over', 'On “A” it is 20 mm over “Two”.', 'Clear hang left']],
		[['hangs-over', 'On “A” it is 20 mm over “One”.', 'Clear hang left']],
		[['hangs-over', 'On “A” it stands on the floor.', 'Clear hang centre']],
	]);
	expect(told([left(1600, 'Door'), at(100, 2250, 'High')], { walls })).toEqual([
		[['hangs-over', 'On “A” it is 100 mm over the door.', 'Clear hang left']],
		[['hangs-over', 'On “A” it is 50 mm over the height of 2400 mm.', 'Clear hang centre']],
	]);
	// Touching is no overlap.
	expect(told([at(1500, 1450, 'Door'), at(1000, 1450, 'Next')], { walls })).toEqual([[], []]);
});

const pillar = { name: 'pillar', left: 900, width: 300, height: 3000 };
const left = (at: number, title: string) => print('500x400', { 'hang left': `${at}`, title });

test('one finding says all that a print hangs over', () => {
	const walls = [{ name: 'A', length: 3000, height: 2400, obstacles: [pillar] }];
	const high = print('500x2600', { 'hang left': '500', 'hang centre': '1300', title: 'High' });
	const overlap = told([left(100, 'One'), high], { walls });
	expect(overlap[1]).toEqual([
		[
			'hangs-over',
			'On “A” it is 100 mm over “One”, 100 mm over the pillar and 200 mm over the height of 2400 mm and stands on the floor.',
		],
	]);
});

test('an accepted overlap comes back when another is added, not when something is called otherwise', () => {
	const typed = { walls: [{ name: 'A', length: 3000, obstacles: [pillar] }] };
	const over = (second: Typed, accepted: string, more: TypedSettings = typed) =>
		resultsOf([left(100, 'One'), second, { ...left(500, 'Mine'), accepted }], more)[2]!;
	const aside = print('500x400', { 'hang left': '2000', title: 'Two' });
	const first = over(aside, '').findings.find(({ code }) => code === 'hangs-over')!;
	expect(acceptanceOf(first)).toBe('hangs-over(kind:print/other:r0/by:100mm/kind:obstacle/by:100mm)');
	const isShown = (...args: Parameters<typeof over>) =>
		over(...args).findings.some(({ code }) => code === 'hangs-over');
	expect(isShown(aside, acceptanceOf(first))).toBe(false);
	expect(isShown(print('500x400', { 'hang left': '950', title: 'Two' }), acceptanceOf(first))).toBe(true);
	const renamed = { walls: [{ name: 'Long', length: 3000, obstacles: [{ ...pillar, name: 'column' }] }] };
	expect(isShown(aside, acceptanceOf(first), renamed)).toBe(false);
	const others = [left(100, 'Other'), aside, { ...left(500, 'Mine'), accepted: acceptanceOf(first) }];
	expect(resultsOf(others, typed)[2]!.findings.some(({ code }) => code === 'hangs-over')).toBe(false);
});

test('the mend that moves a print to another wall holds once it is made', () => {
	const off = print('500x400', { wall: 'A', 'hang left': '900', title: 'Off' });
	const mends = (others: readonly Typed[], walls: readonly object[], at = 0) =>
		told(others.toSpliced(at, 0, off), { walls: [{ name: 'A', length: 1000 }, ...walls] })[at]!.flatMap((said) =>
			said.slice(2),
		);
	expect(mends([], [{ name: 'B', length: 3000 }])).toContain('Set wall to “B”');
	// It would hang over the top there, as all at that height do.
	expect(mends([], [{ name: 'B', length: 3000, height: 1600 }])).not.toContain('Set wall to “B”');
	// First in the show it comes before the pillar there, and what hung there has no room behind it.
	const wide = print('900x400', { wall: 'B', title: 'Wide' });
	const parted = { name: 'B', length: 1600, obstacles: [{ ...pillar, left: 550, width: 100 }] };
	const alone = { name: 'B', length: 1600, obstacles: [{ ...pillar, left: 950, width: 100 }] };
	expect(mends([wide], [parted], 0)).toContain('Set wall to “B”');
	expect(mends([wide], [alone], 0)).not.toContain('Set wall to “B”');
	expect(mends([wide], [alone], 1)).toContain('Set wall to “B”');
	expect(mends([wide], [parted], 1)).not.toContain('Set wall to “B”');
});

test('a typed place is not cleared where that moves others off the wall', () => {
	const walls = [{ name: 'A', length: 1000 }];
	const off = print('500x400', { 'hang left': '900', title: 'Off' });
	expect(told([off, print('500x400')], { walls })[0]![0]).toContain('Clear hang left');
	expect(told([off, print('600x400')], { walls })[0]![0]).not.toContain('Clear hang left');
});

test('a wall that is in no list is not read; in a show without walls it is a text', () => {
	expect(told([print('500x400', { wall: 'Attic' })], { walls: [{ name: 'A', length: 3000 }] })[0]![0]![0]).toBe(
		'not-read',
	);
	expect(told([print('500x400', { wall: 'Attic' })], {})).toEqual([[]]);
});

test('a result stays the same object while its place does', () => {
	const { settings } = readSettings({ walls: [{ name: 'A', length: 5000 }] });
	const rows = rowsOf([print('500x400'), print('500x400', { 'hang left': '4000' })]);
	const alone = rows.map((row) => judgeRow(row, settings));
	const before = withFindingsAcross(rows, alone, settings);
	const after = withFindingsAcross(rows, alone, settings);
	expect(after[0]).toBe(before[0]);
	expect(after[0]!.hung?.left).toBe(17_500_000_000);
});
