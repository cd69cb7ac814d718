import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { giveFrames, tryFrames } from '../../../../src/core/frameChoice/giveFrames.ts';
import { toMm } from '../../../../src/core/length/length.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { withCells } from '../../../../src/core/show/withCells.ts';
import { runs } from '../../../soak.ts';

const frame = (name: string, width: number, height: number, count?: number) => ({
	...{ name, width, height, depth: 40, moulding: 20, lip: 6 },
	...(count !== undefined && { count }),
});

function choice(cells: readonly Typed[], show: TypedSettings) {
	const { settings, problems } = readSettings(show);
	expect(problems).toEqual([]);
	const rows = cells.map((typed, place) => ({ id: `r${place}`, order: place, typed }));
	const { rows: given, difference, proven } = giveFrames(rows, settings);
	return { rows, settings, given, difference, proven };
}
const framesOf = (...args: Parameters<typeof choice>) => choice(...args).given.map((each) => each.frame);

const small = frame('Small', 400, 300);
const large = frame('Large', 600, 450);

describe('a frame for every print', () => {
	test('the one that leaves the picture nearest what it is now', () => {
		// Borders of 65 in the show's 500 × 400 leave a picture that the large frame makes larger, the small one smaller.
		const { given, proven } = choice([{ shape: '3:2' }], { frames: [small, large], mountSize: '580 x 430 mm' });
		expect(given[0]).toMatchObject({ frame: 'Large', change: { frame: 'Large', mount: 'frame' } });
		expect(given[0]!.after.mountWidth && toMm(given[0]!.after.mountWidth)).toBe(600);
		expect(proven).toBe(true);
	});
	test('a typed picture has no difference: the least area decides', () =>
		expect(framesOf([{ 'picture width': '200', 'picture height': '133' }], { frames: [large, small] })).toEqual([
			'Small',
		]));
	test('no border under the smallest border', () =>
		expect(framesOf([{ 'picture width': '360', 'picture height': '240' }], { frames: [small, large] })).toEqual([
			'Large',
		]));
	test('no frame more often than it is there, and rows that get none say so', () => {
		const print = { 'picture width': '200', 'picture height': '133' };
		expect(framesOf([print, print, print], { frames: [frame('Small', 400, 300, 2)] })).toEqual([
			'Small',
			'Small',
			undefined,
		]);
		expect(framesOf([{ ...print, copies: '3' }, print], { frames: [frame('Small', 400, 300, 2)] })).toEqual([
			undefined,
			'Small',
		]);
	});
	test('a print that gets none says whether any frame suits it, and each print is counted as it is tried', () => {
		const print = { 'picture width': '200', 'picture height': '133' };
		const { settings } = readSettings({ frames: [frame('Small', 400, 300, 1)] });
		const rows = [print, print, { 'picture width': '500', 'picture height': '333' }].map((typed, order) => ({
			...{ id: `r${order}`, order, typed },
		}));
		const tried: string[] = [];
		tryFrames(rows, settings, (done, of) => tried.push(`${done} of ${of}`));
		const { rows: given } = giveFrames(rows, settings);
		expect(given.map((each) => [each.frame, each.isSuited])).toEqual([
			['Small', true],
			[undefined, true],
			[undefined, false],
		]);
		expect(tried).toEqual(['1 of 3', '2 of 3', '3 of 3']);
	});
	test('rows that name a frame, or none, keep it, and it is taken off', () => {
		const print = { 'picture width': '200', 'picture height': '133' };
		const rows = [{ ...print, frame: 'Small', mount: 'frame' }, { ...print, frame: 'none' }, print];
		const { given } = choice(rows, { frames: [frame('Small', 400, 300, 1), large] });
		expect(given.map((each) => [each.id, each.frame])).toEqual([['r2', 'Large']]);
	});
	test('twenty prints of two copies and twenty-one frames: ten get one', () => {
		const print = { 'picture width': '350', 'picture height': '250', copies: '2' };
		const { given, proven } = choice(
			Array.from({ length: 20 }, () => print),
			{ frames: [frame('Oak', 500, 400, 21)] },
		);
		expect([given.filter((each) => each.frame === 'Oak').length, proven]).toEqual([10, true]);
	});
	test('of two frames of one name the first alone is given: a cell that names it finds that one', () => {
		const print = { 'picture width': '200', 'picture height': '133' };
		const { settings } = readSettings({ frames: [frame('Small', 400, 300, 1), frame('Other', 400, 300, 1)] });
		const [first, second] = settings.frames;
		const rows = [0, 1].map((order) => ({ id: `r${order}`, order, typed: print }));
		const { rows: given } = giveFrames(rows, { ...settings, frames: [first!, { ...second!, name: 'small' }] });
		expect(given.map((each) => each.frame)).toEqual(['Small', undefined]);
	});
	test('a print with a typed length in doubt is held back: the frame would type the mount over that says so', () => {
		const typed = { shape: '3:2' };
		const rows = ['50 x 40', '500 x 40O', '500 x 400'].map((mount) => ({ ...typed, mount }));
		const { given, settings } = choice(rows, { frames: [small] });
		const stops = rows.map((own, order) =>
			judgeRow({ id: 'r', order, typed: own }, settings).findings.flatMap(({ level, code }) =>
				level === 'stop' ? [code] : [],
			),
		);
		expect(stops[0]).toContain('unit-slip');
		expect(stops[1]).toEqual(['not-read']);
		expect(stops[2]).toEqual([]);
		expect(given.map((each) => [each.frame, each.isSuited])).toEqual([
			[undefined, false],
			[undefined, false],
			['Small', true],
		]);
	});
	test('a stop that the frame mends does not hold a print back', () => {
		const rows = [{ 'picture width': '200', 'picture height': '133', mount: '190 x 120' }];
		const { given, settings } = choice(rows, { frames: [small] });
		const before = judgeRow({ id: 'r', order: 0, typed: rows[0]! }, settings);
		expect(before.findings.filter(({ level }) => level === 'stop').map(({ code }) => code)).toContain('does-not-fit');
		expect(given.map((each) => each.frame)).toEqual(['Small']);
	});
	test('a moulding has no size, and no mount takes none', () => {
		expect(framesOf([{ shape: '3:2' }], { frames: [{ name: 'Oak', moulding: 20, lip: 6 }] })).toEqual([undefined]);
		expect(framesOf([{ shape: '3:2', mount: 'none' }], { frames: [small] })).toEqual([]);
	});
});

