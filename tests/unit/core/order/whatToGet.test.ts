import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { toMm } from '../../../../src/core/length/length.ts';
import type { GetLine } from '../../../../src/core/order/getLine.ts';
import { placesOf } from '../../../../src/core/order/getSentences.ts';
import { whatToGet } from '../../../../src/core/order/whatToGet.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { jobsOf } from '../../../../src/core/sheets/jobsOf.ts';
import { packBoards } from '../../../../src/core/sheets/packBoards.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { planAllSticks } from '../../../../src/core/sticks/planSticks.ts';
import { stickJobsOf } from '../../../../src/core/sticks/stickJobsOf.ts';
import { runs } from '../../../soak.ts';

/** What is to be got for rows by their cells. Mounts are 500 × 400 mm. */
function toGet(cells: readonly Typed[], show: TypedSettings = {}, seconds = 2) {
	const start = performance.now();
	const { settings, problems } = readSettings(show);
	expect(problems).toEqual([]);
	const rows = cells.map((typed, place) => ({ id: `r${place}`, order: place, typed }));
	const results = rows.map((row) => judgeRow(row, settings));
	const jobs = jobsOf(rows, results, settings).jobs.filter(({ stock }) => stock.length > 0);
	const plans = packBoards(jobs, { secondsLeft: () => seconds - (performance.now() - start) / 1000 });
	const sticks = planAllSticks(stickJobsOf(rows, results, settings), { secondsLeft: () => 1 });
	return whatToGet({ rows, results, settings, plans, sticks });
}

/** What is to be got by plans that were made for these rows, once only those of some ids are left, in that order. */
function toGetLater(cells: readonly Typed[], show: TypedSettings, ids: readonly string[]) {
	const { settings } = readSettings(show);
	const rows = cells.map((typed, place) => ({ id: `r${place}`, order: place, typed }));
	const results = rows.map((row) => judgeRow(row, settings));
	const jobs = jobsOf(rows, results, settings).jobs.filter(({ stock }) => stock.length > 0);
	const plans = packBoards(jobs, { secondsLeft: () => 1 });
	const sticks = planAllSticks(stickJobsOf(rows, results, settings), { secondsLeft: () => 1 });
	const left = ids.map((id) => rows.find((row) => row.id === id)!);
	return whatToGet({ rows: left, results: left.map((row) => judgeRow(row, settings)), settings, plans, sticks });
}

const inWords = ({ kind, name, wanted, there, packs, cost, isByLength }: GetLine) =>
	[
		kind,
		name,
		isByLength ? Number((wanted / 1e10).toFixed(6)) : wanted,
		isByLength ? there / 1e10 : there,
		packs,
		cost,
	] as const;
const linesOf = (...args: Parameters<typeof toGet>) => toGet(...args).lines.map(inWords);
const only = (kind: string, ...args: Parameters<typeof toGet>) => linesOf(...args).filter(([own]) => own === kind);

const print: Typed = { 'picture width': '300', 'picture height': '200' };
const sheet = { name: 'Clear', width: 1000, height: 800, price: '11.20' };
// 500 + 3 + 2 · (20 − 6) = 531 by 431
const box = { name: 'Box', width: 500, height: 400, moulding: 20, lip: 6, depth: 40, weight: 0.5, price: 2400 };

describe('papers', () => {
	const papers = [
		{ name: 'Roll', width: 432, roll: '15 m', margin: 3, price: '80', count: 1 },
		{ name: 'Rag', width: 329, height: 483, margin: 5, price: '42', pack: 25, count: 3 },
	];
	test('sheets by the pack for copies and proofs, rolls by the length that is cut off, others without a price', () => {
		const cells = [
			{ ...print, paper: 'rag', copies: '4' },
			{ ...print, paper: 'Rag' },
			{ ...print, paper: 'Roll', copies: '60' },
			{ ...print, paper: 'A3' },
		];
		// (4 + 2) + (1 + 2) sheets; 300 + 2 · 3 mm are cut off the roll for each of 60 + 2
		expect(only('paper', cells, { papers, proofs: 2 })).toEqual([
			['paper', 'Roll', 18.972, 15, 1, 8000],
			['paper', 'Rag', 9, 3, 1, 4200],
			['paper', 'A3', 3, 0, 3, undefined],
		]);
	});

	test('what a print takes of them adds up, and a stopped print takes none', () => {
		const cells = [
			{ ...print, paper: 'Rag', copies: '4' },
			{ 'picture width': '500', 'picture height': '300', paper: 'Rag' },
		];
		const [line] = toGet(cells, { papers }).lines.filter(({ kind }) => kind === 'paper');
		expect([...line!.taken]).toEqual([[0, 4n]]);
	});
});

