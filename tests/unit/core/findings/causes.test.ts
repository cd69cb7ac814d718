import { expect, test } from 'vitest';
import { checksOf, mendsOfCheck } from '../../../../src/core/findings/causes.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { withFindingsAcross } from '../../../../src/core/findings/acrossRows.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { rowOf, wideShow } from './rowOf.ts';

const stocked: TypedSettings = {
	...wideShow,
	boards: [
		{ name: 'Chalk', width: '1200 mm', height: '800 mm' },
		{ name: 'Slate', width: '1200 mm', height: '800 mm' },
	],
	frames: [{ name: 'Ash', width: '600 mm', height: '450 mm', count: 1 }],
};

function causesIn(lines: readonly string[], show: TypedSettings = stocked) {
	const { settings, problems } = readSettings(show);
	expect(problems).toEqual([]);
	const rows = lines.map((line, place) => ({ ...rowOf(line), id: `r${place}` }));
	const results = withFindingsAcross(
		rows,
		rows.map((row) => judgeRow(row, settings)),
		settings,
	);
	const checks = made(checksOf(rows, results, settings, () => true));
	const levels = [...new Set(checks.map(({ level }) => level))];
	return levels.map((level) => ({
		level,
		shared: checks
			.filter((check) => check.level === level && check.prints.length > 1)
			.map((check) => ({
				message: check.said[0]!.message,
				ids: check.prints.map(({ row }) => row.id),
				mends: made(mendsOfCheck(check))[0]!,
			})),
		alone: checks
			.filter((check) => check.level === level && check.prints.length === 1)
			.map(({ prints, said }) => [prints[0]!.row.id, ...said.map(({ code }) => code)]),
	}));
}

/** What all steps make. */
function made<Result>(steps: Iterator<unknown, Result>): Result {
	for (;;) {
		const { done, value } = steps.next();
		if (done) return value;
	}
}

test.each([
	['board', 'There is no “Oatmeal” in stock. Add it to the boards, or use another.'],
	['frame', 'There is no frame “Oatmeal” in the show’s list.'],
	['glazing', 'Glazing: “Oatmeal” is not a glazing. Choose none, glass or acrylic.'],
])('an unknown %s that several prints name is said once, with them', (column, message) => {
	const [stops] = causesIn([`shape 3:2, ${column} Oatmeal`, 'shape 3:2', `shape 3:2, ${column} Oatmeal`]);
	expect(stops!.level).toBe('stop');
	expect(stops!.shared.map(({ ids }) => ids)).toEqual([['r0', 'r2']]);
	expect(stops!.shared[0]!.message).toBe(message);
	expect(stops!.alone).toEqual([]);
});

test('its mends are those that each print has, and change all of them', () => {
	const [stops] = causesIn(['shape 3:2, board Oatmeal', 'shape 3:2, board Oatmeal']);
	const { mends } = stops!.shared[0]!;
	expect(mends.map(({ changes }) => changes)).toContainEqual([
		{ id: 'r0', cells: { board: 'Slate' } },
		{ id: 'r1', cells: { board: 'Slate' } },
	]);
});

test('a mend that one of them has not is not offered to all', () => {
	// Both are as uneven; only the first has a mount cell to clear.
	const [looks] = causesIn(['picture 308 x 308, mount 600x450', 'picture 308 x 308'], wideShow);
	const shared = looks!.shared[0]!;
	expect(shared.ids).toEqual(['r0', 'r1']);
	expect(shared.mends.flatMap(({ changes }) => changes.map(({ id }) => id))).toEqual(
		shared.mends.flatMap(() => ['r0', 'r1']),
	);
});

test('frames that are too few are given out at once: no mend gives each print another', () => {
	const [looks] = causesIn(['shape 3:2, frame Ash', 'shape 3:2, frame Ash']);
	const [few] = looks!.shared.filter(({ message }) => message.includes('You need 2'));
	expect(few).toMatchObject({ ids: ['r0', 'r1'], mends: [] });
});

test('a print of which something stops it and something else is to check is listed once, the stop first', () => {
	const causes = causesIn(['picture 308 x 300, paper 200 x 150', 'shape 3:2'], wideShow);
	expect(causes.map(({ level, alone }) => [level, alone])).toEqual([
		['stop', [['r0', 'falls-through', 'paper-short', 'uneven']]],
	]);
});

test('what only one print has stands by itself, in the order of the prints, the most serious first', () => {
	const causes = causesIn(['picture 308 x 300', 'side x, shape 3:2', 'picture 540 x 390, mount 600 x 450'], wideShow);
	expect(causes.map(({ level, alone }) => [level, alone])).toEqual([
		['stop', [['r1', 'not-read']]],
		[
			'look',
			[
				['r0', 'uneven'],
				['r2', 'thin-border'],
			],
		],
	]);
});

test('of many prints no step says, groups or mends more than one', () => {
	const { settings } = readSettings(stocked);
	const count = 40;
	const rows = Array.from({ length: count }, (_, place) => {
		const own = place % 2 === 0 ? 'Oatmeal' : `Oat ${place}`; // half of them share their words
		return { ...rowOf(`shape 3:2, board ${own}`), id: `r${place}` };
	});
	let asked = 0;
	const results = rows.map((row) => {
		const result = judgeRow(row, settings);
		return {
			...result,
			findings: result.findings.map((finding) => ({
				...finding,
				get message() {
					asked++;
					return finding.message;
				},
				get mends() {
					asked++;
					return finding.mends;
				},
			})),
		};
	});
	/** How much is asked at each step. */
	const askedAlong = (steps: Iterator<unknown>) => {
		const along: number[] = [];
		for (let isDone = false; !isDone; along.push(asked)) {
			asked = 0;
			isDone = steps.next().done === true;
		}
		return along;
	};
	const each = Math.max(...results.map(({ findings }) => findings.length));
	const said = askedAlong(checksOf(rows, results, settings, () => true));
	expect(Math.max(...said)).toBe(each);
	expect(said.slice(count).length).toBeGreaterThan(2 * count);
	const [shared] = made(checksOf(rows, results, settings, () => true));
	expect(shared!.prints.length).toBe(count / 2);
	expect(askedAlong(mendsOfCheck(shared!))).toEqual([0, 1, ...shared!.prints.slice(1).map(() => 1)]);
});
