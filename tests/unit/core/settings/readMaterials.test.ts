import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../../src/core/length/length.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { currencyOf, formatMoney, moneyWords } from '../../../../src/core/values/money.ts';
import { readCells } from '../../../../src/core/row/readCells.ts';
import { rowOf } from '../findings/rowOf.ts';

function read(typed: TypedSettings) {
	const { settings, problems } = readSettings(typed);
	expect(problems).toEqual([]);
	return settings;
}
const problemsOf = (typed: TypedSettings) =>
	Object.fromEntries(readSettings(typed).problems.map(({ key, problem }) => [key, problem]));
const sheet = { name: 'Clear', width: 1000, height: 800 };

describe('glazing and backing', () => {
	test('are read as boards are, without grain', () => {
		expect(
			read({
				glazing: [
					{
						...sheet,
						material: 'acrylic',
						thickness: '3 mm',
						density: '1.19',
						price: '31,50',
						pack: 2,
						grain: 'width',
					},
					{ ...sheet, kind: 'blank', price: 250 },
				],
				backing: [{ ...sheet, thickness: 3, density: 0.7, count: '4', trim: 2 }],
			}),
		).toMatchObject({
			glazing: [
				{ name: 'Clear', kind: 'sheet', material: 'acrylic', thickness: mm(3), density: 1.19, price: 3150, pack: 2 },
				{ name: 'Clear', kind: 'blank', material: 'glass', price: 250 },
			],
			backing: [{ name: 'Clear', kind: 'sheet', thickness: mm(3), density: 0.7, count: 4, trim: mm(2) }],
		});
		expect(read({ glazing: [{ ...sheet, grain: 'width' }] }).glazing[0]).not.toHaveProperty('grain');
	});
	test('that cannot be read are named, and the others kept', () => {
		const typed = {
			glazing: [{ ...sheet, material: 'wood' }, { ...sheet, name: 'None' }, { name: 'x', width: 3 }, sheet],
			backing: [
				{ ...sheet, name: 'none' },
				{ ...sheet, density: 0 },
			],
			backingSmaller: '-3',
		};
		expect(Object.keys(problemsOf(typed)).sort()).toEqual([
			'backingSmaller',
			'backing[0].name',
			'backing[1].density',
			'glazing[0].material',
			'glazing[1].name',
			'glazing[2].height',
		]);
		expect(readSettings(typed).settings.glazing).toHaveLength(1);
	});
	test('a board has a density too', () =>
		expect(read({ boards: [{ ...sheet, density: 0.6 }] }).boards[0]!.density).toBe(0.6));
});

describe('supplies', () => {
	test('lengths are metres whatever the unit, the rest is pieces', () => {
		expect(
			read({
				unit: 'in',
				supplies: [
					{ kind: 'tape', name: 'Brown tape', each: '2,5', pack: 50, count: '12 m', price: '4.20' },
					{ kind: 'cord', pack: '100 ft' },
					{ kind: 'Rings', pack: '100', count: 7, price: 900 },
					{ kind: 'spacer', each: 0.5 },
				],
			}).supplies,
		).toEqual([
			{ kind: 'tape', name: 'Brown tape', each: mm(2500), pack: mm(50_000), count: mm(12_000), price: 420 },
			{ kind: 'cord', name: 'cord', pack: inches(1200) },
			{ kind: 'rings', name: 'rings', pack: 100, count: 7, price: 900 },
			{ kind: 'spacer', name: 'spacer', each: mm(500) },
		]);
	});
	test('what cannot be read is named', () => {
		expect(
			Object.keys(
				problemsOf({
					supplies: [
						{ kind: 'nails' },
						{ kind: 'rings', each: 1.5 },
						{ kind: 'tape', pack: 0 },
						{ kind: 'cord', count: 'x' },
						{ kind: 'Tape', name: 'Brown tape' },
					],
				}),
			),
		).toEqual(['supplies[0].kind', 'supplies[1].each', 'supplies[2].pack', 'supplies[3].count', 'supplies[4].kind']);
	});
});

