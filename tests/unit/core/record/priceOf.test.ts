import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { type CostOfRow, priceOf } from '../../../../src/core/record/priceOf.ts';
import { priceReason, priceText, workedOutText } from '../../../../src/core/record/priceWords.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';

const whole = (minorUnits: number): CostOfRow => ({ minorUnits, isPartial: false });

function priced(typed: Typed, show: TypedSettings = {}, cost?: CostOfRow) {
	const { settings, problems } = readSettings(show);
	expect(problems).toEqual([]);
	const row = { id: 'a', order: 1, typed: { title: 'Pier', ...typed } };
	const result = judgeRow(row, settings);
	const price = priceOf(row, result, cost, settings);
	return { price, text: priceText(price), cell: workedOutText(price), why: priceReason(price, result, cost, settings) };
}

describe('a blank price', () => {
	test.each<[net: string, show: TypedSettings, is: string]>([
		['300', {}, '300.00'],
		['300', { commission: '40%' }, '500.00'],
		['300', { commission: '40%', vat: '20%' }, '577.00'], // 300 / 0.52 = 576.92
		['300', { commission: '40%', vat: '20%', priceStep: '10' }, '580.00'],
		['300', { commission: '40%', vat: '20%', priceStep: '0.01' }, '576.93'],
		['300', { commission: '1/3 %' }, '302.00'], // 300 / (1 − 1/300) = 301.003…
		['200', { commission: '33 1/3 %' }, '300.00'], // exactly: a rounded third would make it 301
		['0', { commission: '40%' }, '0.00'],
		['1000', { currency: 'JPY', commission: '35%' }, '1539 JPY'],
		['12.345 KWD', { commission: '0%', priceStep: '0.5' }, '12.500 KWD'],
		['1 200,50 €', { currency: 'EUR', priceStep: 5 }, '1205.00 EUR'],
	])('net %s with %j: %s', (net, show, is) => expect(priced({ net }, show).text).toBe(is));

	test('is none without a net, or where that is a word', () => {
		for (const net of [undefined, 'on loan', '£5 or so'])
			expect(priced(net === undefined ? {} : { net }, { commission: '40%' }).price.kind).toBe('none');
	});

	test('what the cell shows, and why', () => {
		const { cell, why } = priced({ net: '300' }, { commission: '40%', vat: '20%', currency: 'GBP', priceStep: '5' });
		expect(cell).toBe('580.00');
		expect(why).toBe(
			'The price is 580.00 GBP. It leaves 300.00 for the maker after 40 % commission and 20 % VAT on that, rounded up to a multiple of 5.00 GBP.',
		);
	});
});

describe('a typed price', () => {
	test.each(['450', 'NFS', 'POA', '120 framed, 90 unframed'])('“%s” is kept', (price) => {
		const { text, cell, why } = priced({ net: '300', price }, { commission: '40%' });
		expect(text).toBe(price === '450' ? '450.00' : price);
		expect([cell, why]).toEqual(['', undefined]);
	});
	test('cleared, it is worked out as if it had never been typed', () =>
		expect(priced({ net: '300', price: ' ' }).price).toEqual(priced({ net: '300' }).price));
	test('in another currency it is no amount, and says why', () =>
		expect(priced({ price: '£5' }, { currency: 'EUR' }).price).toMatchObject({
			kind: 'words',
			problem: '“£5” is in GBP, and the show is in EUR',
		}));
});

describe('with the cost of the print', () => {
	const show = { costInPrice: 'yes', commission: '50%' };
	test('it is net and cost that are left', () => {
		expect(priced({ net: '100' }, show, whole(2050)).text).toBe('241.00');
		expect(priced({ net: '100' }, { commission: '50%' }, whole(2050)).text).toBe('200.00');
	});
	test('of several copies it is for one', () =>
		expect(priced({ net: '100', copies: '3' }, { ...show, priceStep: '0.01' }, whole(100)).text).toBe('200.67'));
	test('it waits until the cost is known, and shows no price till then', () => {
		const { price, cell, text, why } = priced({ net: '100' }, show);
		expect([price.kind, cell, text]).toEqual(['waits', '', '']);
		expect(why).toMatch(/waits for the cost/);
	});
	test('it says about where something has no price yet', () => {
		const { cell, why } = priced({ net: '100' }, show, { minorUnits: 2000, isPartial: true });
		expect(cell).toBe('about 240.00');
		expect(why).toMatch(/100\.00 for the maker and 20\.00 for its cost after 50 % commission.*may go up\.$/);
	});
});

test('a worked-out price is the least multiple of the step that leaves what was wanted', () => {
	const cents = fc.integer({ min: 0, max: 5_000_000 });
	const percent = (most: number) => fc.integer({ min: 0, max: most }).map((tenths) => tenths / 10);
	fc.assert(
		fc.property(
			...[cents, cents, fc.integer({ min: 1, max: 9 }), percent(700), percent(250)],
			fc.constantFrom(1, 5, 50, 100, 500, 1000),
			(net, cost, copies, commission, vat, step) => {
				const { price } = priced(
					{ net: (net / 100).toFixed(2), copies: `${copies}` },
					{ commission: `${commission} %`, vat, priceStep: (step / 100).toFixed(2), costInPrice: 'yes' },
					whole(cost),
				);
				const left = new Fraction(1).sub(
					new Fraction(`${commission}`).div(100).mul(new Fraction(1).add(new Fraction(`${vat}`).div(100))),
				);
				const wanted = new Fraction(net).add(new Fraction(cost, copies));
				if (price.kind !== 'worked out') throw new Error(price.kind);
				expect(price.minorUnits % step).toBe(0);
				expect(left.mul(price.minorUnits).compare(wanted)).toBeGreaterThanOrEqual(0);
				if (price.minorUnits > 0) expect(left.mul(price.minorUnits - step).compare(wanted)).toBeLessThan(0);
			},
		),
	);
});

describe('a commission that would take the whole price is refused', () => {
	test.each<[TypedSettings, string]>([
		[{ commission: '100%' }, 'a commission of 100 % would take the whole price. Together they must stay below 100 %'],
		[
			{ commission: 90, vat: '20%' },
			'a commission of 90 % with 20 % VAT on it would take the whole price. Together they must stay below 100 %',
		],
	])('%j', (show, problem) => {
		const { settings, problems } = readSettings(show);
		expect(problems).toEqual([{ key: 'commission', problem }]);
		expect(settings.commission).toEqual({ numerator: 0, denominator: 1 });
	});
	test('just under it is not', () => expect(readSettings({ commission: '83.3%', vat: '20%' }).problems).toEqual([]));
});

test.each<[string, TypedSettings]>([
	['commission', { commission: '-5%' }],
	['vat', { vat: 'some' }],
	['priceStep', { priceStep: '0' }],
	['priceStep', { priceStep: '1,000' }],
	['costInPrice', { costInPrice: 'maybe' }],
])('%s of %j cannot be read', (key, show) =>
	expect(readSettings(show).problems.map((problem) => problem.key)).toEqual([key]),
);