describe('sheets', () => {
	test('glazing and backing of what is framed, the backing smaller', () => {
		const show = { frames: [box], glazing: [sheet], backing: [{ ...sheet, name: 'Brown' }], backingSmaller: 2 };
		expect(
			linesOf(
				[
					{ ...print, frame: 'Box', copies: '4' },
					{ ...print, frame: 'none' },
				],
				show,
			).slice(0, 4),
		).toEqual([
			['board', 'mount board', 5, 0, 5, undefined],
			['glazing', 'Clear', 1, 0, 1, 1120],
			['backing', 'Brown', 1, 0, 1, 1120],
			['frame', 'Box', 4, 0, 4, 9600],
		]);
	});
	test('what is counted is there as far as the plan uses it', () => {
		const framed = { ...print, frame: 'Box', copies: '5' };
		const show = (count?: number) => ({ frames: [box], glazing: [{ ...sheet, count }] });
		expect(only('glazing', [framed], show(7))).toEqual([['glazing', 'Clear', 2, 2, 0, 0]]);
		expect(only('glazing', [framed], show())).toEqual([['glazing', 'Clear', 2, 0, 2, 2240]]);
	});
	test.each([
		['the same', 1000, '40'],
		['one that is dearer', 1100, '60'],
	])('what is there is taken before %s is bought, and costs nothing', (_, width, price) => {
		const bought = { name: 'White', width: 1000, height: 800, price: '40' };
		const boards = [bought, { ...bought, width, price, count: 2 }];
		// Four prints to a sheet: two sheets are there, a third is bought.
		expect(only('board', [{ ...print, copies: '9' }], { boards })).toEqual([
			['board', 'White', 2, 2, 0, 0],
			['board', 'White', 1, 0, 1, 4000],
		]);
	});
	test('packs, and offcuts from earlier', () => {
		const boards = [{ name: 'White', width: 1000, height: 800, pack: 2, price: '40' }];
		const offcuts = [{ board: 'White', width: 500, height: 400 }];
		expect(only('board', [{ ...print, copies: '9' }], { boards, offcuts })).toEqual([
			['board', 'White', 2, 0, 1, 4000],
			['board', 'White', 1, 1, 0, 0],
		]);
	});
	test('an offcut is for the prints that are cut from it, and shared with the sheets by all', () => {
		const boards = [{ name: 'White', width: 1000, height: 800, price: '40' }];
		const offcuts = [{ board: 'White', width: 500, height: 400 }];
		const { lines } = toGet([{ ...print, copies: '4' }, print], { boards, offcuts });
		const [bought, left] = lines.filter(({ kind }) => kind === 'board');
		expect([bought!.piece, left!.piece]).toEqual([undefined, 'offcut']);
		expect(placesOf(left!)).toHaveLength(1);
		expect([...left!.taken.keys()]).toEqual([0, 1]);
	});
	test('with an empty list, by size and without a price', () => {
		const { lines, unpriced } = toGet(
			[
				{ ...print, frame: 'Box' },
				{ ...print, frame: 'Box', glazing: 'acrylic' },
			],
			{
				frames: [box],
			},
		);
		expect(lines.map(inWords).slice(1, 4)).toEqual([
			['glazing', 'glass', 1, 0, 1, undefined],
			['glazing', 'acrylic', 1, 0, 1, undefined],
			['backing', 'backing', 2, 0, 2, undefined],
		]);
		expect(lines[1]!.size && [toMm(lines[1]!.size.width!), toMm(lines[1]!.size.height!)]).toEqual([500, 400]);
		expect(unpriced.map(({ name }) => name)).toEqual(expect.arrayContaining(['glass', 'acrylic', 'backing']));
	});
	test('what comes with the frame is not got, unless the cell names one', () => {
		const show = { frames: [{ ...box, includes: ['glazing', 'backing'] }], glazing: [sheet] };
		expect(only('glazing', [{ ...print, frame: 'Box' }], show)).toEqual([]);
		expect(only('backing', [{ ...print, frame: 'Box' }], show)).toEqual([]);
		expect(only('glazing', [{ ...print, frame: 'Box', glazing: 'Clear' }], show)).toHaveLength(1);
	});
	test('what no sheet gives is named as not placed', () => {
		const small = { ...sheet, width: 450, height: 450 };
		const { unplaced, lines } = toGet([{ ...print, frame: 'Box' }], { frames: [box], glazing: [small] });
		expect(unplaced.map(({ material, blank, reason }) => [material, blank.row, reason])).toEqual([
			['glazing', 1, 'too-large'],
		]);
		expect(lines.filter(({ kind }) => kind === 'glazing')).toEqual([]);
	});
	test('a row with a stop is left out and named', () => {
		expect(toGet([{ ...print, side: 'x' }, {}]).leftOut).toEqual([{ row: 1, rowId: 'r0', reason: 'stop' }]);
	});
});

