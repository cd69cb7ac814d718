import { describe, expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import type { Layout } from '../../../../src/core/sheets/layout.ts';
import { type JobOptions, jobsOf } from '../../../../src/core/sheets/jobsOf.ts';
import { knifeSteps } from '../../../../src/core/sheets/knifeSteps.ts';
import { beginSheet } from '../../../../src/core/sheets/markSheets.ts';
import { packBoard } from '../../../../src/core/sheets/packBoard.ts';
import { placeInStock } from '../../../../src/core/stock/stock.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { CellTexts } from '../../../../src/core/show/row.ts';

const board = { name: 'Chalk', width: 1120, height: 815 };

/** The jobs of some rows by their cells, in a show of mounts of 600 × 450 mm. */
function jobs(cells: readonly CellTexts[], settings: object = {}, options: JobOptions = {}) {
	const read = readSettings({ mountSize: '600 x 450 mm', boards: [board], ...settings }).settings;
	const rows = cells.map((typed, index) => ({ id: `r${index + 1}`, order: index + 1, typed }));
	return jobsOf(
		rows,
		rows.map((row) => judgeRow(row, read)),
		read,
		options,
	);
}

const words = ({ jobs: all }: ReturnType<typeof jobsOf>) =>
	all.map(({ board: name, blanks }) => [
		name,
		...blanks.map(({ row, copy, part, width, height }) => `${row} ${copy} ${part} ${width / 1e7} × ${height / 1e7}`),
	]);

describe('blanks by board', () => {
	test('one for each copy, an inner mount smaller, the undermount from its own board', () => {
		const boards = [board, { ...board, name: 'Backing' }];
		const row = { shape: '3:2', copies: '2', 'inner mount': '5 mm' };
		expect(words(jobs([row], { boards, undermount: 'backing' }))).toEqual([
			['Chalk', '1 1 mount 600 × 450', '1 2 mount 600 × 450', '1 1 inner mount 594 × 444', '1 2 inner mount 594 × 444'],
			['Backing', '1 1 undermount 600 × 450', '1 2 undermount 600 × 450'],
		]);
	});

	test('a row with a stop and one without a size are left out and listed; no mount, no copies and no cells want nothing', () => {
		const rows = [
			{ shape: '3:2', side: '1x' },
			{ mount: 'fit' },
			{ mount: 'none', shape: '3:2' },
			{ shape: '3:2', copies: '0' },
			{},
		];
		const { jobs: none, leftOut } = jobs(rows);
		expect(none).toEqual([]);
		expect(leftOut).toEqual([
			{ row: 1, rowId: 'r1', reason: 'stop' },
			{ row: 2, rowId: 'r2', reason: expect.stringMatching(/stop|no-size/) as string },
		]);
	});

	test('two entries of one name are one board in two sizes', () => {
		const boards = [board, { ...board, name: 'CHALK', width: 1520, price: 990, pack: 5, trim: 5 }];
		const [job] = jobs([{ shape: '3:2' }], { boards }).jobs;
		expect(job!.stock).toHaveLength(2);
		expect(job!.stock[1]).toMatchObject({ width: mm(1520), price: 990, pack: 5, count: undefined, trim: mm(5) });
	});
});

describe('spares', () => {
	const spares = (cells: readonly CellTexts[], percent: string) =>
		jobs(cells, { spares: percent }).jobs[0]!.blanks.filter(({ row }) => row === 0);
	test.each([
		{ copies: '30', percent: '10%', count: 3 },
		{ copies: '31', percent: '10%', count: 4 },
		{ copies: '1', percent: '10%', count: 1 },
		{ copies: '30', percent: '0%', count: 0 },
	])('$percent of $copies blanks are $count', ({ copies, percent, count }) => {
		expect(spares([{ shape: '3:2', copies }], percent)).toHaveLength(count);
	});
	test('are of the sizes wanted most; of equal ones the larger', () => {
		const row = (mount: string, copies: string) => ({ shape: '3:2', mount, copies });
		const sizes = spares([row('500 x 400 mm', '10'), row('700 x 500 mm', '10'), row('600 x 450 mm', '20')], '5%');
		expect(sizes.map(({ width, copy }) => `${copy}: ${width / 1e7}`)).toEqual(['1: 700', '2: 600']);
	});
});

describe('what is cut already', () => {
	const cutSheets = (): readonly Layout[] => {
		const [job] = jobs([{ shape: '3:2', copies: '2' }]).jobs;
		return packBoard(job!, { secondsLeft: () => 0 }).layouts.map((layout) => ({ ...layout, isCut: true }));
	};
	test('is not cut again; what is left of the sheet is stock', () => {
		const [job] = jobs([{ shape: '3:2', copies: '3' }], {}, { cutSheets: cutSheets() }).jobs;
		expect(job!.blanks.map(({ copy }) => copy)).toEqual([3]);
		expect(job!.stock.filter(({ kind }) => kind === 'offcut').length).toBeGreaterThan(0);
	});
	test('in another size than the row has now is no use', () => {
		const [job] = jobs([{ shape: '3:2', mount: '500 x 400 mm', copies: '2' }], {}, { cutSheets: cutSheets() }).jobs;
		expect(job!.blanks).toHaveLength(2);
	});
	test('a board spoilt at the bench wants another blank', () => {
		const ticks = [{ row: 'r1', copy: 2, part: 'mount' as const, side: 'spoilt' as const, times: 1 }];
		const [job] = jobs([{ shape: '3:2', copies: '2' }], {}, { cutSheets: cutSheets(), ticks }).jobs;
		expect(job!.blanks.map(({ copy }) => copy)).toEqual([2]);
	});
});

test('drop-outs are stock where they are wanted', () => {
	const [job] = jobs([{ shape: '3:2', copies: '2' }], { dropOuts: true }).jobs;
	expect(job!.stock.filter(({ kind }) => kind === 'drop-out')).toMatchObject([{ count: 2, price: 0 }]);
});

describe('a drop-out is bevelled', () => {
	/** Gives one mount of the show, and nothing beside it. */
	const ofOne = { ...board, width: 600, height: 450, price: 900 };
	const dropOutOf = (settings: object, cells: CellTexts) =>
		jobs([cells], { dropOuts: true, ...settings }).jobs[0]!.stock.find(({ kind }) => kind === 'drop-out');

	test('it counts 1 mm smaller on each side, 1/16 in where the show is in inches', () => {
		expect(dropOutOf({}, { 'window width': '400', 'window height': '300' })).toMatchObject({
			width: mm(400),
			height: mm(300),
			trim: mm(1),
		});
		const inch = { unit: 'in', mountSize: '20 x 16', boards: [{ ...board, width: '40 in', height: '32 in' }] };
		expect(dropOutOf(inch, { 'window width': '12', 'window height': '8' })).toMatchObject({
			width: mm(304.8),
			trim: mm(1.5875),
		});
	});

	test('one that squaring leaves nothing of is no stock', () =>
		expect(
			dropOutOf({ leastBorder: 0 }, { 'window width': '2', 'window height': '300', 'picture width': '400' }),
		).toBeUndefined());

	test('it is squared on all four sides before anything else is cut from it, also by the knife', () => {
		const small = { mount: '200 x 150 mm', shape: '4:3', border: '30' };
		const rows = [{ 'window width': '400', 'window height': '300' }, small, small];
		const [job] = jobs(rows, { dropOuts: true, boards: [ofOne] }).jobs;
		const { layouts } = packBoard(job!, { secondsLeft: () => 0 });
		const layout = layouts.find(({ stock }) => stock.kind === 'drop-out')!;
		expect(
			layout.cuts.slice(0, 4).map(({ piece, across, at }) => [piece.width / 1e7, piece.height / 1e7, across, at / 1e7]),
		).toEqual([
			[400, 300, 'width', 1],
			[399, 300, 'width', 398],
			[398, 300, 'height', 1],
			[398, 299, 'height', 298],
		]);
		for (const { x, y, width, height } of layout.blanks) {
			expect(Math.min(x, y)).toBeGreaterThanOrEqual(mm(1));
			expect(x + width).toBeLessThanOrEqual(mm(399));
			expect(y + height).toBeLessThanOrEqual(mm(299));
		}
		const [first] = knifeSteps([beginSheet(layout, 'd')]);
		expect([first!.measure, first!.sheets[0]!.places]).toEqual([mm(1), [0]]);
	});

	test('a blank as large as the window is not cut from it', () => {
		const rows = [
			{ 'window width': '400', 'window height': '300' },
			{ mount: '400 x 300 mm', shape: '4:3' },
		];
		const [job] = jobs(rows, { dropOuts: true, boards: [ofOne] }).jobs;
		const { layouts } = packBoard(job!, { secondsLeft: () => 0 });
		expect(layouts.map(({ stock }) => stock.kind)).not.toContain('drop-out');
	});

	test('one that the knife began before drop-outs were squared is still the one that was used', () => {
		const [job] = jobs([{ 'window width': '400', 'window height': '300' }], { dropOuts: true }).jobs;
		const place = job!.stock.findIndex(({ kind }) => kind === 'drop-out');
		expect(placeInStock({ ...job!.stock[place]!, trim: mm(0) }, job!.stock)).toBe(place);
	});
});