const prints = fc.record({
	shape: fc.constantFrom('3:2', '1:1', '4:5', ''),
	'picture width': fc.constantFrom('', '', '210', '320'),
	'picture height': fc.constantFrom('', '', '160'),
	copies: fc.constantFrom('1', '1', '2'),
	frame: fc.constantFrom('', '', '', 'F0', 'none'),
});
const shows = fc.record({
	rows: fc.array(prints, { maxLength: 4 }),
	frames: fc.array(
		fc.record({
			width: fc.constantFrom(320, 400, 500, 600),
			height: fc.constantFrom(240, 300, 400, 450),
			count: fc.option(fc.nat(3), { nil: undefined }),
		}),
		{ minLength: 1, maxLength: 3 },
	),
});

test('as good as the best of all ways, row by row worked out again', () =>
	fc.assert(
		fc.property(shows, ({ rows: cells, frames }) => {
			const list = frames.map(({ width, height, count }, place) => frame(`F${place}`, width, height, count));
			const { rows, settings, given, difference, proven } = choice(
				cells.map((each) => Object.fromEntries(Object.entries(each).filter(([, text]) => text !== ''))),
				{ frames: list },
			);
			expect(proven).toBe(true);
			const results = rows.map((row) => judgeRow(row, settings));
			const left = list.map(
				({ name, count = Infinity }) =>
					count - rows.reduce((sum, row, at) => sum + (row.typed.frame === name ? results[at]!.copies : 0), 0),
			);
			const open = rows.flatMap((row, at) => (row.typed.frame === undefined ? [{ row, result: results[at]! }] : []));
			expect(given.map(({ id }) => id)).toEqual(open.map(({ row }) => row.id));
			const long = ({
				pictureWidth = 0,
				pictureHeight = 0,
			}: {
				pictureWidth?: number | undefined;
				pictureHeight?: number | undefined;
			}) => Math.max(pictureWidth, pictureHeight);
			const options = open.map(({ row, result }) =>
				list.map(({ name, width, height }) => {
					const tried = judgeRow(withCells(row, { frame: name, mount: 'frame' }, settings), settings);
					const { side, top, bottom } = tried.solved;
					if (tried.isStopped || side === undefined || top === undefined || bottom === undefined) return undefined;
					if ([side, top, bottom].some((border) => border < settings.leastBorder)) return undefined;
					const isTyped = row.typed['picture width'] !== undefined || row.typed['picture height'] !== undefined;
					const isKnown = long(result.solved) > 0;
					return {
						difference: isTyped || !isKnown ? 0 : Math.abs(long(tried.solved) - long(result.solved)),
						area: width * height * result.copies,
					};
				}),
			);
			let best = [-1, 0, 0];
			const isBetter = (a: readonly number[], b: readonly number[]) =>
				a[0] !== b[0] ? a[0]! > b[0]! : a[1] !== b[1] ? a[1]! < b[1]! : a[2]! < b[2]!;
			const place = (at: number, rank: readonly number[]) => {
				if (at === open.length) {
					if (isBetter(rank, best)) best = [...rank];
					return;
				}
				place(at + 1, rank);
				const { copies } = open[at]!.result;
				options[at]!.forEach((own, chosen) => {
					if (!own || left[chosen]! < copies) return;
					left[chosen]! -= copies;
					place(at + 1, [rank[0]! + 1, rank[1]! + own.difference, rank[2]! + own.area]);
					left[chosen]! += copies;
				});
			};
			place(0, [0, 0, 0]);
			const area = given.reduce((sum, { frame: name }, at) => {
				const chosen = list.findIndex((each) => each.name === name);
				return chosen < 0 ? sum : sum + options[at]![chosen]!.area;
			}, 0);
			expect([given.filter(({ frame: name }) => name !== undefined).length, difference, area]).toEqual(best);
		}),
		{ numRuns: runs(50, 5000) },
	));