describe('frames and sticks', () => {
	test('frames that are there are taken off', () => {
		const frames = [{ ...box, count: 3 }];
		expect(only('frame', [{ ...print, frame: 'Box', copies: '5' }], { frames })).toEqual([
			['frame', 'Box', 5, 3, 2, 4800],
		]);
		expect(only('frame', [{ ...print, frame: 'Box' }], { frames })).toEqual([['frame', 'Box', 1, 3, 0, 0]]);
	});
	test('a moulding in sticks by sticks, else by frames', () => {
		const oak = { name: 'Oak', moulding: 20, lip: 6, depth: 40, price: '18.50' };
		expect(
			only('stick', [{ ...print, frame: 'Oak', copies: '2' }], { frames: [{ ...oak, stick: 3000, count: 1 }] }),
		).toEqual([
			['stick', 'Oak', 2, 1, 1, 1850], // 4 · (531 + 431 + 2 · 5) = 3888
		]);
		expect(only('frame', [{ ...print, frame: 'Oak' }], { frames: [oak] })).toEqual([['frame', 'Oak', 1, 0, 1, 1850]]);
	});
	test('a moulding of unknown width is named', () =>
		expect(toGet([{ ...print, frame: 'Oak' }], { frames: [{ name: 'Oak', stick: 3000 }] }).unmeasured).toEqual([
			{ row: 1, rowId: 'r0', frame: 'Oak' },
		]));
});

