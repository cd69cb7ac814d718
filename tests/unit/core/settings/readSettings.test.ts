import { describe, expect, test } from 'vitest';
import { inches, type Length, mm, toInches, toMm } from '../../../../src/core/length/length.ts';
import { defaultSettings } from '../../../../src/core/settings/defaults.ts';
import { usualContents } from '../../../../src/core/settings/readLabelContents.ts';
import { readSettings, unknownSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';

/** The settings of a text that is read without a problem. */
function read(typed: TypedSettings) {
	const { settings, problems } = readSettings(typed);
	expect(problems).toEqual([]);
	return settings;
}

const problemsOf = (typed: TypedSettings) =>
	Object.fromEntries(readSettings(typed).problems.map(({ key, problem }) => [key, problem]));

test('metric defaults', () => {
	const { ruler, mountSize, border, leastBorder, overlap, cuttingTolerance, hingeMargin, innerBlankSmaller, ...rest } =
		read({});
	expect(
		[ruler, mountSize!.width, mountSize!.height, border, leastBorder, overlap, cuttingTolerance, hingeMargin].map(toMm),
	).toEqual([1, 500, 400, 65, 40, 3, 2, 5]);
	expect(toMm(innerBlankSmaller)).toBe(3);
	expect(rest).toEqual({
		unit: 'mm',
		sizes: [],
		bottomWeight: { kind: 'share', numerator: 1, denominator: 10 },
		reveal: undefined,
		unevenTolerancePercent: 15,
		limits: {},
		labels: { name: 'free', corner: undefined },
		labelContents: usualContents,
		labelSheets: [],
		boards: [],
		offcuts: [],
		hasDropOuts: false,
		sparesPercent: 0,
		undermount: undefined,
		glazing: [],
		backing: [],
		backingSmaller: mm(0),
		supplies: [],
		currency: undefined,
		frames: [],
		frame: undefined,
		frameClearance: mm(3),
		saw: mm(5),
		catalogue: { prices: 'shown' },
		packing: { most: 6 },
		papers: [],
		pixelsAnInch: 240,
		proofs: 0,
		pointsRoom: mm(2),
		leastSpacer: mm(3),
		bench: { kind: 'guide' },
		walls: [],
		hanging: {
			kind: 'cord',
			rings: { kind: 'share', percent: 100 / 3 },
			inset: mm(30),
			slackPercent: 5,
			ratingKg: undefined,
			nail: mm(0),
		},
		stackGap: mm(60),
		commission: { numerator: 0, denominator: 1 },
		vat: { numerator: 0, denominator: 1 },
		priceStep: 100,
		isCostInPrice: false,
	});
});

test('inch defaults', () => {
	const { ruler, mountSize, border, leastBorder, overlap, cuttingTolerance, hingeMargin, innerBlankSmaller } = read({
		unit: 'in',
	});
	expect(
		[ruler, mountSize!.width, mountSize!.height, border, leastBorder, overlap, cuttingTolerance, hingeMargin].map(
			toInches,
		),
	).toEqual([1 / 16, 20, 16, 2.5, 1.5, 1 / 8, 1 / 16, 1 / 4]);
	expect(toInches(innerBlankSmaller)).toBe(1 / 8);
	const { frameClearance, pointsRoom, leastSpacer, saw } = read({ unit: 'in' });
	expect([frameClearance, pointsRoom, leastSpacer, saw].map(toInches)).toEqual([1 / 8, 1 / 16, 1 / 8, 3 / 16]);
});

test('a show in cm has the metric defaults', () => {
	expect({ ...read({ unit: 'cm' }), unit: 'mm' }).toEqual(read({}));
});

test('the defaults typed in are the defaults', () => {
	for (const unit of ['mm', 'cm', 'in'] as const)
		expect(read({ unit, ...defaultSettings(unit) })).toEqual(read({ unit }));
});

describe('a text is read as typed, a number is mm or per cent', () => {
	test.each<[TypedSettings, number]>([
		[{ border: 70 }, 70],
		[{ border: '70' }, 70],
		[{ border: '7 cm' }, 70],
		[{ border: '2 5/8 in' }, 66.675],
		[{ border: '2 5/8' }, 66.675],
		[{ unit: 'cm', border: '7' }, 70],
		[{ unit: 'cm', border: 7 }, 7],
		[{ unit: 'in', border: '2' }, 50.8],
		[{ unit: 'in', border: 70 }, 70],
		[{ border: '' }, 65],
		[{ border: null }, 65],
	])('%j: %d mm', (typed, mm) => expect(toMm(read(typed).border)).toBe(mm));

	test('shares', () => {
		expect(read({ bottomWeight: 12 }).bottomWeight).toEqual({ kind: 'share', numerator: 3, denominator: 25 });
		expect(read({ bottomWeight: '6 mm' }).bottomWeight).toEqual({ kind: 'length', more: 60_000_000 });
		expect(read({ bottomWeight: 'optical centre' }).bottomWeight).toEqual({ kind: 'optical centre' });
		expect(read({ unevenTolerance: 20, spares: '10%' })).toMatchObject({
			unevenTolerancePercent: 20,
			sparesPercent: 10,
		});
	});

	test('spaces and limits may be zero, borders and rulers not', () => {
		expect(read({ overlap: 0, leastBorder: '0', cuttingTolerance: 0, hingeMargin: 0, reveal: 0 })).toMatchObject({
			overlap: 0,
			leastBorder: 0,
			reveal: 0,
		});
		expect(Object.keys(problemsOf({ border: 0, ruler: 0, mountSize: '0 x 400' }))).toEqual(
			expect.arrayContaining(['border', 'ruler', 'mountSize']),
		);
	});

	test.each([
		['none', undefined],
		['', undefined],
		['5', 50_000_000],
		[5, 50_000_000],
	])('reveal %j', (reveal, units) => expect(read({ reveal }).reveal).toBe(units));
});

describe('sizes', () => {
	const sizes = [
		{ name: 'Small frame', width: 333, height: '22,2 cm' },
		{ name: 'Tall', width: '11 1/2', height: '17' }, // a bare fraction makes both inches
	];
	test('have names that the mount size may use', () => {
		expect(read({ sizes, mountSize: 'smallframe' }).mountSize).toEqual({ width: 3_330_000_000, height: 2_220_000_000 });
		expect(toInches(read({ sizes }).sizes[1]!.height)).toBe(17);
		expect(read({ mountSize: 'A2' }).mountSize).toEqual({ width: 4_200_000_000, height: 5_940_000_000 });
		expect(read({ mountSize: { width: 300, height: '20 cm' } }).mountSize).toEqual({
			width: 3_000_000_000,
			height: 2_000_000_000,
		});
	});
	test('that cannot be read are named, and the others kept', () => {
		const { settings, problems } = readSettings({
			sizes: [{ name: 'fit', width: 1, height: 2 }, 7, ...sizes, { width: 'x' }],
		});
		expect(settings.sizes.map(({ name }) => name)).toEqual(['Small frame', 'Tall']);
		expect(problems.map(({ key }) => key).sort()).toEqual([
			'sizes[0].name',
			'sizes[1]',
			'sizes[4].height',
			'sizes[4].name',
			'sizes[4].width',
		]);
	});
});

test('boards', () => {
	const boards = [
		{ name: 'Snow', width: 1120, height: '81.5 cm', thickness: 1.4, price: 1250, pack: '10', grain: 'width', trim: 0 },
		{ name: 'Ready', kind: 'blank', width: '20 in', height: '16 in', count: 4, grain: 'none' },
		{ name: 'Odd', width: 10, height: 10, price: 12.5, pack: 0 },
		{ name: 'Lost', kind: 'roll', width: 10, height: 10 },
	];
	const { settings, problems } = readSettings({ boards });
	expect(settings.boards).toEqual([
		{
			name: 'Snow',
			kind: 'sheet',
			width: 11_200_000_000,
			height: 8_150_000_000,
			thickness: 14_000_000,
			price: 1250,
			pack: 10,
			grain: 'width',
			trim: 0,
		},
		{ name: 'Ready', kind: 'blank', width: 5_080_000_000, height: 4_064_000_000, count: 4 },
		{ name: 'Odd', kind: 'sheet', width: 100_000_000, height: 100_000_000 },
	]);
	expect(problems.map(({ key }) => key)).toEqual(['boards[2].price', 'boards[2].pack', 'boards[3].kind']);
});

test('offcuts and drop-outs', () => {
	const offcuts = [
		{ board: 'Chalk', width: 620, height: '41 cm', count: 2, grain: 'height' },
		{ board: 'Chalk', width: 300, height: 200, grain: 'none' },
		{ width: 300, height: 200 },
		{ board: 'Chalk', width: 300, height: 200, grain: 'along', count: 'some' },
	];
	const { settings, problems } = readSettings({ offcuts, dropOuts: 'Yes' });
	expect(settings.hasDropOuts).toBe(true);
	expect(settings.offcuts).toEqual([
		{ board: 'Chalk', width: mm(620), height: mm(410), count: 2, grain: 'height' },
		{ board: 'Chalk', width: mm(300), height: mm(200) },
		{ board: 'Chalk', width: mm(300), height: mm(200) },
	]);
	expect(problems.map(({ key }) => key)).toEqual(['offcuts[2].board', 'offcuts[3].count', 'offcuts[3].grain']);
	expect(read({ boards: [{ name: 'Chalk', width: 1, height: 1, colour: ' warm white ' }] }).boards[0]).toMatchObject({
		colour: 'warm white',
	});
	expect(read({ dropOuts: false }).hasDropOuts).toBe(false);
	expect(Object.keys(problemsOf({ dropOuts: 'perhaps' }))).toEqual(['dropOuts']);
});

const sizeOf = (size: { width: Length; height: Length } | undefined) => size && [toMm(size.width), toMm(size.height)];

test('a frame whose name another before it has is reported and left out', () => {
	const { settings, problems } = readSettings({
		frames: [
			{ name: 'Oak', width: 500, height: 400 },
			{ name: ' oak', width: 600, height: 500 },
			{ name: 'Ash', width: 600, height: 500 },
		],
	});
	expect(settings.frames.map(({ name }) => name)).toEqual(['Oak', 'Ash']);
	expect(problems).toEqual([
		{ key: 'frames[1].name', problem: '“oak” is the name of a frame before it too; give this one another' },
	]);
});
test('frames, by what goes in, by their rebate, or made to each mount', () => {
	const { settings, problems } = readSettings({
		frames: [
			{
				name: 'Ash',
				width: 700,
				height: 550,
				depth: '22 mm',
				lip: 6,
				moulding: 20,
				weight: '400 g',
				price: 9900,
				count: 12,
			},
			{ name: 'Bare', rebateWidth: '702.5', rebateHeight: 552, clearance: '2 mm', weight: 'light' },
			{ name: 'Made', clearance: 4 },
			{ name: 'Both', width: 700, height: 550, rebateWidth: 704, rebateHeight: 554 },
			{ width: 702, height: 552 },
			{ name: 'Half', width: 702 },
			{ name: 'Tight', rebateWidth: 3, rebateHeight: 552 },
			{ name: 'None', width: 702, height: 552 },
		],
	});
	expect(settings.frames[0]).toMatchObject({
		name: 'Ash',
		depth: 220_000_000,
		lip: 60_000_000,
		moulding: 200_000_000,
		weightKgPerMetre: 0.4,
		price: 9900,
		count: 12,
	});
	expect(
		settings.frames.map(({ name, size, clearance }) => [
			name,
			sizeOf(size?.takes),
			sizeOf(size?.rebate),
			toMm(clearance),
		]),
	).toEqual([
		['Ash', [700, 550], [703, 553], 3],
		['Bare', [700, 550], [702.5, 552], 2], // less the clearance, down to the ruler
		['Made', undefined, undefined, 4],
		['Both', [700, 550], [704, 554], 3],
	]);
	expect(problems.map(({ key }) => key)).toEqual([
		'frames[1].weight',
		'frames[4].name',
		'frames[5].height',
		'frames[6].rebateWidth',
		'frames[7].name',
	]);
});

test('the clearance of frames is the setting’s where they have none of their own', () => {
	const frames = [{ name: 'Oak', width: '20', height: '16' }];
	expect(read({ unit: 'in', frames }).frames[0]!.size!.rebate).toEqual({
		width: inches(20.125),
		height: inches(16.125),
	});
	expect(read({ unit: 'in', frames, frameClearance: '1/4' }).frames[0]!.size!.rebate.width).toBe(inches(20.25));
});

test('what a frame comes with, and a stick of moulding', () => {
	const frames = [
		'glazing',
		'Backing',
		'both',
		'neither',
		'glazing and backing',
		['backing', 'glazing'],
		undefined,
	].map((includes, i) => ({ name: `F${i}`, stick: '2.4 m', ...(includes !== undefined && { includes }) }));
	const { frames: read_ } = read({ frames });
	expect(read_.map(({ includes }) => includes)).toEqual([
		...[
			['glazing'],
			['backing'],
			['glazing', 'backing'],
			[],
			['glazing', 'backing'],
			['backing', 'glazing'],
			undefined,
		],
	]);
	expect(toMm(read_[0]!.stick!)).toBe(2400);
	expect(problemsOf({ frames: [{ name: 'Oak', includes: 'hooks' }] })).toEqual({
		'frames[0].includes': 'hooks is none of: glazing, backing, both, neither',
	});
	expect(Object.keys(problemsOf({ frames: [{ name: 'Oak', includes: ['glazing', 3] }] }))).toEqual([
		'frames[0].includes',
	]);
});

test('papers are sheets or rolls', () => {
	const { papers } = read({
		papers: [
			{
				name: 'Rag',
				width: 329,
				height: '483 mm',
				margin: '5 mm',
				surface: 'matt',
				price: '42.50',
				pack: 25,
				count: 3,
			},
			{ name: 'Rag roll', width: '61 cm', roll: '15 m', margin: 3 },
			{ name: 'Card', width: 2, height: 5 },
		],
	});
	expect(papers).toEqual([
		{
			...{ name: 'Rag', width: mm(329), height: mm(483), margin: mm(5), surface: 'matt' },
			...{ price: 4250, pack: 25, count: 3 },
		},
		{ name: 'Rag roll', width: mm(610), roll: mm(15_000), margin: mm(3) },
		{ name: 'Card', width: mm(2), height: mm(5), margin: mm(0) },
	]);
	expect(read({ papers: [{ name: 'Roll', width: 24, roll: '1/2' }] }).papers[0]?.roll).toBe(inches(1 / 2));
	expect(
		Object.keys(
			problemsOf({
				papers: [
					{ width: 3, height: 4 },
					{ name: 'Half', width: 3 },
					{ name: 'Roll', width: 3, height: 4, roll: 5 },
					{ name: 'Twice', width: 3, height: 4 },
					{ name: 'twice', width: 3, height: 4 },
					{ name: 'Thin', width: 3, height: 4, margin: -1 },
				],
			}),
		),
	).toEqual(['papers[0].name', 'papers[1].height', 'papers[2].height', 'papers[4].name', 'papers[5].margin']);
	expect(read({ proofs: 2 }).proofs).toBe(2);
	expect(Object.keys(problemsOf({ proofs: 'a few' }))).toEqual(['proofs']);
});

test('the mount size may be what the show’s frame takes', () => {
	const frames = [{ name: 'Oak', rebateWidth: '503.5', rebateHeight: 403 }, { name: 'Made' }];
	expect(sizeOf(read({ mountSize: 'Frame', frame: 'oak', frames }).mountSize)).toEqual([500, 400]);
	for (const frame of ['Made', 'Elm', 'none', undefined])
		expect(read({ mountSize: 'frame', ...(frame && { frame }), frames }).mountSize, frame).toBeUndefined();
	expect(Object.keys(problemsOf({ sizes: [{ name: ' Frame', width: 1, height: 2 }] }))).toEqual(['sizes[0].name']);
});

test('the frame of the show is a name, and `none` is none', () => {
	expect(read({ frame: ' Oak ' }).frame).toBe('Oak');
	expect(read({ frame: 'none' }).frame).toBe('none');
	expect(Object.keys(problemsOf({ frame: 3 }))).toEqual(['frame']);
});

test('limits', () => {
	const { settings, problems } = readSettings({
		unit: 'cm',
		limits: { exact: '50 x 40', within: '2 mm', largest: 'A2', pictureArea: '500', thickness: 4, smallest: 'tiny' },
	});
	expect(settings.limits).toEqual({
		exact: { width: 5_000_000_000, height: 4_000_000_000 },
		within: 20_000_000,
		largest: { width: 4_200_000_000, height: 5_940_000_000 },
		pictureAreaMm2: 50_000,
		thickness: 40_000_000,
	});
	expect(problems.map(({ key }) => key)).toEqual(['limits.smallest']);
	expect(read({ limits: { pictureArea: '80 in²' } }).limits.pictureAreaMm2).toBeCloseTo(80 * 25.4 ** 2, 9);
	expect(read({ limits: { pictureArea: 40_000 } }).limits.pictureAreaMm2).toBe(40_000);
	expect(Object.keys(problemsOf({ limits: { pictureArea: 'A4' } }))).toEqual(['limits.pictureArea']);
	expect(Object.keys(problemsOf({ limits: 'none at all' }))).toEqual(['limits']);
});

test('bench', () => {
	expect(read({ bench: 'straight edge' }).bench).toEqual({ kind: 'straight edge' });
	expect(read({ bench: { greatest: 150, least: '1 cm', correction: '-0.5 mm', overcut: 1.5 } }).bench).toEqual({
		kind: 'guide',
		greatest: 1_500_000_000,
		least: 100_000_000,
		correction: -5_000_000,
		overcut: 15_000_000,
	});
	expect(read({ bench: { kind: 'Guide and stops', correction: 0.5 } }).bench).toEqual({
		kind: 'guide and stops',
		correction: 5_000_000,
	});
	expect(Object.keys(problemsOf({ bench: { kind: 'laser', correction: 'much' } }))).toEqual([
		'bench.kind',
		'bench.correction',
	]);
});

describe('what cannot be read keeps its default and is named', () => {
	test.each<[TypedSettings, RegExp]>([
		[{ unit: 'ell' }, /ell is none of: mm, cm, in/],
		[{ ruler: '1 m' }, /no graduation of a ruler/],
		[{ ruler: 'fine' }, /is not a length/],
		[{ mountSize: '600' }, /is one length/],
		[{ mountSize: 'No such frame' }, /is not a size/],
		[{ mountSize: 600 }, /is not a size/],
		[{ border: '-5' }, /below zero/],
		[{ border: '11 m' }, /more than 10 m/],
		[{ border: [70] }, /a list is not a length/],
		[{ border: { mm: 70 } }, /a record is not a length/],
		[{ border: true }, /true is not a length/],
		[{ border: '1,500' }, /more than one way/],
		[{ leastBorder: 'x' }, /is not a length/],
		[{ bottomWeight: 'some' }, /is not a bottom weight/],
		[{ bottomWeight: '1/4' }, /may be inches or %/],
		[{ bottomWeight: {} }, /not a bottom weight/],
		[{ overlap: 'x' }, /is not a length/],
		[{ reveal: 'x' }, /is not a length/],
		[{ unevenTolerance: '15 mm' }, /is not a share/],
		[{ cuttingTolerance: 'x' }, /is not a length/],
		[{ hingeMargin: 'x' }, /is not a length/],
		[{ innerBlankSmaller: 'x' }, /is not a length/],
		[{ spares: 'x' }, /is not a share/],
		[{ undermount: 7 }, /the name is missing/],
		[{ sizes: 'A2' }, /A2 is not a list/],
		[{ boards: {} }, /a record is not a list/],
		[{ frames: 3 }, /3 is not a list/],
		[{ bench: 'laser' }, /is none of: straight edge, guide, guide and stops/],
	])('%j', (typed, sentence) => {
		const { settings, problems } = readSettings(typed);
		expect(problems.map(({ key }) => key)).toEqual(Object.keys(typed));
		expect(problems[0]!.problem).toMatch(sentence);
		expect(settings).toEqual(readSettings({}).settings);
	});
});

test('keys that are none of ours are told apart', () => {
	expect(unknownSettings({ border: 70, bordr: 70, constructor: 1 })).toEqual(['bordr', 'constructor']);
});

test('the kind of cutter that end stops are on', () => {
	const { settings, problems } = readSettings({
		bench: { kind: 'guide and stops', head: 'Pull', guideSide: 'right', endStop: 'from the start' },
	});
	expect(problems).toEqual([]);
	expect(settings.bench).toEqual({
		kind: 'guide and stops',
		head: 'pull',
		guideSide: 'right',
		endStop: 'from the start',
	});
	const wrong = readSettings({ bench: { head: 'shove', guideSide: 'top', endStop: 'end' } });
	expect(wrong.problems.map(({ key }) => key)).toEqual(['bench.head', 'bench.guideSide', 'bench.endStop']);
});

test.each<[string, object, string, RegExp]>([
	[
		'an area',
		{ limits: { pictureArea: '1,500 cm2' } },
		'limits.pictureArea',
		/“1,500” can be read in more than one way: 1500 or 1\.500/,
	],
	['an area', { limits: { pictureArea: '1 500 cm²' } }, 'limits.pictureArea', /“1 500” is two numbers/],
	['a weight', { frames: [{ name: 'Oak', weight: '1,250 g' }] }, 'frames[0].weight', /1250 or 1\.250/],
	[
		'a price',
		{ boards: [{ name: 'Snow', width: 10, height: 10, price: '1,250' }] },
		'boards[0].price',
		/1250 or 1\.250/,
	],
	['a thickness', { limits: { thickness: '1,400 micron' } }, 'limits.thickness', /1400 or 1\.400/],
])('%s that may be meant in two ways is not guessed: %j', (_, typed, key, problem) =>
	expect(readSettings(typed as TypedSettings).problems).toEqual([
		{ key, problem: expect.stringMatching(problem) as string },
	]),
);

test.each<[unknown, number | undefined]>([
	['12.50', 1250],
	['12,50', 1250],
	['12.5', 1250],
	['12', 1200],
	['0', 0],
	[1250, 1250],
	['12.505', undefined],
	['-3', undefined],
	[12.5, undefined],
	['twelve', undefined],
])('a price of %j is %s in the smallest coin', (price, coins) => {
	const frame = { name: 'Oak', width: 10, height: 10, price };
	const { settings } = readSettings({ boards: [{ ...frame, name: 'Snow' }], frames: [frame] });
	expect([settings.boards[0]?.price, settings.frames[0]?.price]).toEqual([coins, coins]);
});

test('thicknesses are read as boards are sold', () => {
	const { settings, problems } = readSettings({
		boards: [{ name: 'Snow', width: 10, height: 10, thickness: '1400 micron' }],
		limits: { thickness: '12-ply' },
		bench: { slipBoard: '8 ply' },
	});
	expect(problems).toEqual([]);
	expect(settings.boards[0]?.thickness).toBe(14_000_000);
	expect(settings.limits.thickness).toBe(42_000_000);
	expect(settings.bench.slipBoard).toBe(28_000_000);
});

test('a name given twice is told at its place, and the first counts', () => {
	const twice = readSettings({
		sizes: [
			{ name: 'Small frame', width: 300, height: 200 },
			{ name: ' small  FRAME', width: 400, height: 300 },
			{ name: 'Large', width: 600, height: 400 },
		],
	});
	expect(twice.settings.sizes.map(({ name }) => name)).toEqual(['Small frame', 'Large']);
	expect(twice.problems).toEqual([
		{ key: 'sizes[1].name', problem: '“small  FRAME” is the name of a size before it too; give this one another' },
	]);
});

test.each<[unknown, string, readonly string[]]>([
	[undefined, 'shown', []],
	[{ prices: 'Left out' }, 'left out', []],
	[{ prices: 'half' }, 'shown', ['catalogue.prices']],
	['left out', 'shown', ['catalogue']],
])('catalogue %j: prices %s', (catalogue, prices, keys) => {
	const { settings, problems } = readSettings({ catalogue });
	expect([settings.catalogue.prices, problems.map(({ key }) => key)]).toEqual([prices, keys]);
});

test.each<[unknown, number, readonly string[]]>([
	[undefined, 6, []],
	[{ most: '4' }, 4, []],
	[8, 8, []],
	[{ most: 0 }, 6, ['packing.most']],
	['many', 6, ['packing']],
])('packing %j: %d in a box', (packing, most, keys) => {
	const { settings, problems } = readSettings({ packing });
	expect([settings.packing.most, problems.map(({ key }) => key)]).toEqual([most, keys]);
});
