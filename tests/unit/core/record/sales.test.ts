import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { salesOf } from '../../../../src/core/record/sales.ts';
import {
	collectedSentence,
	copiesSentence,
	sumFigures,
	totalSentence,
	unpricedSentence,
} from '../../../../src/core/record/salesWords.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import type { Row, Typed } from '../../../../src/core/show/row.ts';

function sold(prints: readonly Typed[], show: TypedSettings = {}) {
	const { settings } = readSettings(show);
	const rows = prints.map((typed, at): Row => ({ id: `r${at}`, order: at + 1, typed }));
	return salesOf({
		...{ rows, settings, results: rows.map((row) => judgeRow(row, settings)) },
		costOf: () => undefined,
	});
}

const pier = { title: 'Pier', maker: 'Ilse Tarnow' };

describe('what was sold', () => {
	test('is divided between gallery and makers', () => {
		const { makers, total, currency } = sold(
			[
				{ ...pier, price: '500', stage: 'sold' },
				{ ...pier, price: '340.50', stage: 'Collected' },
				{ ...pier, price: '90', stage: 'hung' },
				{ title: 'Weir', maker: 'jonas abt', price: '100', stage: 'sold' },
				{ title: 'Sluice', maker: 'Jonas Abt ', price: '33.33', stage: 'sold' },
			],
			{ commission: '40%', vat: '20%', currency: 'EUR' },
		);
		expect(makers).toEqual([
			{ maker: 'Ilse Tarnow', count: 2, sold: 84_050, commission: 33_620, vat: 6724, due: 43_706 },
			// 133.33: 53.332, 10.6664, 69.3316; the cent that is left goes to the greatest remainder, .64.
			{ maker: 'jonas abt', count: 2, sold: 13_333, commission: 5333, vat: 1067, due: 6933 },
		]);
		expect(total).toEqual({ count: 4, sold: 97_383, commission: 38_953, vat: 7791, due: 50_639 });
		expect(totalSentence({ total, currency })).toBe('4 prints sold for 973.83 EUR');
		expect(sumFigures(total, currency).map(({ figure }) => figure)).toEqual([
			...['4', '973.83', '389.53', '77.91', '506.39'],
		]);
	});

	test('is collected or not, copy by copy, and who bought it is asked for', () => {
		const prints = [
			{ ...pier, price: '5', stage: 'collected', buyer: 'R. Thistle' },
			{ ...pier, price: '5', copies: '2', stage: 'sold' },
			{ title: 'Weir', price: '5', stage: 'hung' },
		];
		expect(collectedSentence(sold(prints))).toBe('Collected 1 of 3. Buyer missing for Pier.');
		expect(collectedSentence(sold(prints.slice(0, 1)))).toBe('Collected 1 of 1.');
		expect(collectedSentence(sold(prints.slice(2)))).toBe('');
	});

	test('prints stand in hang order, blank rows are none', () => {
		const { prints } = sold([{ title: 'b', 'hang order': '2' }, {}, { title: 'a', 'hang order': '1' }]);
		expect(prints.map(({ row, isSold }) => [row.typed.title, isSold])).toEqual([
			['a', false],
			['b', false],
		]);
	});

	test('a row is sold whole, with all its copies', () => {
		const sales = sold([{ ...pier, copies: '3', price: '45.50', stage: 'sold' }], { currency: 'GBP' });
		expect(sales.total).toMatchObject({ count: 3, sold: 13_650, due: 13_650 });
		expect(copiesSentence(sales.prints[0]!, sales.currency)).toBe('3 copies, sold together: 3 × 45.50 = 136.50');
	});

	test('a row of which no copy is made is not for sale, and has no line among the makers', () => {
		const { prints, makers, unpriced } = sold([
			{ ...pier, copies: '0', price: '90', stage: 'sold' },
			{ ...pier, copies: '0', stage: 'sold' },
			{ title: 'Weir', price: '90' },
		]);
		expect(prints.map(({ place }) => place)).toEqual([2]);
		expect([makers, unpriced]).toEqual([[], []]);
	});

	test('what has no readable price is named, and is in no sum', () => {
		const sales = sold(
			[
				{ title: 'Pier', price: 'NFS', stage: 'sold' },
				{ title: 'Quay', stage: 'collected' },
				{ title: 'Weir', price: '£40', stage: 'sold' },
				{ title: 'Ebb', price: '1,200', stage: 'sold' },
				{ title: 'Flow', price: '80', stage: 'sold' },
			],
			{ currency: 'EUR' },
		);
		expect(sales.total).toMatchObject({ count: 1, sold: 8000 });
		expect(unpricedSentence(sales)).toBe(
			'Sold without a price in figures, so left out of the sums: Pier, Quay, Weir and Ebb.',
		);
	});

	test('a show without a currency has the first that a price names, whatever its coins', () => {
		const yen = sold([
			{ title: 'a', price: '¥ 12000', stage: 'sold' },
			{ title: 'b', price: '500', stage: 'sold' },
			{ title: 'c', price: '€ 5', stage: 'sold' },
			{ title: 'd', net: '1000', stage: 'sold' },
		]);
		expect(yen.currency?.code).toBe('JPY');
		expect(yen.total.sold).toBe(13_500);
		expect(yen.unpriced.map(({ row }) => row.typed.title)).toEqual(['c']);
	});
});

test('all sums add up, each part within one coin of what it is exactly', () => {
	const percent = fc.integer({ min: 0, max: 800 }).map((tenths) => `${tenths / 10} %`);
	const print = fc.record({
		price: fc.integer({ min: 0, max: 10_000_000 }),
		copies: fc.integer({ min: 1, max: 4 }),
		maker: fc.constantFrom('A', 'B', 'C', ''),
	});
	fc.assert(
		fc.property(
			fc.array(print, { maxLength: 12 }),
			percent,
			fc.constantFrom('0 %', '7.7 %', '20 %'),
			(prints, commission, vat) => {
				const { makers, total } = sold(
					prints.map(({ price, copies, maker }) => ({
						...{ title: 'x', stage: 'sold', price: (price / 100).toFixed(2), copies: `${copies}`, maker },
					})),
					{ commission, vat },
				);
				const all = prints.reduce((sum, { price, copies }) => sum + price * copies, 0);
				expect(total.sold).toBe(all);
				for (const each of [...makers, total]) expect(each.commission + each.vat + each.due).toBe(each.sold);
				for (const key of ['sold', 'commission', 'vat', 'due', 'count'] as const)
					expect(makers.reduce((sum, each) => sum + each[key], 0)).toBe(total[key]);
				const share = new Fraction(commission.replace(' %', '')).div(100);
				const onIt = share.mul(new Fraction(vat.replace(' %', '')).div(100));
				for (const { maker, ...own } of makers) {
					const theirs = prints.filter((each) => each.maker === maker);
					expect(own.sold).toBe(theirs.reduce((sum, { price, copies }) => sum + price * copies, 0));
					for (const [is, exact] of [
						[own.commission, share.mul(own.sold)],
						[own.vat, onIt.mul(own.sold)],
						[own.due, new Fraction(own.sold).sub(share.mul(own.sold)).sub(onIt.mul(own.sold))],
					] as const)
						expect(exact.sub(is).abs().compare(1)).toBeLessThan(0);
				}
			},
		),
	);
});