describe('supplies', () => {
	const framed = { ...print, frame: 'Box' };
	test.each<[string, readonly (readonly unknown[])[]]>([
		['tape', [['tape', 'tape', 2.1164, 0, 3, undefined]]], // 2 · (531 + 431) and a tenth
		['cord', [['cord', 'cord', 0.81774, 0, 1, undefined]]], // 1.4 · 531 and a tenth
		['rings', [['rings', 'rings', 2, 0, 2, undefined]]],
		['bumpers', [['bumpers', 'bumpers', 2, 0, 2, undefined]]],
		['hinges', [['hinges', 'hinges', 2, 0, 2, undefined]]],
		['labels', [['labels', 'labels', 1, 0, 1, undefined]]],
		['spacer', []],
	])('%s of a framed print', (kind, lines) => expect(only(kind, [framed], { frames: [box] })).toEqual(lines));
	test.each([
		['cord', 1],
		['two hooks', 0],
		['rail', 1],
	])('hung by %s: cord %i times', (hanging, lines) => {
		const show = { frames: [box], hanging, supplies: [{ kind: 'cord', each: '0.9 m' }] };
		expect(only('cord', [framed], show)).toHaveLength(lines);
		expect(only('rings', [framed], show)).toHaveLength(1);
	});
	test('without a frame only hinges and labels', () =>
		expect(linesOf([{ ...print, frame: 'none' }]).map(([kind]) => kind)).toEqual(['board', 'hinges', 'labels']));
	test('a spacer where one is typed: the perimeter of the mount', () =>
		expect(only('spacer', [{ ...print, spacer: '5' }, print])).toEqual([['spacer', 'spacer', 1.98, 0, 2, undefined]]));
	test('four rings over 8 kg', () => {
		const heavy = { ...box, weight: 4 }; // 4 · 1.924 m alone
		expect(only('rings', [framed], { frames: [heavy] })).toEqual([['rings', 'rings', 4, 0, 4, undefined]]);
	});
	test.each([
		{ width: '400', hinges: 2 },
		{ width: '500', hinges: 2 },
		{ width: '501', hinges: 3 },
		{ width: '800', hinges: 3 },
		{ width: '801', hinges: 4 },
	])('$hinges hinges for a paper of $width mm', ({ width, hinges }) =>
		expect(only('hinges', [{ ...print, paper: `${width} x 300 mm`, mount: '900 x 600 mm' }])[0]![2]).toBe(hinges),
	);
	test('what the list says takes the place of the usual, in packs, less what is there', () => {
		const supplies = [
			{ kind: 'tape', name: 'Brown tape', each: 2, pack: 50, count: 1, price: '4.20' },
			{ kind: 'rings', pack: 10, count: 3, price: '2' },
			{ kind: 'bumpers', each: 0 },
		];
		const show = { frames: [box], supplies };
		expect(only('tape', [{ ...framed, copies: '30' }], show)).toEqual([['tape', 'Brown tape', 66, 1, 2, 840]]);
		expect(only('rings', [{ ...framed, copies: '7' }], show)).toEqual([['rings', 'rings', 14, 3, 2, 400]]);
		expect(only('bumpers', [framed], show)).toEqual([]);
	});
});

