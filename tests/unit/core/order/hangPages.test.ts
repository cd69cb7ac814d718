import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { hangLine, hangPageMm, hangPages } from '../../../../src/core/order/hangPages.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { listRoom } from '../../../../src/core/values/papers.ts';
import { hangingList } from '../../../../src/core/walls/hangingList.ts';
import { print, rowsOf } from '../walls/wallOf.ts';

const frames = [{ name: 'Plain', clearance: 0, moulding: 20, lip: 20, weight: 0 }];
const glazing = [{ name: 'Glass', material: 'glass', width: 2000, height: 1000, thickness: 2 }];

/** The one print of a wall as it is laid out on paper. */
function lineOf(hanging: object) {
	const walls = [{ name: 'North', length: 5000 }];
	const { settings, problems } = readSettings({ frames, glazing, walls, hanging });
	expect(problems).toEqual([]);
	const rows = rowsOf([print('500x400', { frame: 'Plain', wall: 'North' })]);
	const results = rows.map((row) => judgeRow(row, settings));
	const items = hangPages(hangingList(results, settings), [], settings, 'A4')
		.flat()
		.flatMap(({ items }) => items);
	return items.find((item) => item.kind === 'line')!;
}

test('a line says its sum, then where the print is, then what holds it', () => {
	const { words } = lineOf({});
	expect(words.sum).toMatch(/^Frame’s top \d+ − cord _+ \(63 planned\) = hook _+$/);
	expect(words.place).toMatch(/^Left edge 2250, middle \d+ mm$/);
	expect(words.hold).toMatch(/^Cord on one hook, it pulls \d+\.\d kg on each ring\. /);
	const hooks = lineOf({ kind: 'two hooks', rings: '100 mm' }).words;
	expect(hooks.sum).toBeUndefined();
	expect(hooks.place).toMatch(/^Hooks 100 mm below the frame’s top; frame’s left edge 2250, middle \d+ mm$/);
});

test('a line is as high as its words need: a longer sum takes one more, and nothing is cut off', () => {
	expect(
		[lineOf({ kind: 'two hooks' }).mm, lineOf({}).mm, lineOf({ nail: 12 }).mm].map((mm) =>
			Math.round((mm - hangLine.free) / hangLine.line),
		),
	).toEqual([3, 3, 4]);
});

test('the last line of a page keeps off what stands at its foot', () => {
	const walls = ['North', 'South'].map((name) => ({ name, length: 90_000 }));
	const { settings } = readSettings({ frames, glazing, walls });
	const linesOf = (first: number) => {
		const wallOf = (at: number) => (at < first ? 'North' : 'South');
		const rows = rowsOf(Array.from({ length: 20 }, (_, at) => print('500x400', { frame: 'Plain', wall: wallOf(at) })));
		return hangingList(
			rows.map((row) => judgeRow(row, settings)),
			settings,
		);
	};
	// Where the second wall begins, other lines are the last of their page.
	const pages = [9, 10, 11, 12].flatMap((first) => hangPages(linesOf(first), [], settings, 'A4'));
	const heights = pages.map((page) =>
		page.reduce(
			(sum, { items }) =>
				sum +
				hangPageMm.head +
				items.reduce((own, item) => own + (item.kind === 'line' ? item.mm : hangPageMm[item.kind]), 0),
			0,
		),
	);
	expect(Math.max(...heights)).toBeLessThanOrEqual(listRoom('A4').height);
	expect(Math.max(...heights)).toBeGreaterThan(listRoom('A4').height - 10);
});