describe('prices', () => {
	const boards = (...prices: unknown[]) => prices.map((price, place) => ({ ...sheet, name: `Clear ${place}`, price }));
	test.each<[unknown, unknown, number]>([
		[undefined, '12.50', 1250],
		[undefined, '12,5', 1250],
		[undefined, 1250, 1250],
		[undefined, '12', 1200],
		['EUR', '€12.50', 1250],
		['€', '12.50 EUR', 1250],
		['eur', '12.50 €', 1250],
		['GBP', '£ 3', 300],
		['JPY', '1250', 1250],
		['JPY', 1250, 1250],
		['KWD', '1.5', 1500],
		[undefined, '7.25 usd', 725],
	])('in %j, %j is %d', (currency, price, minor) =>
		expect(read({ currency, boards: boards(price) }).boards[0]!.price).toBe(minor),
	);
	test.each<[unknown, unknown]>([
		[undefined, '12.505'],
		[undefined, '1,500'],
		[undefined, '-3'],
		[undefined, 'cheap'],
		[undefined, '12 apples'],
		['JPY', '12.5'],
		[undefined, 12.5],
		['EUR', '€ 3 EUR'],
	])('in %j, %j is no price', (currency, price) =>
		expect(Object.keys(problemsOf({ currency, boards: boards(price) }))).toEqual(['boards[0].price']),
	);
	test('of another currency are refused in words', () => {
		expect(problemsOf({ currency: 'EUR', boards: boards('$12') })).toEqual({
			'boards[0].price': '$12 is in USD, and the show is in EUR',
		});
		expect(problemsOf({ boards: boards('€ 3', '4'), glazing: boards('£ 5') })).toEqual({
			'glazing[0].price': '£ 5 is in GBP, and € 3 in EUR',
		});
		expect(problemsOf({ currency: 'shells' })).toEqual({
			currency: 'shells is no currency, such as EUR, GBP or USD',
		});
	});
	test('name the currency of a show that has none', () => {
		expect(read({ boards: boards('3', '£ 4') }).currency).toEqual({ code: 'GBP', decimals: 2 });
		expect(read({ boards: boards('3') }).currency).toBeUndefined();
		expect(read({ currency: 'jpy' }).currency).toEqual({ code: 'JPY', decimals: 0 });
	});
	test('are shown in the whole and its coins', () => {
		expect([0, 5, 1250, 100].map((coins) => formatMoney(coins, undefined))).toEqual(['0.00', '0.05', '12.50', '1.00']);
		expect(formatMoney(1250, currencyOf('JPY'))).toBe('1250');
		expect(moneyWords(1250, { code: 'KWD', decimals: 3 })).toBe('1.250 KWD');
	});
	test('what is shown is read again as the same', () =>
		fc.assert(
			fc.property(fc.nat(1e9), fc.constantFrom('EUR', 'JPY', 'KWD'), (coins, code) => {
				const { currency } = read({ currency: code });
				expect(read({ currency: code, boards: boards(moneyWords(coins, currency)) }).boards[0]!.price).toBe(coins);
			}),
		));
});

test('a price without a currency is in that of the others, whichever is read first', () => {
	const { settings } = readSettings({
		frames: [{ name: 'Oak', width: 500, height: 400, price: '1500' }],
		boards: [{ name: 'Chalk', width: 1200, height: 900, price: '1500 JPY' }],
	});
	expect([settings.frames[0]?.price, settings.boards[0]?.price]).toEqual([1500, 1500]);
});

test('a paper has one of the surfaces that a cell may have', () => {
	const paper = { name: 'Rag', width: 600, height: 400 };
	expect(readSettings({ papers: [{ ...paper, surface: 'Satin' }] }).settings.papers[0]?.surface).toBe('satin');
	const { settings, problems } = readSettings({ papers: [{ ...paper, surface: 'satinn' }] });
	expect(settings.papers[0]?.surface).toBeUndefined();
	expect(problems[0]?.key).toBe('papers[0].surface');
});

test('and a straight edge or a deckle, which the row that names it has', () => {
	const paper = { name: 'Rag', width: 600, height: 400 };
	const edgeOf = (edge: object) => {
		const { settings } = readSettings({ papers: [{ ...paper, ...edge }] });
		return readCells(rowOf('paper rag'), settings).cells.paper?.edge;
	};
	expect([edgeOf({}), edgeOf({ edge: 'Straight' }), edgeOf({ edge: 'Deckle' })]).toEqual([
		'straight',
		'straight',
		'deckle',
	]);
	const { settings, problems } = readSettings({ papers: [{ ...paper, edge: 'torn' }] });
	expect([settings.papers[0]?.edge, problems[0]?.key]).toEqual([undefined, 'papers[0].edge']);
});

test('a board that is in the list already is refused in words; those of its size at another price, or so many, stay', () => {
	const chalk = { name: 'Chalk', width: 1200, height: 900 };
	const { settings, problems } = readSettings({
		unit: 'mm',
		boards: [
			chalk,
			{ ...chalk, name: 'CHALK' },
			{ ...chalk, count: 3 },
			{ ...chalk, price: '9' },
			{ ...chalk, kind: 'blank' },
		],
	});
	expect(problems).toEqual([
		{
			key: 'boards[1].name',
			problem: '“CHALK” of this size is in the list already. Put the number of sheets there',
		},
	]);
	expect(settings.boards.map(({ name, kind, count, price }) => [name, kind, count, price])).toEqual([
		['Chalk', 'sheet', undefined, undefined],
		['Chalk', 'sheet', 3, undefined],
		['Chalk', 'sheet', undefined, 900],
		['Chalk', 'blank', undefined, undefined],
	]);
});
