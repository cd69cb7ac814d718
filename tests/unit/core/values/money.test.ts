import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatMoney, moneyWords } from '../../../../src/core/values/money.ts';

const currency = (decimals: number) => ({ code: 'EUR', decimals });

test('an amount has as many decimals as its coins', () => {
	expect([0, 2, 3].map((decimals) => formatMoney(1250, currency(decimals)))).toEqual(['1250', '12.50', '1.250']);
	expect([formatMoney(5, undefined), formatMoney(-5, undefined), formatMoney(0, currency(3))]).toEqual([
		...['0.05', '-0.05', '0.000'],
	]);
	expect(moneyWords(5, currency(2))).toBe('0.05 EUR');
});

test('what is no whole number, as a file may have it, is shown and does not throw', () =>
	expect(formatMoney(1250.5, currency(0))).toBe('1250.5'));

test('however large, it is figures with one point: never an exponent', () =>
	fc.assert(
		fc.property(fc.bigInt({ min: 0n, max: 10n ** 30n }), fc.constantFrom(0, 2, 3), (amount, decimals) => {
			const text = formatMoney(Number(amount), currency(decimals));
			expect(text).toMatch(decimals === 0 ? /^\d+$/ : /^\d+\.\d+$/);
			expect(text.replace('.', '').replace(/^0+(?=\d)/, '')).toBe(`${BigInt(Number(amount))}`);
		}),
	));