describe('money', () => {
	const show = { frames: [box], glazing: [sheet], boards: [{ name: 'White', width: 1000, height: 800, price: '10' }] };
	test('shares by what each takes, and what has no price is in no sum', () => {
		const { total, shares, costs, unpriced } = toGet(
			[
				{ ...print, maker: 'Ana', frame: 'Box' },
				{ ...print, maker: ' ana' },
				{ ...print, maker: 'Bo', frame: 'none' },
			],
			show,
		);
		// One sheet of board for three, one of glass for the two with a frame, two frames.
		expect(total).toBe(1000 + 1120 + 2 * 2400);
		expect(shares).toEqual([
			{ maker: 'Ana', cost: 667 + 1120 + 4800 },
			{ maker: 'Bo', cost: 333 },
		]);
		expect(costs).toEqual([334 + 560 + 2400, 333 + 560 + 2400, 333]);
		expect(unpriced.map(({ kind }) => kind)).toContain('tape');
	});

	const price = fc.option(fc.nat(5000), { nil: undefined });
	const shows = fc.record({
		rows: fc.array(
			fc.record({
				maker: fc.constantFrom('Ana', 'Bo', 'Cy', ''),
				frame: fc.constantFrom('Box', 'Oak', 'none', ''),
				copies: fc.constantFrom('0', '1', '2', '5'),
				glazing: fc.constantFrom('', 'none', 'Clear', 'acrylic'),
				spacer: fc.constantFrom('', '4'),
			}),
			{ maxLength: 6 },
		),
		prices: fc.array(price, { minLength: 6, maxLength: 6 }),
		packs: fc.array(fc.integer({ min: 1, max: 7 }), { minLength: 6, maxLength: 6 }),
		counts: fc.array(fc.option(fc.nat(4), { nil: undefined }), { minLength: 6, maxLength: 6 }),
	});
	test('packs hold what is wanted, and shares and costs add up to what the lines cost', () =>
		fc.assert(
			fc.property(shows, ({ rows, prices, packs, counts }) => {
				const of = (place: number) => ({ price: prices[place], pack: packs[place], count: counts[place] });
				const { lines, total, shares, costs } = toGet(
					rows.map((row) => ({ ...print, ...row })),
					{
						boards: [{ name: 'White', width: 1000, height: 800, price: prices[0], pack: packs[0] }],
						glazing: [{ ...sheet, price: prices[1], pack: packs[1] }],
						frames: [
							{ ...box, price: prices[2], count: counts[2] },
							{ name: 'Oak', moulding: 20, lip: 6, depth: 40, stick: 2400, price: prices[3], count: counts[3] },
						],
						supplies: [
							{ kind: 'tape', ...of(4) },
							{ kind: 'rings', ...of(5) },
						],
					},
					0,
				);
				const priced = lines.flatMap(({ cost }) => cost ?? []);
				expect(total).toBe(priced.reduce((sum, cost) => sum + cost, 0));
				expect(shares.reduce((sum, { cost }) => sum + cost, 0)).toBe(total);
				expect(costs.reduce((sum, cost) => sum + cost, 0)).toBe(total);
				for (const { wanted, there, pack, packs: bought, price: each, cost } of lines) {
					expect(bought * pack + there).toBeGreaterThanOrEqual(wanted);
					expect(bought === 0 || (bought - 1) * pack + there < wanted).toBe(true);
					expect(cost).toBe(each === undefined ? undefined : bought * each);
				}
			}),
			{ numRuns: runs(25, 20_000) },
		));

	const board = fc.record({
		width: fc.integer({ min: 500, max: 1200 }),
		price,
		pack: fc.integer({ min: 1, max: 4 }),
		count: fc.option(fc.nat(3), { nil: undefined }),
	});
	test('what boards cost to get is what their plan says, of those in stock too', () =>
		fc.assert(
			fc.property(
				fc.uniqueArray(board, { maxLength: 3, selector: ({ width }) => width }),
				fc.nat(12),
				(some, copies) => {
					const boards = some.map((each) => ({ name: 'White', height: 800, ...each }));
					const { settings } = readSettings({ boards });
					const rows = [{ id: 'r', order: 1, typed: { ...print, copies: `${copies}`, board: 'White' } }];
					const results = rows.map((row) => judgeRow(row, settings));
					const plans = packBoards(jobsOf(rows, results, settings).jobs, { secondsLeft: () => 0 });
					const { lines } = whatToGet({ rows, results, settings, plans, sticks: [] });
					const costs = lines.flatMap(({ kind, cost }) => (kind === 'board' ? (cost ?? 0) : []));
					expect(costs.reduce((sum, cost) => sum + cost, 0)).toBe(plans.reduce((sum, { cost }) => sum + cost, 0));
				},
			),
			{ numRuns: runs(25, 5000) },
		));
});

test('plans older than the rows name prints where they stand now, and none that is gone', () => {
	const show = {
		boards: [{ name: 'Chalk', width: 1200, height: 900, price: '10.00' }],
		frames: [{ name: 'Made', moulding: 20, lip: 6, stick: '2400' }],
	};
	const cells = ['Ilse', 'Jonah', 'Ilse'].map((maker) => ({ ...print, maker, board: 'Chalk', frame: 'Made' }));
	const later = toGetLater(cells, show, ['r2', 'r1']);
	for (const { taken } of later.lines)
		expect([...taken.keys()].every((place) => place === 0 || place === 1)).toBe(true);
	const legs = later.sticks.flatMap(({ sticks }) => sticks.flatMap((stick) => stick.legs));
	expect(new Set(legs.map(({ row, rowId }) => `${rowId} ${row}`))).toEqual(new Set(['r0 0', 'r1 2', 'r2 1']));
	expect(later.shares.map(({ maker }) => maker)).toEqual(['Ilse', 'Jonah']);
	expect(later.shares.reduce((sum, { cost }) => sum + cost, 0)).toBe(later.total);
});
